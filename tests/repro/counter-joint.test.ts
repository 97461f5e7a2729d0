import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { buildRoom } from '../../src/kitchen/build-room';
import { profileDepth } from '../../src/kitchen/parts/counter-edge';
import type { CounterEdge, Kitchen } from '../../src/model/kitchen';

// Dark dots along the front of a counter: slab and edge profile are divided otherwise along their joint, and pinholes showed what lay
// behind.
const usual = scene as unknown as Kitchen;

it.each<CounterEdge>(['pencil', 'bevel', 'half-bullnose', 'full-bullnose'])('backs the joint of a %s edge', (edge) => {
  const { props } = buildRoom({ ...usual, counter: { ...usual.counter, edge } }).light;
  const { positions } = props.find(({ name }) => name === 'island-counter edge')!;
  const front = usual.island!.y / 1000;
  const joint = front + profileDepth(edge, 0.03);
  const middle: [y: number, z: number][] = [];
  for (let i = 0; i < positions.length; i += 3) {
    if (Math.abs(positions[i]! - 2.65) < 0.3 && positions[i + 1]! < front + 0.05) {
      middle.push([positions[i + 1]!, positions[i + 2]!]);
    }
  }
  // Under the slab beyond the joint, too little below its top to be seen.
  const behind = middle.filter(([y, z]) => y > joint + 0.002 && z < 0.9 && z > 0.9 - 0.001);
  const at = middle.filter(([y, z]) => Math.abs(y - joint) < 1e-5 && Math.abs(z - 0.9) < 1e-5);
  expect(at.length).toBeGreaterThan(0);
  expect(behind.length).toBe(at.length / 2);
});
