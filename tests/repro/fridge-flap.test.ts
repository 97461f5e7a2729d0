import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { buildFine } from '../../src/kitchen/fine';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { HandleKind, Kitchen } from '../../src/model/kitchen';

// The low flap over a fridge had an upright bar at its side, as if it were hinged like a door.
const scene: Kitchen = JSON.parse(readFileSync('scenes/l.json', 'utf8'));

it.each<HandleKind>(['bar', 'knob', 'edge'])('lifts the flap over a fridge by a %s in its middle', (handle) => {
  const plan = planKitchen({ ...scene, fronts: { ...scene.fronts, handle } });
  const fridge = plan.runs
    .flatMap((run) => run.tall.flatMap(({ units }) => units))
    .find(({ kind }) => kind === 'fridge')!;
  const over = buildFine(plan).bars.filter(
    ({ surface, from }) =>
      surface === 'hardware' && from[2] > plan.tallTop - 0.3 && from[0] > fridge.from && from[0] < fridge.to,
  );
  expect(over).toHaveLength(1);
  const [{ from, to }] = over as [(typeof over)[0]];
  expect((from[0] + to[0]) / 2).toBeCloseTo((fridge.from + fridge.to) / 2, 9);
  expect(from[2]).toBeCloseTo(to[2], 12);
});
