import type { Kitchen, RunWall } from '../../model/kitchen';
import { planRows } from '../../model/layout/plan-rows';
import type { RunRows } from '../../model/layout/types';
import { chainOf } from './chains';
import type { Chain } from './types';

/**
 * Dimensions of the plan: along the back and the side walls what stands there and the whole wall; below and on the right what one passes
 * across the room: depths of the runs, aisles, the island. Each chain runs from wall to wall, mm.
 */
export function planChains(kitchen: Kitchen): readonly Chain[] {
  const { room, counter, island, openings, door } = kitchen;
  const { width, depth } = room;
  const rows = planRows(kitchen);
  const on = (wall: RunWall) => rows.runs.find((run) => run.wall === wall);
  const [left, back, right] = [on('left'), on('back'), on('right')];
  const across = [
    0,
    ...(left && island?.joined !== 'left' ? [counter.depth] : []),
    ...(island ? [island.x, island.x + island.width] : []),
    ...(right && island?.joined !== 'right' ? [width - counter.depth] : []),
    width,
  ];
  const along = [
    0,
    ...(island ? [island.y, island.y + island.depth] : []),
    ...(back ? [depth - counter.depth] : []),
    depth,
  ];
  const front = openings
    .filter(({ wall }) => wall === 'front')
    .flatMap(({ center, width: wide }) => [center - wide / 2, center + wide / 2]);
  const doorway = [width - door.from_right - door.width, width - door.from_right];
  return [
    ...runChain('above', back, width),
    ...runChain('left', left, depth),
    ...runChain('right', right, depth),
    chainOf('whole', 'above', isParted(back, width) ? 1 : 0, [0, width]),
    chainOf('whole', 'left', isParted(left, depth) ? 1 : 0, [0, depth]),
    chainOf('openings', 'below', 0, [0, ...front, ...doorway, width]),
    ...(across.length > 2 ? [chainOf('across', 'below', 1, across)] : []),
    ...(along.length > 2 ? [chainOf('across', 'right', isParted(right, depth) ? 1 : 0, along)] : []),
  ];
}

/** What stands along a wall, from wall to wall; none where it says no more than the whole. */
function runChain(side: Chain['side'], run: RunRows | undefined, length: number): readonly Chain[] {
  if (!run || !isParted(run, length)) return [];
  return [chainOf('run', side, 0, [0, ...[run.counter, ...run.tall].flatMap(({ from, to }) => [from, to]), length])];
}

const isParted = (run: RunRows | undefined, length: number): boolean =>
  run !== undefined && (run.tall.length > 0 || run.counter.from > 0.5 || run.counter.to < length - 0.5);
