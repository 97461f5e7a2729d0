import type { Vec3 } from '../../engine/light/types';
import type { Axis, Sign } from './axes';
import { rightward, type Side } from './side';

/** Pattern coordinates (s, t) in m of a point on a face whose outward normal lies along an axis. Affine per face. */
export type Coordinates = (point: Vec3, normal: Axis, sign: Sign) => readonly [s: number, t: number];

/** Coordinates in the plane itself, from a corner: s level, t up; on level faces s along x, t along y. */
export const inPlane =
  (from: Vec3 = [0, 0, 0]): Coordinates =>
  ([x, y, z], normal) => {
    if (normal === 0) return [y - from[1], z - from[2]];
    if (normal === 1) return [x - from[0], z - from[2]];
    return [x - from[0], y - from[1]];
  };

/**
 * A sheet of tile on a wall, from the lower left corner of its face: s to the right as one faces it, t up. Its edges (it is
 * `thickness` m thick) are folded back into the face, so that they add nothing to its extent.
 */
export function onWall(side: Side, left: number, bottom: number, thickness: number): Coordinates {
  const right = rightward(side);
  return (point, normal, sign) => {
    const behind = thickness - side.outward * (point[side.along === 0 ? 1 : 0] - side.wall);
    const along = point[side.along] - (normal === side.along ? sign * behind : 0);
    return [right * (along - left), point[2] - bottom - (normal === 2 ? sign * behind : 0)];
  };
}

/**
 * A slab seen from above, with its edges and underside unfolded outward, so that a vein runs over the edge.
 * `length` is the axis that s follows.
 */
export function unfolded(min: Vec3, max: Vec3, length: 0 | 1): Coordinates {
  const width = length === 0 ? 1 : 0;
  return (point, normal, sign) => {
    const down = max[2] - point[2];
    const beyond = (axis: 0 | 1): number => (sign > 0 ? max[axis] + down : min[axis] - down);
    const s = normal === length ? beyond(length) : point[length];
    const t = normal === width ? beyond(width) : point[width];
    return [s, t];
  };
}

/**
 * An end of a slab (from `min` to `max`) that turns down to the floor, on the side `way` of the axis `length`: the pattern runs
 * on over the corner and round the upright edges of the end, as of one thick piece; its inner face shows the same figure.
 */
export function turnedDown(min: Vec3, max: Vec3, length: 0 | 1, way: Sign): Coordinates {
  const width = length === 0 ? 1 : 0;
  const outer = way > 0 ? max[length] : min[length];
  return (point, normal, sign) => {
    const s = outer + way * (max[2] - point[2]);
    const behind = Math.abs(outer - point[length]);
    const t = normal !== width ? point[width] : sign > 0 ? max[width] + behind : min[width] - behind;
    return [s, t];
  };
}

/**
 * Grain along an axis: s follows it wherever it lies in the face. `number` shifts the pattern, so that each unit is cut
 * from another place of the sheet; pieces of one unit share it.
 */
export function grained(grain: Axis, number: number): Coordinates {
  const ds = 7 * scatter(number);
  const dt = 3 * scatter(number + 7919);
  return (point, normal) => {
    const others = ([0, 1, 2] as const).filter((axis) => axis !== normal);
    const [s, t] = others[1] === grain ? [others[1], others[0]] : [others[0], others[1]];
    return [point[s!]! + ds, point[t!]! + dt];
  };
}

/** No pattern: black faces. */
export const blank: Coordinates = () => [0, 0];

/** A fixed, even scatter of integers over 0-1 (Wang's integer hash, public domain). */
function scatter(number: number): number {
  let h = number >>> 0;
  h = (h ^ 61 ^ (h >>> 16)) >>> 0;
  h = Math.imul(h, 9) >>> 0;
  h = (h ^ (h >>> 4)) >>> 0;
  h = Math.imul(h, 0x27d4eb2d) >>> 0;
  h = (h ^ (h >>> 15)) >>> 0;
  return h / 4294967296;
}
