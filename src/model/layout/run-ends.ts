import type { Kitchen, Run, RunWall } from '../kitchen';
import { tallModule } from './fixed-modules';
import { CORNER_FILLER, PANEL, WALL_FILLER, WIDEST_FILLER } from './measures';
import type { RunEnd } from './types';

/** What touches a wall to within this does reach it, mm. */
const TOUCH = 0.5;

/** One end of a run, with all widths at their least; distances are along the wall, inward from the end. */
export interface EndPlan {
  readonly kind: RunEnd;
  /** What is beyond tall units; as `kind` without any. */
  readonly outer: Exclude<RunEnd, 'tall'>;
  /** Where the run ends along its wall. */
  readonly at: number;
  /** 1 at the low end, -1 at the high one. */
  readonly inward: 1 | -1;
  /** From `at` to the end of the counter, of the carcasses, and to where modules and fillers begin. */
  readonly counter: number;
  readonly base: number;
  readonly tile: number;
  /** Least filler between there and the first module, and how much more may go here. */
  readonly filler: number;
  readonly room: number;
  /** What modules leave goes to the end of the higher rank. */
  readonly rank: number;
}

/** Length of a wall, mm. */
export const wallLength = ({ room }: Pick<Kitchen, 'room'>, wall: RunWall | 'front'): number =>
  wall === 'left' || wall === 'right' ? room.depth : room.width;

export const runOn = ({ runs }: Pick<Kitchen, 'runs'>, wall: RunWall): Run | undefined =>
  runs.find((run) => run.wall === wall);

/** Whether the run on a side wall and the one on the back wall form a corner there. */
export function formCorner(kitchen: Kitchen, side: 'left' | 'right'): boolean {
  const back = runOn(kitchen, 'back');
  const other = runOn(kitchen, side);
  if (!back || !other || other.to < kitchen.room.depth - TOUCH) return false;
  return side === 'left' ? back.from <= TOUCH : back.to >= kitchen.room.width - TOUCH;
}

/** Whether the run on the wall of a peninsula begins at it; the run's own `from` may lie anywhere within the peninsula. */
export function meetsPeninsula({ island, runs }: Kitchen): boolean {
  if (!island?.joined) return false;
  const run = runs.find(({ wall }) => wall === island.joined);
  return !!run && run.from >= island.y - TOUCH && run.from <= island.y + island.depth + TOUCH;
}

/** Both ends of a run. */
export function runEnds(kitchen: Kitchen, run: Run): { readonly from: EndPlan; readonly to: EndPlan } {
  return { from: endPlan(kitchen, run, 'from'), to: endPlan(kitchen, run, 'to') };
}

function endPlan(kitchen: Kitchen, run: Run, end: 'from' | 'to'): EndPlan {
  const { base, counter } = kitchen;
  const outer = outerEnd(kitchen, run, end);
  const isLow = end === 'from';
  const atPeninsula = isLow && outer === 'meets';
  const { island } = kitchen;
  const at = atPeninsula && island ? island.y + island.depth : run[end];
  const common = { outer, at, inward: isLow ? 1 : -1 } as const;
  const tall = isLow ? run.tall_from : run.tall_to;
  if (tall.length > 0) {
    const beyond = outer === 'free' ? PANEL : WALL_FILLER;
    const block = beyond + tall.length * tallModule(kitchen.region) + PANEL;
    const room = outer === 'free' ? WIDEST_FILLER : WIDEST_FILLER - WALL_FILLER;
    const rank = outer === 'free' ? 0 : 1;
    return { ...common, kind: 'tall', counter: block, base: block, tile: block, filler: 0, room, rank };
  }
  switch (outer) {
    case 'wall':
      return {
        ...common,
        kind: outer,
        counter: 0,
        base: 0,
        tile: 0,
        filler: WALL_FILLER,
        room: WIDEST_FILLER - WALL_FILLER,
        rank: 2,
      };
    case 'owns-corner':
      return { ...common, kind: outer, counter: 0, base: 0, tile: base.depth, ...CORNER };
    case 'meets': {
      const [edge, carcass] = atPeninsula ? [0, -counter.overhang] : [counter.depth, base.depth];
      return { ...common, kind: outer, counter: edge, base: carcass, tile: carcass, ...CORNER };
    }
    case 'free': {
      const carcass = counter.overhang + PANEL;
      return {
        ...common,
        kind: outer,
        counter: 0,
        base: carcass,
        tile: carcass,
        filler: 0,
        room: WIDEST_FILLER,
        rank: 0,
      };
    }
  }
}

const CORNER = { filler: CORNER_FILLER, room: WIDEST_FILLER + 15 - CORNER_FILLER, rank: 3 } as const;

function outerEnd(kitchen: Kitchen, run: Run, end: 'from' | 'to'): EndPlan['outer'] {
  const { wall } = run;
  if (wall === 'back') {
    if (formCorner(kitchen, end === 'from' ? 'left' : 'right')) return 'owns-corner';
  } else if (end === 'to') {
    if (formCorner(kitchen, wall)) return 'meets';
  } else if (kitchen.island?.joined === wall && meetsPeninsula(kitchen)) {
    return 'meets';
  }
  const reaches = end === 'from' ? run.from <= TOUCH : run.to >= wallLength(kitchen, wall) - TOUCH;
  return reaches ? 'wall' : 'free';
}
