import type { Kitchen } from '../kitchen';
import { wallUnitHeights } from './free-spans';
import { counterTop, hoodPlace } from './hood-place';
import { HOOD, SHELF } from './measures';
import type { Rows } from './types';
import { beforeWall, type Extent } from './wall-box';

/** What stands or hangs in the room, as whole boxes in mm from the front left corner: x right, y to the back wall, z up. */
export interface Block {
  readonly kind: 'counter' | 'tall' | 'wall-unit' | 'shelf' | 'island' | 'hood';
  readonly x: Extent;
  readonly y: Extent;
  readonly z: Extent;
}

/** The boxes of a kitchen whose rows are planned; the counters with all that is below them. */
export function kitchenBlocks(kitchen: Kitchen, rows: Rows): readonly Block[] {
  const { counter, wall_units, island, tall_height } = kitchen;
  const top = counterTop(kitchen);
  const heights = wallUnitHeights(kitchen);
  const blocks = rows.runs.flatMap((run): Block[] => {
    const before = (along: { readonly from: number; readonly to: number }, depth: number) =>
      beforeWall(kitchen, run.wall, [along.from, along.to], [0, depth]);
    return [
      { kind: 'counter', ...before(run.counter, counter.depth), z: [0, top] },
      ...run.tall.map((tall): Block => ({ kind: 'tall', ...before(tall, counter.depth), z: [0, tall_height] })),
      ...run.over.map((row): Block => ({ kind: 'wall-unit', ...before(row, wall_units.depth), z: heights })),
      ...run.shelves.map(
        (shelf): Block => ({
          kind: 'shelf',
          ...before(shelf, SHELF.depth),
          z: [heights[0], heights[0] + SHELF.apart + SHELF.thickness],
        }),
      ),
    ];
  });
  if (island) {
    const { x, y, width, depth } = island;
    blocks.push({ kind: 'island', x: [x, x + width], y: [y, y + depth], z: [0, top] });
  }
  return [...blocks, ...hoodBlocks(kitchen, rows)];
}

function hoodBlocks(kitchen: Kitchen, rows: Rows): Block[] {
  const hood = hoodPlace(kitchen, rows);
  if (!hood) return [];
  const { run, from, to, depth, bottom, top } = hood;
  const body: Block = { kind: 'hood', ...beforeWall(kitchen, run, [from, to], [0, depth]), z: [bottom, top] };
  if (hood.kind === 'built-in') return [body];
  const middle = (from + to) / 2;
  const half = HOOD.chimney.width / 2;
  return [
    body,
    {
      kind: 'hood',
      ...beforeWall(kitchen, run, [middle - half, middle + half], [0, HOOD.chimney.depth]),
      z: [top, kitchen.room.height],
    },
  ];
}
