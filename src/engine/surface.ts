/** The places in a kitchen that take a finish, in the trade's decision order where it has one. */
export const SURFACES = [
  'counter',
  'island-counter',
  'floor',
  'base-fronts',
  'wall-fronts',
  'tall-fronts',
  'island-fronts',
  'plinth',
  'backsplash',
  'upstand',
  'wall',
  'ceiling',
  'hardware',
  'sink',
  'tap',
  'appliance',
  'frame',
] as const;

export type SurfaceId = (typeof SURFACES)[number];

/** How settled a surface is. Fixed things stay; decided things are chosen; ordered things are bought. */
export type DecisionState = 'fixed' | 'open' | 'decided' | 'ordered';

/** Which way a face looks: counters and floors up, undersides and ceilings down, all else upright. */
export type Facing = 'up' | 'down' | 'upright';
