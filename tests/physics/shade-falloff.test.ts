import { expect, it } from 'vitest';
import { shadeFalloff, shadeShare } from '../../src/engine/photometry/shade-falloff';

it('adds no light: the mean over the opening is the lamp itself', () => {
  for (const height of [0.4, 1.2, 3]) {
    const falloff = shadeFalloff(height);
    let mean = 0;
    const rings = 2000;
    // Rings of even area.
    for (let i = 0; i < rings; i++) mean += shadeShare(falloff, Math.sqrt((i + 0.5) / rings)) / rings;
    expect(mean).toBeCloseTo(1, 4);
  }
});

it('grows softly darker from the bulb to the rim, the more the lower it hangs', () => {
  const middleOverRim = (height: number): number => {
    const falloff = shadeFalloff(height);
    let last = Infinity;
    for (let rho = 0; rho <= 1; rho += 0.1) {
      const share = shadeShare(falloff, rho);
      expect(share).toBeLessThan(last);
      last = share;
    }
    return shadeShare(falloff, 0) / shadeShare(falloff, 1);
  };
  expect(middleOverRim(1.2)).toBeGreaterThan(2);
  expect(middleOverRim(0.8)).toBeGreaterThan(middleOverRim(1.2));
});

it('has the share of the shade that an even cavity of its white has, ray by ray', () => {
  // A closed form against counting: light that misses the opening at first meets walls until it leaves or is taken.
  const { even } = shadeFalloff(1.2);
  const bulb = 0.6;
  const straight = (1 - Math.cos(Math.atan(1 / bulb))) / 2;
  let inside = 1 - straight;
  let out = 0;
  for (let bounce = 0; bounce < 60; bounce++) {
    inside *= 0.8;
    out += inside / 2;
    inside /= 2;
  }
  expect(even).toBeCloseTo(out / (out + straight), 9);
});
