import { describe, expect, it } from 'vitest';
import { labUnder } from '../../src/engine/change/lab-under';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import type { Lab } from '../../src/engine/color/types';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { lightById } from '../../src/engine/spectrum/lights';
import { type ReflectanceMethod, reflectanceFromXyz } from '../../src/engine/spectrum/reflectance-from-color';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { curveSensitivity } from '../../src/engine/uncertainty/curve-sensitivity';
import { uncertaintyUnder } from '../../src/engine/uncertainty/through-light';
import { COLORS, erring, plainNormals, rms } from './uncertainty-brute-force';

const LAMPS = ['LED-B1', 'FL11', 'A'] as const;

function curveOf(lab: Lab<'D65-2'>, method: ReflectanceMethod): ReflectanceSpd {
  const curve = reflectanceFromXyz(xyzD65FromLabD65(lab), method);
  if (!curve.ok) throw new Error(curve.problem.text);
  return curve.value;
}

const sample = (labD65: Lab<'D65-2'>, spectrumSource: 'measured' | ReflectanceMethod, uncertaintyDe00: number) => ({
  labD65,
  spectrum: curveOf(labD65, spectrumSource === 'measured' ? 'lhtss' : spectrumSource),
  spectrumSource,
  uncertaintyDe00,
});

/** Plain random draws of the sample, each with a curve solved anew. */
function bruteForce(lab: Lab<'D65-2'>, method: ReflectanceMethod, u: number, draws: number): number[] {
  const normal = plainNormals(23);
  const nominal = curveOf(lab, method);
  const curves = Array.from({ length: draws }, () => curveOf(erring(lab, u, [normal(), normal(), normal()]), method));
  return LAMPS.map((id) => {
    const spd = lightById(id)!;
    return rms(curves.map((curve) => differenceCiede2000(labUnder(nominal, spd), labUnder(curve, spd))));
  });
}

describe('the error of a sample carried to another light, against solving every drawn color anew', () => {
  const DRAWS = 1200;
  // 1200 draws leave 1.3 % of sampling error, one deviation: three of them and, near the edge, 1 % beyond first order.
  it.each(Object.entries(COLORS))('%s, u = 0.5', (_, lab) => {
    bruteForce(lab, 'lhtss', 0.5, DRAWS).forEach((drawn, i) => {
      const said = uncertaintyUnder(sample(lab, 'lhtss', 0.5), 'paint', lightById(LAMPS[i]!)!).fromSample;
      expect(said / drawn).toBeGreaterThan(0.95);
      expect(said / drawn).toBeLessThan(1.05);
    });
  });

  it('wood, whose curve is a sigmoid that bends in its own way', () => {
    bruteForce(COLORS.wood, 'sigmoid', 0.5, DRAWS).forEach((drawn, i) => {
      const said = uncertaintyUnder(sample(COLORS.wood, 'sigmoid', 0.5), 'wood', lightById(LAMPS[i]!)!).fromSample;
      // The smoothest change is another one than a sigmoid makes: up to 4 % apart, on top of the sampling error.
      expect(said / drawn).toBeGreaterThan(0.92);
      expect(said / drawn).toBeLessThan(1.08);
    });
  });
});

describe('the change of a curve with its color', () => {
  it.each(Object.entries(COLORS))('gives a %s the color asked for, to first order', (_, lab) => {
    const spectrum = curveOf(lab, 'lhtss');
    const step = 0.01;
    curveSensitivity(spectrum).forEach((slope, k) => {
      const moved = labD65FromReflectance(spectrum.map((rho, i) => rho + step * slope[i]!) as ReflectanceSpd);
      const change = [moved.l - lab.l, moved.a - lab.a, moved.b - lab.b].map((x) => x / step);
      // What is left is the bend of CIELAB over a step of 0.01.
      change.forEach((value, r) => {
        expect(value).toBeCloseTo(r === k ? 1 : 0, 2);
      });
    });
  });

  it('finds a way for readings of 0 and of 1 as well', () => {
    const sharp = Float64Array.from({ length: 81 }, (_, i) => (i < 40 ? 0 : 1)) as ReflectanceSpd;
    for (const slope of curveSensitivity(sharp)) expect(slope.every(Number.isFinite)).toBe(true);
  });
});

describe('the two causes', () => {
  it('under D65 only the sample counts, with its own uncertainty', () => {
    for (const lab of Object.values(COLORS)) {
      const known = uncertaintyUnder(sample(lab, 'lhtss', 1), 'paint', lightById('D65')!);
      expect(known.fromSample).toBeCloseTo(1, 5);
      expect(known.fromCurve).toBeLessThan(1e-6);
      expect(known.uncertaintyDe00).toBeCloseTo(1, 5);
    }
  });

  it('a measured curve leaves none to the curve, an exact color none to the sample', () => {
    const lamp = lightById('FL11')!;
    expect(uncertaintyUnder(sample(COLORS.wood, 'measured', 1), 'wood', lamp).fromCurve).toBe(0);
    expect(uncertaintyUnder(sample(COLORS.wood, 'lhtss', 0), 'wood', lamp).fromSample).toBe(0);
  });

  it('the curves count by their mean square difference from the one computed with, and add as squares', () => {
    const lamp = lightById('LED-B1')!;
    const gray = sample(COLORS['mid gray'], 'lhtss', 1);
    const known = uncertaintyUnder(gray, 'stone', lamp);
    const others = plausibleCurves(gray, 'stone').slice(1);
    const drawn = rms(others.map((curve) => differenceCiede2000(known.lab, labUnder(curve, lamp))));
    expect(others.length).toBeGreaterThan(0);
    // The local metric stands for the full formula: the weights of CIEDE2000 change by a few percent over such differences.
    expect(known.fromCurve / drawn).toBeGreaterThan(0.93);
    expect(known.fromCurve / drawn).toBeLessThan(1.07);
    expect(known.uncertaintyDe00).toBeCloseTo(Math.hypot(known.fromSample, known.fromCurve), 9);
  });
});
