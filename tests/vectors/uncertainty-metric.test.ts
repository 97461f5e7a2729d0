import { differenceCiede2000 as culoriDifference } from 'culori/fn';
import { describe, expect, it } from 'vitest';
import { localMetricCiede2000 } from '../../src/engine/color/difference';
import { apply } from '../../src/engine/color/matrix3';
import type { Lab } from '../../src/engine/color/types';
import { errorAxes, labCovariance, rmsDe00 } from '../../src/engine/uncertainty/lab-error';

const culori = culoriDifference();
const inCulori = ({ l, a, b }: Lab<'D65-2'>) => ({ mode: 'lab65' as const, l, a, b });

const COLORS: Readonly<Record<string, Lab<'D65-2'>>> = {
  white: { l: 93, a: -0.6, b: 2.5 },
  'exact neutral': { l: 50, a: 0, b: 0 },
  gray: { l: 62, a: 0.4, b: -1.2 },
  wood: { l: 55, a: 10, b: 24 },
  'blue-green': { l: 28, a: -9, b: -10 },
  // At a hue of 275 degrees and a large chroma the rotation term is largest.
  blue: { l: 35, a: 5, b: -50 },
  yellow: { l: 82, a: 4, b: 85 },
};

describe.each(Object.entries(COLORS))('the local metric of a %s', (_, lab) => {
  it('gives the difference culori computes for a small step, in every direction', () => {
    const metric = localMetricCiede2000(lab);
    const step = 1e-3;
    for (let i = 0; i < 26; i++) {
      const n = i < 13 ? i : i + 1;
      const d = [(n % 3) - 1, (Math.floor(n / 3) % 3) - 1, Math.floor(n / 9) - 1].map((x) => x * step);
      const moved = { l: lab.l + d[0]!, a: lab.a + d[1]!, b: lab.b + d[2]! };
      const [x, y, z] = apply(metric, [d[0]!, d[1]!, d[2]!]);
      const local = Math.sqrt(d[0]! * x + d[1]! * y + d[2]! * z);
      // A step of 0.001 changes the weights of CIEDE2000 by less than 1 in 10 000.
      expect(local / culori(inCulori(lab), inCulori(moved))).toBeCloseTo(1, 3);
    }
  });

  it('turns an uncertainty into errors of that root mean square, lightness 1 to 0.7 and 0.7', () => {
    expect(rmsDe00(lab, labCovariance(lab, 1.3))).toBeCloseTo(1.3, 12);
    const [lightness, red, yellow] = [0, 1, 2].map((column) => {
      const axes = errorAxes(lab, 0.001);
      const moved = { l: lab.l + axes[column]!, a: lab.a + axes[3 + column]!, b: lab.b + axes[6 + column]! };
      return culori(inCulori(lab), inCulori(moved)) / 0.001;
    });
    expect(lightness).toBeCloseTo(1 / Math.sqrt(1 + 0.49 + 0.49), 4);
    expect(red! / lightness!).toBeCloseTo(0.7, 3);
    expect(yellow! / lightness!).toBeCloseTo(0.7, 3);
  });
});
