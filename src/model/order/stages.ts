import type { SurfaceId } from '../../engine/surface';

/**
 * The order of installing, which is not the order of deciding: a counter is measured when the base units stand, and paint comes last
 * (common practice, no source).
 */
export const STAGES = ['floor', 'cabinets', 'template', 'counter', 'backsplash', 'fittings', 'paint'] as const;

export type Stage = (typeof STAGES)[number];

/** Stages in which something that was ordered is put in; a template is only taken. */
export type FittingStage = Exclude<Stage, 'template'>;

export const FITTING_STAGES: readonly FittingStage[] = STAGES.filter((stage) => stage !== 'template');

/** The stage in which what a surface is finished with is put in. */
export const STAGE_OF: { readonly [S in SurfaceId]: FittingStage } = {
  counter: 'counter',
  'island-counter': 'counter',
  upstand: 'counter',
  floor: 'floor',
  'base-fronts': 'cabinets',
  'wall-fronts': 'cabinets',
  'tall-fronts': 'cabinets',
  'island-fronts': 'cabinets',
  plinth: 'cabinets',
  hardware: 'cabinets',
  backsplash: 'backsplash',
  sink: 'counter',
  tap: 'fittings',
  appliance: 'fittings',
  wall: 'paint',
  ceiling: 'paint',
  frame: 'paint',
};
