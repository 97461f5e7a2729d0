import { SURFACES, type SurfaceId } from '../engine/surface';
import type { Option } from './project';

/** Surfaces that are decided together, in one step of the order. */
export interface DecisionStep {
  readonly id: 'counter' | 'floor' | 'fronts' | 'backsplash' | 'wall' | 'hardware';
  readonly name: string;
  readonly surfaces: readonly SurfaceId[];
}

/**
 * The order of deciding, which is not the order of installing: what stays comes first, then these steps
 * (common practice, no source). Every surface stands in exactly one step.
 */
export const DECISION_STEPS: readonly DecisionStep[] = [
  { id: 'counter', name: 'Counter', surfaces: ['counter', 'island-counter', 'upstand'] },
  { id: 'floor', name: 'Floor', surfaces: ['floor'] },
  {
    id: 'fronts',
    name: 'Cabinet fronts',
    surfaces: ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'],
  },
  { id: 'backsplash', name: 'Backsplash', surfaces: ['backsplash'] },
  { id: 'wall', name: 'Wall and ceiling', surfaces: ['wall', 'ceiling', 'frame'] },
  { id: 'hardware', name: 'Handles and fittings', surfaces: ['hardware', 'sink', 'tap', 'appliance'] },
];

const inSteps: readonly SurfaceId[] = DECISION_STEPS.flatMap((step) => step.surfaces);

/** All surfaces of an option in the order they are decided: fixed ones first, the rest step by step. */
export function decisionOrder(option: Option): readonly SurfaceId[] {
  const isFixed = (surface: SurfaceId) => option.scheme[surface].state === 'fixed';
  return [...inSteps.filter(isFixed), ...inSteps.filter((surface) => !isFixed(surface))];
}

/** Of the surfaces there are, the one to decide next; null when none of them is open. */
export const nextOpen = (option: Option, present: readonly SurfaceId[] = SURFACES): SurfaceId | null =>
  decisionOrder(option).find((one) => present.includes(one) && option.scheme[one].state === 'open') ?? null;

/** True for text that names a surface; narrows text from outside. */
export const isSurfaceId = (text: string): text is SurfaceId => (SURFACES as readonly string[]).includes(text);
