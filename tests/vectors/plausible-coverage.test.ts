import { describe, expect, it } from 'vitest';
import { labUnder } from '../../src/engine/change/lab-under';
import { quantilesOf } from '../../src/engine/change/quantiles';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import type { Lab } from '../../src/engine/color/types';
import { plausibleReflectance } from '../../src/engine/finish/plausible-reflectance';
import type { FinishClass } from '../../src/engine/finish/types';
import { TEST_COLOR_SAMPLES } from '../../src/engine/lamp/test-color-samples.data';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { COLOR_CHECKER } from './color-checker.data';

// Measured curves are taken for their color alone, as a finish known by its Lab is, and asked what the family says of them.

const LIGHTS = ['A', 'FL2', 'FL4', 'FL11', 'FL12', 'LED-B1', 'LED-B3', 'LED-B5', 'LED-RGB1', 'LED-V1'].map(
  (id) => lightById(id)!,
);

function familyOf(lab: Lab<'D65-2'>, finishClass: FinishClass): readonly ReflectanceSpd[] {
  const curve = plausibleReflectance(xyzD65FromLabD65(lab), finishClass);
  if (!curve.ok) throw new Error(curve.problem.text);
  return plausibleCurves({ labD65: lab, spectrum: curve.value.rho, spectrumSource: curve.value.source }, finishClass);
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const p95 = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(0.95 * values.length)]!;

/** How far the members lie from the nominal under the lights. */
function departures(lab: Lab<'D65-2'>, finishClass: FinishClass): number[] {
  const [nominal, ...members] = familyOf(lab, finishClass);
  return LIGHTS.flatMap((light) => {
    const expected = labUnder(nominal!, light);
    return members.map((rho) => differenceCiede2000(labUnder(rho, light), expected));
  });
}

describe.each([
  ['24 chart patches (Ohta 1997)', COLOR_CHECKER.map(({ reflectance }) => reflectanceSpd(reflectance))],
  ['14 test color samples (CIE 13.3)', TEST_COLOR_SAMPLES.map((values) => reflectanceSpd(values))],
])('%s as paint under ten lights', (_, measured) => {
  const shifts = measured.flatMap((rho) => {
    const lab = labD65FromReflectance(rho);
    const family = familyOf(lab, 'paint');
    return LIGHTS.map((light) => {
      const seen = labUnder(rho, light);
      const members = family.map((member) => labUnder(member, light));
      const band = quantilesOf(members.map((member) => differenceCiede2000(lab, member)));
      return {
        shift: differenceCiede2000(lab, seen),
        band,
        error: differenceCiede2000(members[0]!, seen),
        departures: members.slice(1).map((member) => differenceCiede2000(member, members[0]!)),
      };
    });
  });

  it('has the true shift within p05 to p95 in nine cases of ten', () => {
    // 0.88 and 0.91 when written. One further draw of the same kind would be inside in 16 of 18; with 14 to 24 curves,
    // whose lights go together, 0.06 either way is chance.
    const inside = shifts.filter(({ shift, band }) => shift >= band.p05 && shift <= band.p95).length / shifts.length;
    expect(inside).toBeGreaterThan(0.82);
    expect(inside).toBeLessThan(0.96);
  });

  it('misses above and below alike, so the band is neither too low nor too high', () => {
    const above = shifts.filter(({ shift, band }) => shift > band.p95).length / shifts.length;
    const below = shifts.filter(({ shift, band }) => shift < band.p05).length / shifts.length;
    // A twentieth each is meant; 0.05 more is one or two curves.
    expect(above).toBeLessThan(0.1);
    expect(below).toBeLessThan(0.1);
  });

  it('departs from the nominal as far as measured curves do, in the mean and at the 95th percentile', () => {
    const members = shifts.flatMap((s) => s.departures);
    const errors = shifts.map((s) => s.error);
    // Ratios 1.03 and 1.10, 1.06 and 1.05 when written; a fourth is what 14 curves leave open.
    expect(mean(members) / mean(errors)).toBeGreaterThan(0.8);
    expect(mean(members) / mean(errors)).toBeLessThan(1.25);
    expect(p95(members) / p95(errors)).toBeGreaterThan(0.8);
    expect(p95(members) / p95(errors)).toBeLessThan(1.25);
  });
});

// Distances of measured curves from the curve computed with, under ten lights: our own comparison with 310 matt Munsell
// chips of chroma up to 2 (University of Eastern Finland), 44 stones, concretes and bricks, and 8 woods. Colors of the
// material stand for the curves, which may not be passed on; they are a choice, hence a third of tolerance.
describe.each<[FinishClass, number, number, readonly Lab<'D65-2'>[]]>([
  [
    'paint',
    0.66,
    1.76,
    [
      { l: 92, a: -0.5, b: 4 },
      { l: 85, a: 1, b: 7 },
      { l: 75, a: 0, b: 6 },
      { l: 66, a: 1.5, b: -6 },
      { l: 58, a: -4, b: 1 },
      { l: 50, a: 4, b: 3 },
    ],
  ],
  [
    'stone',
    0.23,
    0.54,
    [
      { l: 85, a: 1, b: 4 },
      { l: 75, a: 2, b: 10 },
      { l: 60, a: 3, b: 12 },
      { l: 45, a: 1, b: 3 },
    ],
  ],
  [
    'wood',
    0.22,
    0.55,
    [
      { l: 74, a: 6, b: 22 },
      { l: 60, a: 10, b: 26 },
      { l: 45, a: 10, b: 20 },
      { l: 35, a: 8, b: 12 },
    ],
  ],
])('%s', (finishClass, meanDe00, p95De00, colors) => {
  it(`has members about ${meanDe00} CIEDE2000 from the nominal in the mean, ${p95De00} at the 95th percentile`, () => {
    const all = colors.flatMap((lab) => departures(lab, finishClass));
    // Wood is spread by a fifth more than its eight samples.
    const wider = finishClass === 'wood' ? 1.2 : 1;
    expect(Math.abs(mean(all) / (wider * meanDe00) - 1)).toBeLessThan(1 / 3);
    expect(Math.abs(p95(all) / (wider * p95De00) - 1)).toBeLessThan(1 / 3);
  });
});
