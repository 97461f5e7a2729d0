import type { Wall } from '../../model/kitchen';
import { around, type Box, overlap, type Place } from './boxes';
import { WALL_LETTERS } from './letters';
import type { SheetLayout } from './sheet-layout';
import { paperBox } from './tag-demands';

/** The letter of a wall on the plan: in a circle, with a point towards the wall. */
export interface PlacedMark {
  readonly letter: string;
  readonly at: Place;
  /** Which way it points, a step on paper. */
  readonly way: Place;
  readonly box: Box;
}

/** Radius of the circle, and how far its point reaches, mm. */
export const MARK = { radius: 2.6, point: 4.4 } as const;
const SIZE = 2 * MARK.point;

const WAYS: { readonly [W in Wall]: Place } = { back: [0, -1], right: [1, 0], front: [0, 1], left: [-1, 0] };

/** A free place on the floor for the letter of each wall, near to it, at best before its middle. */
export function placeMarks(layout: SheetLayout, kept: readonly Box[], edges: readonly Box[]): readonly PlacedMark[] {
  const { width, height, drawing } = layout;
  const bodies = drawing.shapes.filter(({ kind }) => kind !== 'floor').map((shape) => paperBox(layout, shape));
  const placed: PlacedMark[] = [];
  for (const [wall, letter] of Object.entries(WALL_LETTERS) as [Wall, string][]) {
    const way = WAYS[wall];
    const [isAcross, length, deep] = way[0] === 0 ? [true, width, height] : [false, height, width];
    let best: { readonly mark: PlacedMark; readonly cost: number } | null = null;
    for (let away = SIZE / 2 + 0.5; away < 0.6 * deep; away += 1.5) {
      for (let along = SIZE / 2; along <= length - SIZE / 2; along += 1.5) {
        const off = way[0] + way[1] < 0 ? away : deep - away;
        const at: Place = isAcross ? [along, off] : [off, along];
        const box = around(at, SIZE, SIZE);
        if ([...bodies, ...kept, ...placed.map((one) => one.box)].some((one) => overlap(one, box))) continue;
        const over = edges.filter((edge) => overlap(edge, box)).length;
        const cost = away + 0.35 * Math.abs(along - length / 2) + 15 * over;
        if (!best || cost < best.cost) best = { mark: { letter, at, way, box }, cost };
      }
    }
    if (best) placed.push(best.mark);
  }
  return placed;
}
