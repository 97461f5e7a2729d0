import fc from 'fast-check';
import { expect, it } from 'vitest';
import { COLOR_CHECKER } from '../../../tests/vectors/color-checker.data';
import { differenceCiede2000 } from '../color/difference';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import { lrvFromReflectance } from '../color/lrv';
import { isccNbsName } from '../naming/iscc-nbs';
import { munsellFromLabD65 } from '../naming/munsell';
import type { Result } from '../result';
import { reflectanceSpd } from '../spectrum/grid';
import { averageComponent } from './average';
import { finishComponent, HUE_WORDS, UNCERTAINTY_DE00 } from './component';
import type { GivenColor } from './given-color';
import type { FinishClass, FinishComponent, Provenance } from './types';

const given = (color: GivenColor, finishClass: FinishClass = 'stone', provenance: Provenance = 'measured', share = 1) =>
  finishComponent({ role: 'base', share, color, finishClass, provenance });

const lab = (l: number, a: number, b: number): GivenColor => ({
  kind: 'lab',
  lab: [l, a, b],
  illuminant: 'D65',
  observer_deg: 2,
});

function made(result: Result<FinishComponent>): FinishComponent {
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

it('makes a smoothest curve for most finishes and a sigmoid for wood, both with the given colour', () => {
  for (const [finishClass, source] of [
    ['stone', 'lhtss'],
    ['paint', 'lhtss'],
    ['wood', 'sigmoid'],
  ] as const) {
    const component = made(given(lab(74, 6, 26), finishClass));
    expect(component.spectrumSource).toBe(source);
    expect(component.labD65).toEqual({ l: 74, a: 6, b: 26 });
    expect(differenceCiede2000(labD65FromReflectance(component.spectrum), component.labD65)).toBeLessThan(1e-6);
  }
});

it('uses a measured spectrum as it is', () => {
  const { reflectance } = COLOR_CHECKER[0]!;
  const component = made(given({ kind: 'spectrum', start_nm: 380, step_nm: 5, reflectance }, 'wood'));
  expect(component.spectrumSource).toBe('measured');
  expect([...component.spectrum]).toEqual(reflectance);
  expect(component.labD65).toEqual(labD65FromReflectance(reflectanceSpd(reflectance)));
});

it('says how far each way of knowing a colour can be trusted, best first', () => {
  for (const provenance of Object.keys(UNCERTAINTY_DE00) as Provenance[]) {
    const component = made(given(lab(80, 1, 5), 'paint', provenance));
    expect([component.provenance, component.uncertaintyDe00]).toEqual([provenance, UNCERTAINTY_DE00[provenance]]);
  }
  const order: Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo'];
  expect([...order].sort((a, b) => UNCERTAINTY_DE00[a] - UNCERTAINTY_DE00[b])).toEqual(order);
});

it('takes a screen colour as no better than a screen, and says so', () => {
  const result = given({ kind: 'hex', hex: '#ffffff' }, 'paint', 'measured');
  expect(made(result).provenance).toBe('screen');
  expect(made(result).labD65.l).toBeCloseTo(100, 6);
  expect(result.ok && result.notices?.map((notice) => notice.code)).toEqual(['provenance-set']);
  const plain = given({ kind: 'hex', hex: '#ffffff' }, 'paint', 'screen');
  expect(plain.ok && plain.notices).toBeUndefined();
});

it('gives an LRV with a word a curve of exactly that LRV (BS 8493: Y under D65, 10 degrees)', () => {
  const words = Object.keys(HUE_WORDS);
  fc.assert(
    fc.property(fc.constantFrom(...words), fc.double({ min: 0, max: 100, noNaN: true }), (hue, lrv) => {
      const component = made(given({ kind: 'lrv', lrv, hue }));
      expect(Math.abs(lrvFromReflectance(component.spectrum) - lrv)).toBeLessThan(0.006);
      expect(component.provenance).toBe('by-eye');
    }),
  );
});

it('means by a colour word what the ISCC-NBS system means by it (Kelly and Judd 1955)', () => {
  // Words of the trade have no block of their own.
  const trade = [
    'off-white',
    'warm white',
    'cool white',
    'cream',
    'beige',
    'greige',
    'taupe',
    'warm gray',
    'cool gray',
  ];
  for (const [hue, { lrv }] of Object.entries(HUE_WORDS)) {
    if (trade.includes(hue)) continue;
    const component = made(given({ kind: 'lrv', lrv: lrv[0] + 0.3 * (lrv[1] - lrv[0]), hue }));
    expect(isccNbsName(munsellFromLabD65(component.labD65)).name, hue).toContain(hue);
  }
});

it('reads words as people write them', () => {
  const plain = made(given({ kind: 'lrv', lrv: 50, hue: 'warm gray' }));
  expect(made(given({ kind: 'lrv', lrv: 50, hue: ' Warm  Grey ' })).labD65).toEqual(plain.labD65);
  const offWhite = made(given({ kind: 'lrv', lrv: 80, hue: 'off-white' }));
  expect(made(given({ kind: 'lrv', lrv: 80, hue: 'Off White' })).labD65).toEqual(offWhite.labD65);
});

it('lists the known words beside an unknown one, and notes a word that does not fit its LRV', () => {
  const unknown = given({ kind: 'lrv', lrv: 50, hue: 'octarine' });
  expect(!unknown.ok && unknown.problem.code).toBe('unknown-hue-word');
  for (const hue of Object.keys(HUE_WORDS)) expect(!unknown.ok && unknown.problem.remedy).toContain(hue);
  const odd = given({ kind: 'lrv', lrv: 10, hue: 'white' }, 'paint', 'by-eye');
  expect(odd.ok && odd.notices?.map((notice) => notice.code)).toEqual(['lrv-and-word-disagree']);
  const text = (lrv: number, hue: string) => {
    const result = given({ kind: 'lrv', lrv, hue }, 'paint', 'by-eye');
    return result.ok && result.notices?.map((notice) => notice.text).join();
  };
  expect(text(70, 'Warm grey')).toBe('At LRV 70, warm gray is so light that it reads yellowish white; usual are 4-67.');
  expect(text(80, 'red')).toMatch(/^At LRV 80, red is so light that it reads .*pink; usual are 4-24\.$/);
});

it.each([
  ['outside-object-color-solid', lab(97, 0, 140)],
  ['hex-not-understood', { kind: 'hex', hex: 'nearly white' }],
  ['lrv-out-of-range', { kind: 'lrv', lrv: 140, hue: 'white' }],
  ['spectrum-step', { kind: 'spectrum', start_nm: 380, step_nm: 25, reflectance: [] }],
] as [string, GivenColor][])('passes on the problem %s', (code, color) => {
  for (const finishClass of ['stone', 'wood'] as const) {
    const result = given(color, finishClass);
    expect(!result.ok && result.problem.code).toBe(code);
  }
});

it('averages in linear light: half black and half white is 50 percent reflectance, L* 76.07 (CIE 15)', () => {
  const flat = (value: number) =>
    ({ kind: 'spectrum', start_nm: 380, step_nm: 20, reflectance: Array(21).fill(value) }) as const;
  const black = made(given(flat(0), 'stone', 'measured', 0.5));
  const white = made(given(flat(1), 'stone', 'photo', 0.5));
  const average = averageComponent([black, white]);
  expect(average.labD65.l).toBeCloseTo(76.0693, 3);
  expect(average.labD65.a).toBeCloseTo(0, 9);
  expect(average.share).toBe(1);
  expect(average.provenance).toBe('photo');
});

it('averages any mix to a luminance factor that is the mean by share', () => {
  const share = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(share, fc.double({ min: 20, max: 90, noNaN: true })), { minLength: 1, maxLength: 4 }),
      (parts) => {
        const components = parts.map(([s, l]) => made(given(lab(l, 2, 6), 'stone', 'measured', s)));
        const total = parts.reduce((sum, [s]) => sum + s, 0);
        const mean = components.reduce((sum, c) => sum + (c.share / total) * lrvFromReflectance(c.spectrum), 0);
        expect(lrvFromReflectance(averageComponent(components).spectrum)).toBeCloseTo(mean, 9);
      },
    ),
    { numRuns: 40 },
  );
  expect(() => averageComponent([])).toThrow(RangeError);
});
