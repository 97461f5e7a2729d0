import { expect, it } from 'vitest';
import type { GivenColor } from '../../src/engine/finish/given-color';
import { givenText } from '../../src/ui/words/given';
import { offBy } from '../../src/ui/words/off-by';

it.each<[GivenColor, number | undefined, string]>([
  [
    { kind: 'lab', lab: [91.2, -0.4, 3.1], illuminant: 'D50', observer_deg: 2 },
    undefined,
    'L* 91.2, a* −0.4, b* 3.1 · D50, 2°',
  ],
  [
    { kind: 'lab', lab: [86.18, 1.7, 10.53], illuminant: 'D65', observer_deg: 10 },
    68.3,
    'L* 86.18, a* 1.7, b* 10.53 · D65, 10° · LRV 68.3 printed',
  ],
  [{ kind: 'lch', lch: [60, 12, 85], illuminant: 'C', observer_deg: 2 }, undefined, 'L* 60, C* 12, h 85 · C, 2°'],
  [
    { kind: 'xyz', xyz: [60, 62.123456, 60], illuminant: 'D65', observer_deg: 2 },
    undefined,
    'X 60, Y 62.1235, Z 60 · D65, 2°',
  ],
  [{ kind: 'hex', hex: '#f3efe4' }, undefined, '#f3efe4'],
  [{ kind: 'hex', hex: '#f3efe4', space: 'display-p3' }, 80, '#f3efe4 on Display P3 · LRV 80 printed'],
  [{ kind: 'munsell', munsell: '5Y 8/2' }, undefined, 'Munsell 5Y 8/2'],
  [{ kind: 'lrv', lrv: 72, hue: 'warm gray' }, 72, 'LRV 72, “warm gray”'],
  [
    { kind: 'spectrum', start_nm: 400, step_nm: 10, reflectance: Array(31).fill(0.5) },
    undefined,
    '31 bands, 400–700 nm',
  ],
])('tells a color as it was given', (color, printed, words) => {
  expect(givenText(color, printed)).toBe(words);
});

it('says how far a color may be off no more exactly than anybody knows', () => {
  expect([0.25, 1.02, 1.08, 1.3, 2.5, 2.9, 5, 7.3, 0].map(offBy)).toEqual([
    '0.3',
    '1',
    '1',
    '1.5',
    '2.5',
    '3',
    '5',
    '7',
    '0',
  ]);
});
