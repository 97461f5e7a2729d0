import type { SurfaceId } from '../engine/surface';
import type { Placement } from './project';

/** Surfaces that are usually chosen together and bought as one. */
export interface Family {
  readonly id: 'counters' | 'fronts';
  readonly surfaces: readonly SurfaceId[];
}

const FAMILIES: readonly Family[] = [
  { id: 'counters', surfaces: ['counter', 'island-counter'] },
  { id: 'fronts', surfaces: ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'] },
];

/** The family of a surface; most surfaces have none. */
export const familyWith = (surface: SurfaceId): Family | undefined =>
  FAMILIES.find((family) => family.surfaces.includes(surface));

/** The surfaces of the family a surface belongs to, itself included; itself alone when it has none. */
export const familyOf = (surface: SurfaceId): readonly SurfaceId[] => familyWith(surface)?.surfaces ?? [surface];

/** The same finish, laid in the same way and equally settled. */
export const isLaidAlike = (a: Placement, b: Placement): boolean =>
  a.finish === b.finish &&
  a.state === b.state &&
  a.laying.layout === b.laying.layout &&
  a.laying.grout === b.laying.grout &&
  a.laying.joint_mm === b.laying.joint_mm &&
  (a.laying.direction_deg ?? 0) === (b.laying.direction_deg ?? 0) &&
  (a.laying.start ?? 'centered') === (b.laying.start ?? 'centered') &&
  (a.laying.slab?.match ?? 'bookmatch') === (b.laying.slab?.match ?? 'bookmatch') &&
  (a.laying.slab?.shift_mm ?? 0) === (b.laying.slab?.shift_mm ?? 0);
