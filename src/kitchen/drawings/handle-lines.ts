import type { Vec3 } from '../../engine/light/types';
import { Assembly, type Bar } from '../parts/assembly';
import { addBaseUnits } from '../parts/base-units';
import { addIsland } from '../parts/island';
import type { Side } from '../parts/side';
import { addTallUnits } from '../parts/tall-units';
import { addWallUnits } from '../parts/wall-units';
import type { Plan } from '../plan/types';
import { circle } from './tap-lines';
import type { Line, Point } from './types';

/** Radius a knob is drawn with, mm. */
const KNOB_MM = 15;

type Bars = readonly Bar[];

/** Handles of the runs. */
export const runBars = (plan: Plan): Bars =>
  barsOf((parts) => {
    addBaseUnits(parts, plan);
    addWallUnits(parts, plan);
    addTallUnits(parts, plan);
  });

/** Handles of the island. */
export const islandBars = (plan: Plan): Bars => barsOf((parts) => addIsland(parts, plan));

function barsOf(build: (parts: Assembly) => void): Bars {
  const parts = new Assembly();
  build(parts);
  return parts.bars.filter(({ kind }) => kind !== 'dial');
}

/** The handles on fronts that look out from a side, as lines of its elevation; `toX` turns a place along the side to the drawing, mm. */
export function handleLines(bars: Bars, side: Side, toX: (a: number) => number): readonly Line[] {
  const across = side.along === 0 ? 1 : 0;
  const at = (point: Vec3): Point => [toX(point[side.along]), 1000 * point[2]];
  return bars
    .filter(({ stand }) => stand[across] * side.outward > 0)
    .map(({ kind, surface, from, to }) => ({
      kind: 'handle',
      surface,
      points: kind === 'knob' ? circle(at(from), KNOB_MM) : [at(from), at(to)],
      look: kind === 'knob' ? 'plain' : 'bold',
    }));
}
