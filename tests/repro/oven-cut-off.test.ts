import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { directionThrough, lensTowards } from '../../src/engine/light/lens';
import { buildRoom } from '../../src/kitchen/build-room';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';

// The picture from the doorway ended in the middle of the oven: one looked past the end of a kitchen along one wall.
it.each(['doorway', 'seated'])('has all of a kitchen along one wall in the picture: %s', (id) => {
  const kitchen = JSON.parse(readFileSync('scenes/one-wall.json', 'utf8'));
  const { width, depth, counter } = planKitchen(kitchen);
  const { eye, target, fov_deg } = buildRoom(kitchen).viewpoints.find((one) => one.id === id)!;
  const lens = lensTowards(eye, target);
  // The usual picture is 1.6 times as wide as high.
  const half = 1.6 * Math.tan((fov_deg * Math.PI) / 360);
  const edges = [-half, half].map((x) => directionThrough(lens, x, 0)).map(([x, y]) => Math.atan2(x, y));
  for (const x of [0, width]) {
    const angle = Math.atan2(x - eye[0], depth - counter.depth - eye[1]);
    expect(angle).toBeGreaterThan(edges[0]!);
    expect(angle).toBeLessThan(edges[1]!);
  }
});
