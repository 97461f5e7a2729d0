import type { RectBvh } from '../../engine/light/rect-bvh';
import type { Vec3 } from '../../engine/light/types';
import type { ReflectanceSpd } from '../../engine/spectrum/types';

/** What stands round a mirror and how bright it is. Numbers are per light group at level 1. */
export interface MirroredRoom {
  /** The rectangles one sees. */
  readonly bvh: RectBvh;
  /** Surface of a rectangle; below 0 for glass, lamp faces and black. */
  surfaceOf(rect: number): number;
  /** Name and mean reflectance of a surface. */
  finishOf(surface: number): { readonly id: string; readonly average: ReflectanceSpd };
  /** Direct light at a place of a rectangle, lx per group, written into `out`. */
  directAt(rect: number, u: number, v: number, out: Float64Array): void;
  /** Indirect light of a group there, times `weight`, lx per band, added into `out`. */
  addIndirect(rect: number, u: number, v: number, group: number, weight: number, out: Float64Array): void;
  /** The lamp or window whose face a rectangle is; null for what is black. */
  faceOf(rect: number): BrightFace | null;
  /** Faces that burn: rays are sent to each of them, as a lobe's own rays meet a small lamp too rarely. */
  readonly faces: readonly BrightFace[];
}

/** A lamp face or the glass of a window. */
export interface BrightFace {
  readonly area_m2: number;
  /** Unit normal into the room. */
  readonly normal: ArrayLike<number>;
  /** Points evenly spread over it, x, y, z each; any first 16, 32 are so too. */
  readonly samples: Float64Array;
  /** Luminance for a ray that meets it along `direction` (unit), cd/m2 per group at level 1, times `weight`, added into `out`. */
  addLuminance(direction: Vec3, weight: number, out: Float64Array): void;
}
