import type { SurfaceId } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';
import { counterSlabs } from '../parts/slabs';
import { drawPlan } from '../plan/plan-drawing';
import { planKitchen } from '../plan/plan-kitchen';
import type { Plan } from '../plan/types';
import type { ScheduleRow } from '../schedule/types';
import { coursingOf } from './coursing';
import type { LaidPieces } from './laid-pieces';
import { planChains } from './plan-chains';
import { planLines } from './plan-lines';
import { linesOf } from './tap-lines';
import type { Drawing, Gap, Point, Shape } from './types';

/** The kitchen from above, the back wall at the top: x from the left wall, y from the wall of the door. */
export function planOf(
  kitchen: Kitchen,
  rows: readonly ScheduleRow[],
  laid: ReadonlyMap<SurfaceId, LaidPieces>,
): Drawing {
  const plan = planKitchen(kitchen);
  const { width_mm: width, depth_mm: height } = drawPlan(kitchen);
  const floor: Shape = { kind: 'floor', surface: 'floor', x: 0, y: 0, width, height };
  const pieces = laid.get('floor');
  return {
    id: 'plan',
    width,
    height,
    shapes: [floor, ...standing(kitchen)],
    lines: [...planLines(kitchen, plan), ...linesOf('seam', null, 'bold', seams(plan, rows))],
    coursings: pieces ? [coursingOf('floor', pieces, floor, false)] : [],
    chains: planChains(kitchen),
    levels: [],
    room: { gaps: gapsOf(kitchen), bearing_deg: kitchen.site.bearing_deg },
  };
}

/** Counters, island, sink, cooktop and tall units; what hangs is drawn in lines. */
function standing(kitchen: Kitchen): readonly Shape[] {
  const kinds = {
    counter: 'counter',
    island: 'island',
    waterfall: 'island',
    sink: 'sink',
    cooktop: 'cooktop',
    tall: 'tall',
  } as const;
  const surfaces: { readonly [K in keyof typeof kinds]: SurfaceId | null } = {
    counter: 'counter',
    island: 'island-counter',
    waterfall: 'island-counter',
    sink: 'sink',
    cooktop: 'appliance',
    tall: null,
  };
  return drawPlan(kitchen).shapes.flatMap(({ kind, x, y, width, depth }): Shape[] => {
    if (kind === 'wall-unit' || kind === 'shelf' || kind === 'hood') return [];
    return [{ kind: kinds[kind], surface: surfaces[kind], x, y, width, height: depth }];
  });
}

/** Where pieces of a counter meet within a run, as they are cut from slabs. */
function seams(plan: Plan, rows: readonly ScheduleRow[]): readonly (readonly Point[])[] {
  return (['counter', 'island-counter'] as const).flatMap((surface) => {
    const row = rows.find(({ kind, surfaces }) => kind !== 'grout' && surfaces.includes(surface));
    const slabs = counterSlabs(plan).filter((slab) => slab.surface === surface);
    return (row?.quantity?.slabs?.seams ?? []).flatMap(({ piece, at_mm }): (readonly Point[])[] => {
      const [of, kind, number] = piece.split(' ');
      const slab = of === surface && (kind === 'leg' || kind === 'island') ? slabs[Number(number) - 1] : undefined;
      if (!slab) return [];
      const [min, max] = slab.box.map((corner) => corner.map((m) => 1000 * m)) as [number[], number[]];
      const at = min[slab.length]! + at_mm;
      const ends: readonly Point[] =
        slab.length === 0
          ? [
              [at, min[1]!],
              [at, max[1]!],
            ]
          : [
              [min[0]!, at],
              [max[0]!, at],
            ];
      return [ends];
    });
  });
}

const gapsOf = ({ openings, open_side, door, room }: Kitchen): readonly Gap[] => [
  ...openings.map(
    ({ kind, wall, center, width }): Gap => ({ kind, wall, from: center - width / 2, to: center + width / 2 }),
  ),
  ...(open_side ? [{ kind: 'open-side', wall: open_side.wall, from: open_side.from, to: open_side.to } as const] : []),
  {
    kind: 'door',
    wall: 'front',
    from: room.width - door.from_right - door.width,
    to: room.width - door.from_right,
  },
];
