import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { buildRoom } from '../../src/kitchen/build-room';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Kitchen } from '../../src/model/kitchen';

// A door half behind a counter: one stood in its middle, over the counter's front, with the nearest wall unit before one's face.
it.each(['galley', 'u'])('stands aside from the counter in the doorway of the %s', (name) => {
  const kitchen: Kitchen = JSON.parse(readFileSync(`scenes/${name}.json`, 'utf8'));
  const { width, counter, door } = planKitchen(kitchen);
  const [x] = buildRoom(kitchen).viewpoints.find(({ id }) => id === 'doorway')!.eye;
  expect(width - counter.depth - x).toBeGreaterThan(0.15);
  expect(x).toBeGreaterThan(door.from + 0.1);
});

it('stands in the middle of a doorway that is clear', () => {
  const kitchen: Kitchen = JSON.parse(readFileSync('scenes/l-island.json', 'utf8'));
  const { door } = planKitchen(kitchen);
  expect(buildRoom(kitchen).viewpoints[0]!.eye[0]).toBeCloseTo((door.from + door.to) / 2, 12);
});
