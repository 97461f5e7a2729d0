import { type Side, wallSide } from '../parts/side';
import type { Plan } from '../plan/types';

/** A stretch of counter along a wall where things may stand. */
export interface FreePlace {
  readonly side: Side;
  readonly from: number;
  readonly to: number;
  /** The end that the cooktop is at, if any. */
  readonly cooktop: 'from' | 'to' | null;
}

/** Things keep this far from cooktop, sink, ends and corners; no opening begins lower than this over them, m. */
const CLEAR = 0.06;
const TALLEST = 0.45;

/** Stretches of the counters on walls apart from sink, cooktop, corners and low windows, in the order of the runs. */
export function freePlaces(plan: Plan): readonly FreePlace[] {
  return plan.runs.flatMap((run) => {
    const { counter, ends } = run;
    const corner = plan.counter.depth;
    const whole = {
      from: counter.from + (ends.from === 'owns-corner' ? corner : 0),
      to: counter.to - (ends.to === 'owns-corner' ? corner : 0),
    };
    const low = plan.openings.filter(({ wall, sill }) => wall === run.wall && sill < plan.counter.top + TALLEST);
    const taken = [
      ...(run.sink ? [{ ...run.sink, isCooktop: false }] : []),
      ...(run.cooktop ? [{ ...run.cooktop, isCooktop: true }] : []),
      ...low.map(({ from, to }) => ({ from, to, isCooktop: false })),
    ].sort((a, b) => a.from - b.from);
    const places: FreePlace[] = [];
    let at = whole.from;
    let isAfterCooktop = false;
    for (const { from, to, isCooktop } of [...taken, { from: whole.to, to: whole.to, isCooktop: false }]) {
      const end = Math.min(from, whole.to);
      const cooktop = isCooktop ? 'to' : isAfterCooktop ? 'from' : null;
      if (end - at > 2 * CLEAR) {
        places.push({ side: wallSide(plan, run.wall), from: at + CLEAR, to: end - CLEAR, cooktop });
      }
      if (to < at) continue;
      at = to;
      isAfterCooktop = isCooktop;
    }
    return places;
  });
}
