import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { vertex } from '../kitchen/meshes';

// The counter's shadow lay on a stool as a fan of long triangles: between the rim of a seat and its middle no light was taken.
it('takes light on a seat every 5 cm from its rim to its middle', () => {
  const { positions, indices } = buildRoom(scene as unknown as Kitchen).light.props.find(
    ({ name }) => name === 'stools',
  )!;
  let most = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const corners = [0, 1, 2].map((k) => vertex(positions, indices[i + k]!));
    const heights = corners.map(([, , z]) => z);
    // Tops of seats are level to 2 mm; legs and rails are not.
    if (Math.min(...heights) < 0.55 || Math.max(...heights) - Math.min(...heights) > 0.003) continue;
    const top = Math.max(...positions.filter((_, at) => at % 3 === 2));
    if (Math.min(...heights) < top - 0.004) continue;
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      most = Math.max(most, Math.hypot(corners[a]![0] - corners[b]![0], corners[a]![1] - corners[b]![1]));
    }
  }
  expect(most).toBeGreaterThan(0.01);
  expect(most).toBeLessThan(0.05);
});
