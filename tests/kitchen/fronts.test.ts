import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { FineRect } from '../../src/engine/light/types';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { bounds, facing } from './geometry';

const shaker = buildRoom(scene as Kitchen).light.fine;
const flat = buildRoom({ ...(scene as Kitchen), fronts: { ...(scene as Kitchen).fronts, style: 'flat' } }).light.fine;
const surface = SURFACES.indexOf('base-fronts');
const mm = (metres: number): number => Math.round(metres * 1e4) / 10;

/** Faces of the back run's fronts that look into the room, by piece. */
function frontPieces(fine: readonly FineRect[]): FineRect[][] {
  const pieces = new Map<number, FineRect[]>();
  for (const rect of fine) {
    const { axis, sign } = facing(rect);
    if (rect.surface !== surface || rect.piece === 0 || axis !== 1 || sign !== -1) continue;
    pieces.set(rect.piece, [...(pieces.get(rect.piece) ?? []), rect]);
  }
  return [...pieces.values()];
}

function size(rects: readonly FineRect[]): [width: number, height: number] {
  const all = rects.map(bounds);
  const reach = (k: 0 | 2): number => mm(Math.max(...all.map((b) => b.max[k])) - Math.min(...all.map((b) => b.min[k])));
  return [reach(0), reach(2)];
}

it('makes slab doors module less 3 wide and 715 high for a 720 carcass (common practice: 600 -> 597, 720 -> 715)', () => {
  const sizes = frontPieces(flat).map((rects) => size(rects).join(' x '));
  // Two pairs of 900: (900 - 2 * 3) / 2 each; a 900 drawer stack: 897 wide, 140 over two of (715 - 140 - 2 * 3) / 2.
  expect(sizes.filter((s) => s === '447 x 715')).toHaveLength(4);
  expect(sizes.filter((s) => s === '897 x 284.5')).toHaveLength(2);
  expect(sizes.filter((s) => s === '897 x 140')).toHaveLength(1);
});

it('stands the slabs 20 mm before the carcass, with their edges', () => {
  const door = frontPieces(flat).find((rects) => size(rects)[1] === 715 && size(rects)[0] === 447)!;
  expect(door).toHaveLength(1);
  expect(mm(door[0]!.origin[1])).toBe(4000 - 600);
  const edges = flat.filter((rect) => rect.piece === door[0]!.piece && rect !== door[0]);
  expect(edges).toHaveLength(4);
  for (const edge of edges) {
    const { min, max } = bounds(edge);
    expect([mm(min[1]), mm(max[1])]).toEqual([3400, 3420]);
  }
});

it('shows the carcass 20 mm behind a 3 mm joint', () => {
  const strips = flat.filter((rect) => {
    const { axis, sign } = facing(rect);
    return rect.surface === surface && rect.piece === 0 && axis === 1 && sign === -1;
  });
  const upright = strips.filter((rect) => size([rect])[1] > 700 && size([rect])[0] === 3);
  expect(upright.length).toBeGreaterThanOrEqual(4);
  for (const strip of upright) expect(mm(strip.origin[1])).toBe(3420);
});

it('builds five-piece doors: 64 mm frame, panel 8 mm back, four edges stepping down to it', () => {
  const door = frontPieces(shaker).find((rects) => size(rects).join() === '447,715')!;
  expect(door).toHaveLength(5);
  const panel = door.find((rect) => mm(rect.origin[1]) === 3408)!;
  expect(size([panel])).toEqual([447 - 2 * 64, 715 - 2 * 64]);
  const stiles = door.filter((rect) => size([rect]).join() === '64,715');
  expect(stiles).toHaveLength(2);
  const steps = shaker.filter((rect) => {
    const { min, max } = bounds(rect);
    return rect.piece === panel.piece && mm(min[1]) === 3400 && mm(max[1]) === 3408;
  });
  expect(steps.map((rect) => facing(rect).axis).sort()).toEqual([0, 0, 2, 2]);
});

it('makes drawers too shallow for a frame as slabs', () => {
  const drawer = frontPieces(shaker).find((rects) => size(rects).join() === '897,140')!;
  expect(drawer).toHaveLength(1);
});

it('lets the grain run up panel and stiles and along the rails, each piece cut from a place of its own', () => {
  const doors = frontPieces(shaker).filter((rects) => size(rects).join() === '447,715');
  expect(doors).toHaveLength(4);
  const offset = ({ origin, pattern, u, v }: FineRect): string => {
    // A rail lies: it is wider than high, and at either end of the door.
    const [wide, high] = [Math.abs(u[0] + v[0]), Math.abs(u[2] + v[2])];
    const along = high < 0.1 && wide > 0.1 ? 0 : 2;
    // s follows the grain at one to one: what is left is the piece's own offset.
    expect(pattern.su).toBeCloseTo(u[along], 9);
    expect(pattern.sv).toBeCloseTo(v[along], 9);
    return `${along} ${(pattern.s0 - origin[along]).toFixed(6)} ${(pattern.t0 - origin[2 - along]!).toFixed(6)}`;
  };
  const offsets = doors.map((rects) => new Set(rects.map(offset)));
  // Panel, two stiles, two rails, the same on both doors of a unit; nothing of it goes on in the other unit.
  for (const set of offsets) {
    expect(set.size).toBe(5);
    expect([...set].filter((one) => one.startsWith('0'))).toHaveLength(2);
  }
  expect(new Set(offsets.flatMap((set) => [...set])).size).toBe(10);
});
