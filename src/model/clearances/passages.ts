import type { PlanPoint } from '../fixture';
import type { Kitchen, RunWall } from '../kitchen';
import { kitchenBlocks } from '../layout/blocks';
import { runOn } from '../layout/run-ends';
import type { Rows } from '../layout/types';
import type { Extent } from '../layout/wall-box';
import type { Stretch } from './types';

/** Free floor one passes or works in. */
export interface Passage {
  readonly kind: 'work-aisle' | 'walkway' | 'behind-seats';
  readonly width_mm: number;
  readonly at: Stretch;
}

interface Area {
  readonly x: Extent;
  readonly y: Extent;
}

/** Every passage between units, and between units and walls: from edge to edge. */
export function passagesOf(kitchen: Kitchen, rows: Rows): readonly Passage[] {
  const runs = rows.runs.map((run) => ({ wall: run.wall, area: areaOf(kitchen, { runs: [run], island: null }) }));
  const areas = new Map(runs.map(({ wall, area }) => [wall, area]));
  return [...beforeRuns(kitchen, areas), ...roundIsland(kitchen, areas)];
}

function areaOf(kitchen: Kitchen, rows: Rows): Area {
  const blocks = kitchenBlocks(kitchen, rows).filter(({ kind }) => kind === 'counter' || kind === 'tall');
  const hull = (extents: readonly Extent[]): Extent => [
    Math.min(...extents.map(([low]) => low)),
    Math.max(...extents.map(([, high]) => high)),
  ];
  return { x: hull(blocks.map(({ x }) => x)), y: hull(blocks.map(({ y }) => y)) };
}

type Areas = ReadonlyMap<RunWall, Area>;

/** From each run to the run or wall across, where no island stands between. */
function beforeRuns(kitchen: Kitchen, areas: Areas): Passage[] {
  const { room, island } = kitchen;
  const passages: Passage[] = [];
  const [left, back, right] = [areas.get('left'), areas.get('back'), areas.get('right')];
  if (left && right && shared(left.y, right.y)) {
    passages.push(passage('work-aisle', acrossX(left.x[1], right.x[0], middle(shared(left.y, right.y)!))));
  } else if (left && !(island && shared(left.y, islandArea(island).y))) {
    passages.push(passage('work-aisle', acrossX(left.x[1], room.width, middle(left.y))));
  } else if (right && !left && !(island && shared(right.y, islandArea(island).y))) {
    passages.push(passage('work-aisle', acrossX(0, right.x[0], middle(right.y))));
  }
  if (back && !(island && shared(back.x, islandArea(island).x))) {
    const inner: Extent = [runOn(kitchen, 'left') ? kitchen.counter.depth : back.x[0], back.x[1]];
    passages.push(passage('work-aisle', acrossY(middle(inner), 0, back.y[0])));
  }
  return passages;
}

/** Before the four sides of an island: units make an aisle, walls a walkway, seats a passage behind them. */
function roundIsland(kitchen: Kitchen, areas: Areas): Passage[] {
  const { island, room } = kitchen;
  if (!island) return [];
  const { x, y } = islandArea(island);
  const passages: Passage[] = [];
  const back = areas.get('back');
  const backAcross = back && shared(back.x, x);
  const backAt = backAcross ? middle(backAcross) : middle(x);
  passages.push(passage('work-aisle', acrossY(backAt, y[1], backAcross ? back.y[0] : room.depth)));
  for (const side of ['left', 'right'] as const) {
    if (island.joined === side) continue;
    const run = areas.get(side);
    const across = run && shared(run.y, y);
    const at = across ? middle(across) : middle(y);
    const kind = across ? 'work-aisle' : 'walkway';
    passages.push(
      side === 'left'
        ? passage(kind, acrossX(across ? run.x[1] : 0, x[0], at))
        : passage(kind, acrossX(x[1], across ? run.x[0] : room.width, at)),
    );
  }
  const kind = island.stools > 0 ? 'behind-seats' : 'walkway';
  passages.push(passage(kind, acrossY(middle(x), 0, y[0])));
  return passages;
}

const islandArea = (island: NonNullable<Kitchen['island']>): Area => ({
  x: [island.x, island.x + island.width],
  y: [island.y, island.y + island.depth],
});

const middle = ([low, high]: Extent): number => (low + high) / 2;

function shared(a: Extent, b: Extent): Extent | null {
  const [low, high] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  return high > low ? [low, high] : null;
}

const acrossX = (from: number, to: number, y: number): Stretch => ({ from: [from, y], to: [to, y] });
const acrossY = (x: number, from: number, to: number): Stretch => ({ from: [x, from], to: [x, to] });

const passage = (kind: Passage['kind'], at: Stretch): Passage => ({ kind, width_mm: lengthOf(at), at });

const lengthOf = ({ from, to }: Stretch): number => distance(from, to);

export const distance = (a: PlanPoint, b: PlanPoint): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
