import { expect, it } from 'vitest';
import { samplePattern } from './sample';
import { turnPattern } from './turn';

it('swaps the axes: the value at (s, t) stands at (t, s)', () => {
  const texture = {
    width: 2,
    height: 4,
    width_m: 0.2,
    height_m: 0.8,
    data: Uint8Array.from({ length: 32 }, (_, i) => i * 5),
  };
  const turned = turnPattern(texture);
  for (const [s, t] of [
    [0.05, 0.1],
    [0.15, 0.7],
    [0.1, 0.33],
  ] as const) {
    expect(samplePattern(turned, t, s)).toEqual(samplePattern(texture, s, t));
  }
});
