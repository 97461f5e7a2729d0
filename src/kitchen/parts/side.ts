import type { Solid, Vec3 } from '../../engine/light/types';
import type { Wall } from '../../model/kitchen';
import type { Plan } from '../plan/types';
import type { Face } from './axes';

/**
 * A wall (or the back of the island) that units stand against, with its own coordinates in m:
 * a along the wall (the world's x or y), d out from the wall, z up.
 */
export interface Side {
  readonly along: 0 | 1;
  /** World position of d = 0. */
  readonly wall: number;
  readonly outward: 1 | -1;
}

export interface Extent {
  readonly a: readonly [number, number];
  readonly d: readonly [number, number];
  readonly z: readonly [number, number];
}

/** A wall of the room; d < 0 lies in the wall. */
export function wallSide({ width, depth }: Plan, wall: Wall): Side {
  const along = wall === 'left' || wall === 'right' ? 1 : 0;
  if (wall === 'left' || wall === 'front') return { along, wall: 0, outward: 1 };
  return { along, wall: wall === 'right' ? width : depth, outward: -1 };
}

export function pointAt(side: Side, a: number, d: number, z: number): Vec3 {
  const out = side.wall + side.outward * d;
  return side.along === 0 ? [a, out, z] : [out, a, z];
}

/** Whether a grows (1) or shrinks (-1) to the right of one who faces this side. */
export const rightward = ({ along, outward }: Side): 1 | -1 => (along === 1 ? outward : outward === 1 ? -1 : 1);

/** The extent as a box in the world. */
export function boxAt(side: Side, { a, d, z }: Extent): readonly [min: Vec3, max: Vec3] {
  const p = pointAt(side, a[0], d[0], z[0]);
  const q = pointAt(side, a[1], d[1], z[1]);
  const least: Vec3 = [Math.min(p[0], q[0]), Math.min(p[1], q[1]), Math.min(p[2], q[2])];
  const most: Vec3 = [Math.max(p[0], q[0]), Math.max(p[1], q[1]), Math.max(p[2], q[2])];
  return [least, most];
}

/** The extent as a solid. */
export function solidAt(side: Side, extent: Extent): Solid {
  const [min, max] = boxAt(side, extent);
  return { min, max };
}

/** A field in a plane d = constant as a box that straddles it. */
export const around = (side: Side, { a, d, z }: Extent): Solid =>
  solidAt(side, { a, d: [d[0] - 0.01, d[1] + 0.01], z });

/** The world face that looks along +-a or +-d of this side. */
export function faceAt(side: Side, local: 'a-' | 'a+' | 'd-' | 'd+'): Face {
  const towards = local[1] === '+' ? 1 : -1;
  const sign = local[0] === 'd' ? towards * side.outward : towards;
  const axis = (local[0] === 'a') === (side.along === 0) ? 'x' : 'y';
  return `${axis}${sign > 0 ? '+' : '-'}` as Face;
}
