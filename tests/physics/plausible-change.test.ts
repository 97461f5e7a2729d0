import { describe, expect, it } from 'vitest';
import { labUnder } from '../../src/engine/change/lab-under';
import { type PairedComponent, pairUnder } from '../../src/engine/change/pair-under';
import { quantilesOf } from '../../src/engine/change/quantiles';
import { type ChangingComponent, shiftUnder } from '../../src/engine/change/shift-under';
import { adaptXyz } from '../../src/engine/color/adapt';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import type { Lab } from '../../src/engine/color/types';
import { D65_2 } from '../../src/engine/color/whites';
import { whiteOf, xyzFromReflectance } from '../../src/engine/color/xyz';
import { plausibleReflectance } from '../../src/engine/finish/plausible-reflectance';
import type { FinishClass } from '../../src/engine/finish/types';
import { DESIGN_RUNS, designSign } from '../../src/engine/plausible/design';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';
import { LIGHT_IDS, lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { COLOR_CHECKER } from '../vectors/color-checker.data';

const light = (id: string) => lightById(id)!;

const measured = (rho: ReflectanceSpd): ChangingComponent => ({
  labD65: labD65FromReflectance(rho),
  spectrum: rho,
  spectrumSource: 'measured',
});

function colorOnly(labD65: Lab<'D65-2'>, finishClass: FinishClass): ChangingComponent {
  const curve = plausibleReflectance(xyzD65FromLabD65(labD65), finishClass);
  if (!curve.ok) throw new Error(curve.problem.text);
  return { labD65, spectrum: curve.value.rho, spectrumSource: curve.value.source };
}

const patch = (name: string): ReflectanceSpd =>
  reflectanceSpd(COLOR_CHECKER.find((entry) => entry.patch.startsWith(name))!.reflectance);

describe('color under a light', () => {
  it('is what sums, CAT16 and CIELAB give one after another, for every light', () => {
    for (const id of LIGHT_IDS) {
      for (const { reflectance } of COLOR_CHECKER) {
        const rho = reflectanceSpd(reflectance);
        const xyz = xyzFromReflectance(rho, light(id), observer2);
        const expected = labD65FromXyzD65(adaptXyz(xyz, whiteOf(light(id), observer2), D65_2));
        const { l, a, b } = labUnder(rho, light(id));
        // Only the order of sums differs.
        expect(Math.hypot(l - expected.l, a - expected.a, b - expected.b), id).toBeLessThan(1e-9);
      }
    }
  });

  it('is neutral for a neutral under any light, since the eye is fully adapted', () => {
    for (const id of LIGHT_IDS) {
      const { l, a, b } = labUnder(reflectanceSpd(new Float64Array(81).fill(0.5)), light(id));
      expect(Math.abs(a) + Math.abs(b), id).toBeLessThan(1e-9);
      expect(l).toBeCloseTo(76.069, 3);
    }
  });
});

describe('shift', () => {
  it('of a measured spectrum is one number, never "cannot tell"', () => {
    for (const { reflectance } of COLOR_CHECKER) {
      const component = measured(reflectanceSpd(reflectance));
      const change = shiftUnder(component, 'paint', light('A'));
      expect(change.members).toEqual([change.lab]);
      expect([change.shifts.p05, change.shifts.median, change.shifts.p95]).toEqual(Array(3).fill(change.de00));
      expect(change.spreadDe00).toBe(0);
      expect(change.verdict).toBe(change.de00 < 1.8 ? 'holds' : 'shifts');
    }
  });

  it('is nothing under D65', () => {
    const change = shiftUnder(colorOnly({ l: 70, a: 3, b: 12 }, 'paint'), 'paint', light('D65'));
    expect(change.shifts.p95).toBeLessThan(1e-6);
    expect(change.verdict).toBe('holds');
  });

  it.each<[string, Lab<'D65-2'>, FinishClass, string, string]>([
    ['an off-white stone', { l: 85, a: 1, b: 4 }, 'stone', 'LED-B3', 'holds'],
    ['an orange brown', { l: 50, a: 20, b: 30 }, 'paint', 'FL2', 'shifts'],
    ['a beige paint', { l: 75, a: 1, b: 10 }, 'paint', 'A', 'cannot-tell'],
  ])('%s: %o as %s under %s %s', (_, lab, finishClass, id, verdict) => {
    const change = shiftUnder(colorOnly(lab, finishClass), finishClass, light(id));
    expect(change.verdict).toBe(verdict);
    expect(change.lab).toEqual(change.members[0]);
    expect(change.shifts.p05).toBeLessThanOrEqual(change.shifts.median);
    expect(change.shifts.median).toBeLessThanOrEqual(change.shifts.p95);
  });

  it('is judged against the limit asked for', () => {
    const component = colorOnly({ l: 50, a: 20, b: 30 }, 'paint');
    const { shifts } = shiftUnder(component, 'paint', light('FL2'));
    const verdict = (limit: number) => shiftUnder(component, 'paint', light('FL2'), limit).verdict;
    expect(verdict(shifts.p05)).toBe('shifts');
    expect(verdict(shifts.p05 + 1e-9)).toBe('cannot-tell');
    expect(verdict(shifts.p95)).toBe('cannot-tell');
    expect(verdict(shifts.p95 + 1e-9)).toBe('holds');
  });
});

describe('pair', () => {
  const paired = (component: ChangingComponent, finishClass: FinishClass): PairedComponent => ({
    component,
    finishClass,
  });
  const gray = patch('neutral 5');

  it('of a component with itself stays matched, curve by curve', () => {
    const one = paired(colorOnly({ l: 60, a: -2, b: -6 }, 'paint'), 'paint');
    const change = pairUnder(one, one, light('A'));
    expect(change).toEqual({
      d65De00: 0,
      de00: 0,
      differences: { p05: 0, median: 0, p95: 0 },
      verdict: 'stays-matched',
    });
  });

  it('of two measured spectra is one number: metamers split, near copies do not', () => {
    const near = gray.map((value) => 1.01 * value) as ReflectanceSpd;
    const copy = pairUnder(paired(measured(gray), 'paint'), paired(measured(near), 'paint'), light('A'));
    expect(copy.verdict).toBe('stays-matched');
    expect(copy.differences.p05).toBe(copy.differences.p95);
    // Light skin and its smoothest metamer come apart by 3.3 CIEDE2000 under A.
    const skin = patch('light skin');
    const metamer = colorOnly(labD65FromReflectance(skin), 'paint').spectrum;
    const split = pairUnder(paired(measured(skin), 'paint'), paired(measured(metamer), 'paint'), light('A'));
    expect(split.d65De00).toBeLessThan(1e-6);
    expect(split.de00).toBe(differenceCiede2000(labUnder(skin, light('A')), labUnder(metamer, light('A'))));
    expect(split.de00).toBeCloseTo(3.28, 2);
    expect(split.verdict).toBe('splits');
  });

  it('known by color alone: one cannot tell of two beige paints, but of two white stones', () => {
    const beige = [0, 0.3].map((more) => paired(colorOnly({ l: 75 + more, a: 1, b: 10 }, 'paint'), 'paint'));
    expect(pairUnder(beige[0]!, beige[1]!, light('A')).verdict).toBe('cannot-tell');
    const stone = [0, 0.3].map((more) => paired(colorOnly({ l: 85 + more, a: 1, b: 4 }, 'stone'), 'stone'));
    expect(pairUnder(stone[0]!, stone[1]!, light('A')).verdict).toBe('stays-matched');
  });

  it('has a wider band the more of it is unknown', () => {
    const a = colorOnly({ l: 75, a: 1, b: 10 }, 'paint');
    const b = colorOnly({ l: 75.3, a: 1, b: 10 }, 'paint');
    const known = { ...b, spectrumSource: 'measured' as const };
    const width = (other: ChangingComponent) => {
      const { p05, p95 } = pairUnder(paired(a, 'paint'), paired(other, 'paint'), light('A')).differences;
      return p95 - p05;
    };
    expect(width(b)).toBeGreaterThan(width(known));
  });

  it('does not speak of a match where there is none', () => {
    const a = paired(colorOnly({ l: 75, a: 1, b: 10 }, 'paint'), 'paint');
    const b = paired(colorOnly({ l: 80, a: 1, b: 10 }, 'paint'), 'paint');
    expect(pairUnder(a, b, light('A')).verdict).toBe('apart');
  });
});

describe('quantiles', () => {
  it('follow type 6 of Hyndman and Fan (1996), held at the ends', () => {
    expect(quantilesOf([4])).toEqual({ p05: 4, median: 4, p95: 4 });
    // 19 values: p05 is the first, p95 the last, the median the tenth.
    const nineteen = Array.from({ length: 19 }, (_, i) => 19 - i);
    const { p05, median, p95 } = quantilesOf(nineteen);
    expect(p05).toBeCloseTo(1, 9);
    expect(median).toBeCloseTo(10, 9);
    expect(p95).toBeCloseTo(19, 9);
    // 39 values: the second and the last but one.
    const more = quantilesOf(Array.from({ length: 39 }, (_, i) => i + 1));
    expect(more.p05).toBeCloseTo(2, 9);
    expect(more.p95).toBeCloseTo(38, 9);
    expect(quantilesOf([1, 2])).toEqual({ p05: 1, median: 1.5, p95: 2 });
  });
});

describe('design of the family', () => {
  it('has each factor plus in half of the runs and no two factors going together (orthogonal)', () => {
    for (let one = 0; one < 15; one++) {
      for (let other = 0; other <= one; other++) {
        let sum = 0;
        let together = 0;
        for (let run = 0; run < DESIGN_RUNS; run++) {
          sum += designSign(run, one);
          together += designSign(run, one) * designSign(run, other);
        }
        expect(sum).toBe(0);
        expect(together).toBe(one === other ? DESIGN_RUNS : 0);
      }
    }
  });
});
