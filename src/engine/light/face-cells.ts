import type { Rect } from './types';

/** Cells still to be looked at: u from, u to, v from, v to in fractions of the face, and how often they were halved. */
const stack = new Float64Array(5 * 64);
let depth = 0;

/** The cell that `nextCell` found: u from, u to, v from, v to. One walk at a time. */
export const cell = new Float64Array(4);

/** Forgets the cells of an earlier walk. */
export function clearCells(): void {
  depth = 0;
}

/** Adds a part of a face to the walk. */
export function addCell(u0: number, u1: number, v0: number, v1: number, halved = 0): void {
  const at = 5 * depth++;
  stack[at] = u0;
  stack[at + 1] = u1;
  stack[at + 2] = v0;
  stack[at + 3] = v1;
  stack[at + 4] = halved;
}

/**
 * The next cell, in `cell`, no longer than `angle` times its distance from a point: longer ones are halved across their longer
 * edge, at most `most` times. False when the walk is over.
 */
export function nextCell(
  { origin, u, v }: Rect,
  x: number,
  y: number,
  z: number,
  angle: number,
  most: number,
): boolean {
  const lu = Math.hypot(u[0], u[1], u[2]);
  const lv = Math.hypot(v[0], v[1], v[2]);
  while (depth > 0) {
    const at = 5 * --depth;
    const u0 = stack[at]!;
    const u1 = stack[at + 1]!;
    const v0 = stack[at + 2]!;
    const v1 = stack[at + 3]!;
    const halved = stack[at + 4]!;
    const um = (u0 + u1) / 2;
    const vm = (v0 + v1) / 2;
    const distance = Math.hypot(
      origin[0] + u[0] * um + v[0] * vm - x,
      origin[1] + u[1] * um + v[1] * vm - y,
      origin[2] + u[2] * um + v[2] * vm - z,
    );
    const du = (u1 - u0) * lu;
    const dv = (v1 - v0) * lv;
    if (Math.max(du, dv) <= angle * distance || halved >= most) {
      cell[0] = u0;
      cell[1] = u1;
      cell[2] = v0;
      cell[3] = v1;
      return true;
    }
    if (du >= dv) {
      addCell(u0, um, v0, v1, halved + 1);
      addCell(um, u1, v0, v1, halved + 1);
    } else {
      addCell(u0, u1, v0, vm, halved + 1);
      addCell(u0, u1, vm, v1, halved + 1);
    }
  }
  return false;
}

/** Corners of the cell found, counter-clockwise seen from the front, into `quad` (12 values). */
export function cellCorners({ origin, u, v }: Rect, quad: Float64Array): void {
  for (let c = 0; c < 4; c++) {
    const fu = c === 0 || c === 3 ? cell[0]! : cell[1]!;
    const fv = c < 2 ? cell[2]! : cell[3]!;
    for (let k = 0; k < 3; k++) quad[3 * c + k] = origin[k]! + u[k]! * fu + v[k]! * fv;
  }
}
