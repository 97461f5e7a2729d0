import { checkKitchen } from '../check-kitchen';
import type { Kitchen, Opening } from '../kitchen';
import { wallUnitHeights } from '../layout/free-spans';
import { counterTop } from '../layout/hood-place';
import { NOSING } from '../layout/measures';
import { planRows } from '../layout/plan-rows';
import { runOn, wallLength } from '../layout/run-ends';
import { fitDoor } from './fit-door';
import { type LayoutId, layoutDrafts } from './layout-drafts';

/**
 * A kitchen laid out in its room with its own sizes, without openings and lamps, or with none of what else does not fit;
 * null when the layout does not go into the room.
 */
export function layOut(layout: LayoutId, like: Kitchen): Kitchen | null {
  const bare: Kitchen = { ...lowered(like), openings: [], fixtures: [] };
  for (const { draft } of layoutDrafts(layout, bare)) {
    for (const open_side of bare.open_side ? [bare.open_side, null] : [null]) {
      const kitchen = fitDoor({ ...bare, ...draft, open_side });
      if (checkKitchen(kitchen, '').length === 0) return settled(kitchen);
    }
  }
  return null;
}

/** With sink and cooktop said to be where modules let them stand, so that a window can be right over them. */
function settled(kitchen: Kitchen): Kitchen {
  const { runs } = planRows(kitchen);
  const middle = (name: 'sink' | 'cooktop'): number => {
    const { from, to } = runs.find((run) => run[name])![name]!;
    return Math.round((from + to) * 5) / 10;
  };
  const next = {
    ...kitchen,
    sink: { ...kitchen.sink, center: middle('sink') },
    cooktop: { ...kitchen.cooktop, center: middle('cooktop') },
  };
  return checkKitchen(next, '').length === 0 ? next : kitchen;
}

/** Wall and tall units that would be higher than the room, made lower. */
export function lowered(kitchen: Kitchen): Kitchen {
  const { room, wall_units, tall_height } = kitchen;
  const [bottom] = wallUnitHeights(kitchen);
  return {
    ...kitchen,
    wall_units: { ...wall_units, height: Math.max(200, Math.min(wall_units.height, Math.floor(room.height - bottom))) },
    tall_height: Math.min(tall_height, room.height),
  };
}

/** Where one would have a window: over the sink where nothing hangs there, between the runs of a galley, else on the left wall. */
export function usualWindow(kitchen: Kitchen): Opening {
  const { sink, room, upstand_height } = kitchen;
  const over = runOn(kitchen, sink.run)?.over === 'none';
  const wall = over ? sink.run : runOn(kitchen, 'back') ? 'left' : 'back';
  const length = wallLength(kitchen, wall);
  const isOverCounter = runOn(kitchen, wall) !== undefined;
  const sill = isOverCounter
    ? Math.ceil((counterTop(kitchen) + upstand_height + NOSING.thickness + 28) / 10) * 10
    : 900;
  return {
    id: 'window',
    kind: 'window',
    wall,
    center: over ? sink.center : Math.round(length * (wall === 'back' ? 0.5 : 0.45)),
    width: 1600,
    sill,
    height: Math.max(400, Math.min(1200, room.height - sill - 200)),
    reveal: 160,
    leaves: 2,
    panes: 2,
    facing_deg: 0,
  };
}
