import type { Kitchen } from '../kitchen';
import { HOOD } from './measures';
import type { Rows } from './plan-rows';

/** What stands or hangs in the room, as whole boxes in mm from the front left corner: x right, y to the back wall, z up. */
export interface Block {
  readonly kind: 'counter' | 'tall' | 'wall-unit' | 'island' | 'hood';
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

/** The boxes of a kitchen whose rows are planned; the counters with all that is below them. */
export function kitchenBlocks(kitchen: Kitchen, rows: Rows): readonly Block[] {
  const { room, base, counter, wall_units, island } = kitchen;
  const top = base.plinth_height + base.carcass_height + counter.thickness;
  const wallBottom = top + wall_units.gap_above_counter;
  const fromBack = (depth: number) => [room.depth - depth, room.depth] as const;
  const hood = rows.back.cooktop;
  const middle = (hood.from + hood.to) / 2;
  const canopyTop = top + HOOD.clearance + HOOD.canopy.height;
  const { width: chimney } = HOOD.chimney;
  return [
    { kind: 'counter', x: [0, rows.back.to], y: fromBack(counter.depth), z: [0, top] },
    {
      kind: 'counter',
      x: [0, counter.depth],
      y: [rows.left.end - counter.overhang, room.depth - counter.depth],
      z: [0, top],
    },
    { kind: 'tall', x: [rows.tall.panel.from, room.width], y: fromBack(counter.depth), z: [0, kitchen.tall_height] },
    ...rows.wall.map(
      ({ from, to }): Block => ({
        kind: 'wall-unit',
        x: [from, to],
        y: fromBack(wall_units.depth),
        z: [wallBottom, wallBottom + wall_units.height],
      }),
    ),
    { kind: 'island', x: [island.x, island.x + island.width], y: [island.y, island.y + island.depth], z: [0, top] },
    { kind: 'hood', x: [hood.from, hood.to], y: fromBack(HOOD.canopy.depth), z: [top + HOOD.clearance, canopyTop] },
    {
      kind: 'hood',
      x: [middle - chimney / 2, middle + chimney / 2],
      y: fromBack(HOOD.chimney.depth),
      z: [canopyTop, room.height],
    },
  ];
}
