import { surfaceName } from '../engine/judge/surface-words';
import type { Problem } from '../engine/result';
import { SURFACES, type SurfaceId } from '../engine/surface';
import { EMPTY, emptySurfaces, isEmpty } from '../model/empty-surface';
import type { Option, Placement, Project, Scheme } from '../model/project';

/** A scheme as it stands in a file: where a surface is absent or null, nothing is chosen for it yet. */
type SchemeInFile = { readonly [S in SurfaceId]?: Placement | null | undefined };

/** A project as it stands in a file. */
export type ProjectInFile = Omit<Project, 'options'> & {
  readonly options: readonly (Omit<Option, 'scheme'> & { readonly scheme: SchemeInFile })[];
};

/** The document of a file: every surface has its place, if only an empty one. */
export const withEmptySurfaces = (project: ProjectInFile): Project => ({
  ...project,
  options: project.options.map((option) => ({
    ...option,
    scheme: Object.fromEntries(SURFACES.map((surface) => [surface, option.scheme[surface] ?? EMPTY])) as Scheme,
  })),
});

/** The same for the file: empty surfaces are left out. */
export const withoutEmptySurfaces = (project: Project): ProjectInFile => ({
  ...project,
  options: project.options.map((option) => ({
    ...option,
    scheme: Object.fromEntries(Object.entries(option.scheme).filter(([, placement]) => !isEmpty(placement))),
  })),
});

/** Says of each option which of its surfaces nothing is chosen for. */
export const emptyNotices = ({ options }: Project): readonly Problem[] =>
  options.flatMap((option, i) => {
    const empty = emptySurfaces(option);
    if (empty.length === 0) return [];
    const path = `options[${i}].scheme`;
    const names = empty.length === SURFACES.length ? 'any surface' : empty.map(inWords).join(', ');
    return [
      {
        code: 'nothing-chosen',
        text:
          `${path}: nothing is chosen yet for ${names} of "${option.name}"; nothing is said of ${empty.length === 1 ? 'it' : 'them'}, ` +
          `and the room is lit and drawn as if plain gray lay there.`,
        at: { path },
        remedy: 'Nothing to do, unless a surface was left out by mistake.',
      },
    ];
  });

const inWords = (surface: SurfaceId): string => surfaceName(surface).toLowerCase();
