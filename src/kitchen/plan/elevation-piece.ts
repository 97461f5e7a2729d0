import type { SurfaceId } from '../../engine/surface';

/** What a rectangle of an elevation stands for; `side` is a body behind fronts, or the end of a run on the next wall. */
export type ElevationKind =
  | 'wall'
  | 'front'
  | 'drawer'
  | 'oven'
  | 'fridge'
  | 'dishwasher'
  | 'sink'
  | 'cooktop'
  | 'counter-edge'
  | 'backsplash'
  | 'upstand'
  | 'wall-unit'
  | 'shelf'
  | 'hood'
  | 'window'
  | 'door'
  | 'open-side'
  | 'plinth'
  | 'tall'
  | 'filler'
  | 'panel'
  | 'side';

/** A rectangle along a wall and in height, m, before it is turned to the viewer. */
export interface Piece {
  readonly kind: ElevationKind;
  readonly surface: SurfaceId | null;
  readonly a: readonly [number, number];
  readonly z: readonly [number, number];
}
