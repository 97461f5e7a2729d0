import type { LightRoom, Vec3, Viewpoint } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';

/** A kitchen built: geometry for light and picture, and where a person stands in it. */
export interface Room {
  readonly light: LightRoom;
  /** Same order as light.surfaces; the index a rectangle carries. */
  readonly surfaces: readonly SurfaceId[];
  readonly viewpoints: readonly Viewpoint[];
  /** The eye may move inside this box, m. */
  readonly eyeLimits: { readonly min: Vec3; readonly max: Vec3 };
  /** Room shell, m: used to mirror the room in polished surfaces. */
  readonly size: Vec3;
  /** Pairs of surfaces that touch along an edge. */
  readonly edges: readonly (readonly [SurfaceId, SurfaceId])[];
}
