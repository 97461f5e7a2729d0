import type { DecisionState, SurfaceId } from '../engine/surface';
import { changesWith } from './changes-with';
import { DECISION_STEPS, type DecisionStep, decisionOrder, nextOpen } from './decision-order';
import type { Option } from './project';

/** Surfaces of one finish that change together, and are decided as one. */
export interface PathGroup {
  readonly surfaces: readonly SurfaceId[];
  readonly finish: string;
  readonly state: DecisionState;
}

/** A step on the way: what stays comes first, then the steps of deciding with what does not stay. */
export interface PathStep {
  readonly id: 'stays' | DecisionStep['id'];
  readonly groups: readonly PathGroup[];
}

export interface DecisionPath {
  readonly steps: readonly PathStep[];
  /** The first surface of the group to decide next; null when none is open. */
  readonly next: SurfaceId | null;
}

/** The way through the decisions of an option in a room that has some surfaces; steps without any are left out. */
export function decisionPath(option: Option, present: readonly SurfaceId[]): DecisionPath {
  const groups = groupsOf(option, present);
  const isFixed = ({ state }: PathGroup) => state === 'fixed';
  const steps: PathStep[] = [
    { id: 'stays', groups: groups.filter(isFixed) },
    ...DECISION_STEPS.map(({ id, surfaces }) => ({
      id,
      groups: groups.filter((group) => !isFixed(group) && surfaces.includes(group.surfaces[0]!)),
    })),
  ];
  return { steps: steps.filter((step) => step.groups.length > 0), next: nextOpen(option, present) };
}

/** The surfaces there are in groups of those that change together, in decision order. */
function groupsOf(option: Option, present: readonly SurfaceId[]): PathGroup[] {
  const taken = new Set<SurfaceId>();
  return decisionOrder(option).flatMap((surface) => {
    if (taken.has(surface) || !present.includes(surface)) return [];
    const { finish, state } = option.scheme[surface];
    const surfaces = changesWith(option, surface).filter(
      (one) => present.includes(one) && !taken.has(one) && option.scheme[one].state === state,
    );
    for (const one of surfaces) taken.add(one);
    return { surfaces, finish, state };
  });
}

/**
 * What was decided or ordered later in the order than any of some surfaces: what a change of these may unsettle. Surfaces that
 * are changed themselves are left out.
 */
export function settledAfter(
  option: Option,
  present: readonly SurfaceId[],
  changed: readonly SurfaceId[],
): readonly SurfaceId[] {
  const order = decisionOrder(option).filter((one) => present.includes(one));
  const first = order.findIndex((one) => changed.includes(one));
  if (first < 0) return [];
  return order.slice(first).filter((one) => {
    const { state } = option.scheme[one];
    return !changed.includes(one) && (state === 'decided' || state === 'ordered');
  });
}

/** Surfaces on which another finish lies in one state of an option than in the other. */
export const relaidSurfaces = (before: Option, after: Option): readonly SurfaceId[] =>
  decisionOrder(after).filter((one) => before.scheme[one].finish !== after.scheme[one].finish);
