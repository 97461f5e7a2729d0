import { differenceCiede2000 } from '../../../engine/color/difference';
import type { Lab } from '../../../engine/color/types';
import { averageComponent } from '../../../engine/finish/average';
import { SURFACES, type SurfaceId } from '../../../engine/surface';
import { isEmpty } from '../../../model/empty-surface';
import { canGoOn, isTooFlatFor } from '../../../model/finish-candidates';
import { laidAlike, withFinishOn } from '../../../model/lay-alike';
import type { Finish, Option, Project } from '../../../model/project';
import { layFinish } from '../lay-finish';
import { libraryOf } from '../scheme';

/** One finish of the library laid on surfaces that are laid alike, with what follows them. */
export interface LibraryChange {
  readonly project: Project;
  readonly option: Option;
  /** All that change and that the room has, in decision order. */
  readonly surfaces: readonly SurfaceId[];
  readonly finish: Finish;
  /** Whether something decided changes. */
  readonly isDecided: boolean;
  /** How far the area average moves, CIEDE2000. */
  readonly moved_de00: number;
  readonly isSameClass: boolean;
  /** Of the same class and on another surface of the option already: one finish fewer. */
  readonly isHere: boolean;
  readonly color: Lab<'D65-2'>;
}

/** An appliance comes in the finishes of its maker, with its own price and date: no choice from a library. Our judgment. */
export const NO_CHOICE: readonly SurfaceId[] = ['appliance'];

/**
 * Every change of one family of an option to another usual finish of the library. First what lies elsewhere in the option and is of the
 * same class (our judgment: it brings no further finish), then smallest first: by how far the area average moves, then the same class first, then by color and at last by id, so that neither the library's order nor names count.
 * What is fixed or ordered is left alone; what is empty is for the person to choose.
 */
export function libraryChanges(
  project: Project,
  option: Option,
  present: readonly SurfaceId[],
  families = changeable(option, present),
): LibraryChange[] {
  return families
    .flatMap((family) => project.library.flatMap((finish) => changeOf(project, option, present, family, finish) ?? []))
    .sort(bySize);
}

/** Surfaces laid alike that may change, each family once. */
export function changeable(option: Option, present: readonly SurfaceId[]): readonly (readonly SurfaceId[])[] {
  const known = new Map<SurfaceId, readonly SurfaceId[]>();
  for (const surface of SURFACES) {
    if (!present.includes(surface) || NO_CHOICE.includes(surface) || !mayChange(option, surface)) continue;
    const alike = laidAlike(option, surface);
    known.set(alike[0]!, alike);
  }
  return [...known.values()];
}

const mayChange = ({ scheme }: Option, surface: SurfaceId): boolean =>
  !isEmpty(scheme[surface]) && (scheme[surface].state === 'open' || scheme[surface].state === 'decided');

function changeOf(
  project: Project,
  option: Option,
  present: readonly SurfaceId[],
  family: readonly SurfaceId[],
  finish: Finish,
): LibraryChange | null {
  const before = option.scheme[family[0]!];
  if (finish.id === before.finish || !family.every((surface) => canGoOn(finish, surface))) return null;
  if (isTooFlatFor(finish, family[0]!)) return null;
  const changed = withFinishOn(project, option, family, finish.id);
  const after = changed.ok ? changed.value.options.find(({ id }) => id === option.id) : undefined;
  if (!changed.ok || !after) return null;
  const surfaces = SURFACES.filter(
    (surface) => present.includes(surface) && after.scheme[surface].finish !== option.scheme[surface].finish,
  );
  const library = libraryOf(project);
  const from = layFinish(library, before);
  const to = layFinish(library, after.scheme[family[0]!]);
  if (surfaces.length === 0 || !from.ok || !to.ok || !surfaces.every((surface) => mayChange(option, surface)))
    return null;
  const isSameClass = library.get(before.finish)?.class === finish.class;
  const color = averageComponent(to.value.components).labD65;
  return {
    project: changed.value,
    option: after,
    surfaces,
    finish,
    isDecided: surfaces.some((surface) => option.scheme[surface].state === 'decided'),
    moved_de00: differenceCiede2000(averageComponent(from.value.components).labD65, color),
    isSameClass,
    isHere: isSameClass && present.some((surface) => option.scheme[surface].finish === finish.id),
    color,
  };
}

/** What is here, then smallest first, see `libraryChanges`. */
export const bySize = (one: LibraryChange, other: LibraryChange): number =>
  Number(other.isHere) - Number(one.isHere) ||
  one.moved_de00 - other.moved_de00 ||
  Number(other.isSameClass) - Number(one.isSameClass) ||
  one.color.l - other.color.l ||
  one.color.a - other.color.a ||
  one.color.b - other.color.b ||
  SURFACES.indexOf(one.surfaces[0]!) - SURFACES.indexOf(other.surfaces[0]!) ||
  (one.finish.id < other.finish.id ? -1 : 1);
