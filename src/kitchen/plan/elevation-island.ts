import { addSeatPanels, islandEnds, seatSide } from '../parts/island';
import { waterfallEnds } from '../parts/waterfall';
import type { Piece } from './elevation-piece';
import { fronts } from './elevation-units';
import type { Plan, PlannedIsland } from './types';

/** The seat side of an island or peninsula: panels, plinth, counter, ends that go down to the floor. */
export function islandShapes(plan: Plan, island: PlannedIsland): Piece[] {
  const { counter, plinth } = plan;
  const { inner, panels } = islandEnds(plan, island);
  const { x0, x1 } = island.counter;
  return [
    { kind: 'side', surface: 'island-fronts', a: inner, z: [plinth.top, counter.bottom] },
    { kind: 'plinth', surface: 'plinth', a: inner, z: [0, plinth.top] },
    ...panels.map((a): Piece => ({ kind: 'panel', surface: 'island-fronts', a, z: [0, counter.bottom] })),
    ...fronts(seatSide(island), 'front', (parts) => addSeatPanels(parts, plan, island)),
    ...waterfallEnds(plan).map(
      ({ min, max }): Piece => ({
        kind: 'counter-edge',
        surface: 'island-counter',
        a: [min[0], max[0]],
        z: [min[2], max[2]],
      }),
    ),
    { kind: 'counter-edge', surface: 'island-counter', a: [x0, x1], z: [counter.bottom, counter.top] },
  ];
}
