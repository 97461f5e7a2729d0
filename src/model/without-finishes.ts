import { EMPTY } from './empty-surface';
import type { Placement, ProjectDocument, Scheme } from './project';

/** A document without some of its finishes: nothing is chosen any more where one lay, and no grout is named where it was the grout. */
export function withoutFinishes<D extends ProjectDocument>(document: D, ids: ReadonlySet<string>): D {
  if (ids.size === 0) return document;
  const left = (placement: Placement): Placement => {
    if (ids.has(placement.finish)) return EMPTY;
    const { grout, ...laying } = placement.laying;
    return grout !== undefined && ids.has(grout) ? { ...placement, laying } : placement;
  };
  return {
    ...document,
    library: document.library.filter(({ id }) => !ids.has(id)),
    options: document.options.map((option) => ({
      ...option,
      scheme: Object.fromEntries(
        Object.entries(option.scheme).map(([surface, placement]) => [surface, left(placement)]),
      ) as Scheme,
    })),
  };
}
