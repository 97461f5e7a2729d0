import { expect, it } from 'vitest';
import { drawElevation } from '../../src/kitchen/plan/elevation-drawing';
import type { Kitchen } from '../../src/model/kitchen';
import { LAYOUTS } from '../kitchen/layouts';

// In a kitchen along three walls the wall units of the back wall, which own both corners, were not seen from their end.

const kitchen: Kitchen = {
  ...LAYOUTS['U']!,
  runs: LAYOUTS['U']!.runs.map((run) => ({ ...run, over: 'units', tall_from: [] })),
};

it.each([
  ['left', (width: number, depth: number) => width - depth],
  ['right', () => 0],
] as const)('the row of the back wall is drawn at its end of the %s wall', (wall, at) => {
  const { width_mm, shapes } = drawElevation(kitchen, wall);
  const { depth, height } = kitchen.wall_units;
  const end = shapes.find((one) => one.kind === 'side' && one.surface === 'wall-fronts' && one.width === depth);
  expect(end).toMatchObject({ x: at(width_mm, depth), height });
});
