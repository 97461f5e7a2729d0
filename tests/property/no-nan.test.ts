import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cam16FromXyz } from '../../src/engine/appearance/cam16';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import { componentRecords } from '../../src/engine/batch/component-record';
import { cieWhiteness } from '../../src/engine/color/cie-whiteness';
import { cctDuv } from '../../src/engine/color/correlated-temperature';
import { hexFromLab, labD65FromHex } from '../../src/engine/color/display';
import { D65_2 } from '../../src/engine/color/whites';
import { finishComponent, HUE_WORDS } from '../../src/engine/finish/component';
import type { GivenColor } from '../../src/engine/finish/given-color';
import { blendLights } from '../../src/engine/lamp/blend';
import { lightFromWords } from '../../src/engine/lamp/light-words';
import { phosphorLedSpd } from '../../src/engine/lamp/phosphor-led';
import { isccNbsName } from '../../src/engine/naming/iscc-nbs';
import {
  labD65FromHueValueChroma,
  labD65FromMunsell,
  munsellFromLabD65,
  munsellNotation,
} from '../../src/engine/naming/munsell';
import { undertoneOf } from '../../src/engine/naming/undertone';
import { daylightSpd, LIGHT_IDS, lightById, planckSpd } from '../../src/engine/spectrum/lights';
import { reflectanceOnGrid } from '../../src/engine/spectrum/resample';
import { emissionOnGrid } from '../../src/engine/spectrum/resample-emission';

// Whatever number somebody gives: the answer is finite, or a problem, or null, or a RangeError as the function documents.
// Never NaN or Infinity, and never silence.

/** Whether every number inside is finite, arrays and records all the way down. */
function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (ArrayBuffer.isView(value)) return (value as Float64Array).every(Number.isFinite);
  if (typeof value === 'string') return !/NaN|Infinity|undefined/.test(value);
  if (typeof value === 'object' && value !== null) return Object.values(value).every(allFinite);
  return value !== undefined;
}

type Answer = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly problem: object };

function expectResult(result: Answer): void {
  if (result.ok) expect(allFinite(result.value)).toBe(true);
  else expect(Object.keys(result.problem)).toEqual(expect.arrayContaining(['code', 'text', 'remedy']));
}

function expectFiniteOrThrow(work: () => unknown): void {
  let answer: unknown;
  try {
    answer = work();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return;
  }
  expect(allFinite(answer)).toBe(true);
}

/** Every double there is, numbers of a sensible size as often, and the ones that trip code up. */
const number = fc.oneof(
  fc.double(),
  fc.double({ min: -200, max: 200, noNaN: true }),
  fc.constantFrom(0, -0, 5e-324, -5e-324, 1e-160, 1e160, Number.MAX_VALUE, -Number.MAX_VALUE, 100, 1),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
);
const triple = fc.tuple(number, number, number);
const light = fc.constantFrom(...LIGHT_IDS, 'D66', '');
const observer = fc.constantFrom(2, 10) as fc.Arbitrary<2 | 10>;
const specular = fc.constantFrom('included', 'excluded') as fc.Arbitrary<'included' | 'excluded'>;
/** Text that is nearly a colour, and text that is none. */
const nearlyMunsell = fc
  .tuple(number, fc.constantFrom('R', 'YR', 'y', 'PB', 'N', 'Q', ''), number, number)
  .map(([hue, family, value, chroma]) => `${hue}${family} ${value}/${chroma}`);
const text = fc.oneof(fc.string(), nearlyMunsell);

const color: fc.Arbitrary<GivenColor> = fc.oneof(
  fc.record({ kind: fc.constant('lab'), lab: triple, illuminant: light, observer_deg: observer, specular }),
  fc.record({ kind: fc.constant('lch'), lch: triple, illuminant: light, observer_deg: observer, specular }),
  fc.record({ kind: fc.constant('xyz'), xyz: triple, illuminant: light, observer_deg: observer, specular }),
  fc.record({ kind: fc.constant('munsell'), munsell: text }),
  fc.record({ kind: fc.constant('hex'), hex: text }),
  fc.record({ kind: fc.constant('lrv'), lrv: number, hue: fc.constantFrom(...Object.keys(HUE_WORDS), 'octarine') }),
  fc.record({
    kind: fc.constant('spectrum'),
    start_nm: fc.oneof(number, fc.constantFrom(360, 380, 400)),
    step_nm: fc.oneof(number, fc.constantFrom(1, 5, 10, 20)),
    reflectance: fc.array(fc.oneof(number, fc.double({ min: 0, max: 1, noNaN: true })), { maxLength: 90 }),
  }),
) as fc.Arbitrary<GivenColor>;

const component = fc.record({
  role: fc.constant('base' as const),
  share: fc.constant(1),
  color,
  finishClass: fc.constantFrom('stone', 'wood', 'metal', 'paint') as fc.Arbitrary<'stone' | 'wood' | 'metal' | 'paint'>,
  provenance: fc.constant('declared' as const),
  glossGu: number,
  lrv: number,
});

describe('finishes', () => {
  it('are made of finite numbers or refused, whatever colour is given', () => {
    fc.assert(
      fc.property(component, (given) => expectResult(finishComponent(given))),
      { numRuns: 300 },
    );
  });

  it('are so in a batch, too', () => {
    fc.assert(
      fc.property(fc.array(component, { maxLength: 12 }), (given) => {
        componentRecords(given).forEach(expectResult);
      }),
      { numRuns: 30 },
    );
  });

  it('take any light reflectance value, from the least above 0 on', () => {
    const words = Object.keys(HUE_WORDS);
    fc.assert(
      fc.property(fc.constantFrom(...words), number, (hue, lrv) => {
        const finish = { role: 'base', share: 1, finishClass: 'paint', provenance: 'declared' } as const;
        expectResult(finishComponent({ ...finish, color: { kind: 'lrv', lrv, hue } }));
      }),
    );
  });
});

describe('spectra', () => {
  const values = fc.array(fc.oneof(number, fc.double({ min: 0, max: 1.01, noNaN: true })), { maxLength: 90 });

  it('of surfaces come onto the grid inside 0-1 or are refused', () => {
    fc.assert(
      fc.property(
        fc.oneof(number, fc.constantFrom(360, 380, 400)),
        fc.oneof(number, fc.constantFrom(1, 5, 10, 20)),
        values,
        (start_nm, step_nm, reflectance) => expectResult(reflectanceOnGrid({ start_nm, step_nm, reflectance })),
      ),
    );
    // Complete but for one value: the case that a range check alone lets through.
    fc.assert(
      fc.property(number, fc.nat(40), (broken, at) => {
        const reflectance = Array.from({ length: 41 }, (_, i) => (i === at ? broken : 0.5));
        expectResult(reflectanceOnGrid({ start_nm: 380, step_nm: 10, reflectance }));
      }),
    );
  });

  it('of lamps come onto the grid or are refused', () => {
    fc.assert(
      fc.property(number, number, fc.nat(80), (power, nm, at) => {
        const grid = Array.from({ length: 81 }, (_, i) => 380 + 5 * i);
        const flat = grid.map((_, i) => (i === at ? power : 1));
        expectResult(emissionOnGrid({ nm: grid, power: flat }));
        expectResult(emissionOnGrid({ nm: grid.map((value, i) => (i === at ? nm : value)), power: flat }));
      }),
    );
  });
});

describe('names', () => {
  it('of any colour are finite, or the function says that it is no colour', () => {
    fc.assert(
      fc.property(triple, ([l, a, b]) => {
        expectFiniteOrThrow(() => munsellFromLabD65({ l, a, b }));
        expectFiniteOrThrow(() => undertoneOf({ l, a, b }));
        expectFiniteOrThrow(() => munsellNotation(l, a, b));
        expectFiniteOrThrow(() => labD65FromHueValueChroma(l, a, b));
        expectFiniteOrThrow(() => isccNbsName({ hue100: l, value: a, chroma: b }));
      }),
      { numRuns: 1000 },
    );
  });

  it('of every colour with ordinary numbers exist', () => {
    const coordinate = fc.double({ min: -200, max: 200, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, (l, a, b) => {
        expect(allFinite(undertoneOf({ l, a, b }))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('given as text are colours or refused', () => {
    fc.assert(
      fc.property(text, (given) => {
        expectResult(labD65FromMunsell(given));
        expectResult(labD65FromHex(given));
      }),
      { numRuns: 500 },
    );
  });
});

describe('figures of whites and lights', () => {
  it('are finite or null', () => {
    fc.assert(
      fc.property(triple, ([x, y, z]) => {
        expect(allFinite(cieWhiteness<'D65-2'>({ x, y, z }, 'D65-2')), `whiteness of ${x} ${y} ${z}`).toBe(true);
        expect(allFinite(cctDuv({ x, y, z })), `temperature of ${x} ${y} ${z}`).toBe(true);
        expect(allFinite(cctDuv({ x, y })), `temperature of ${x} ${y}`).toBe(true);
      }),
    );
  });

  it('come from words that name a light, or are refused', () => {
    const words = fc.oneof(
      fc.string(),
      fc
        .tuple(fc.constantFrom('led', 'planck', 'daylight', 'D65', ''), number, number)
        .map(([kind, first, second]) => `${kind}:${first},${second}`),
      fc.tuple(number, number).map(([one, other]) => `${one} led:2700,90 + ${other} FL11`),
      fc.tuple(fc.constantFrom('planck', 'daylight'), number).map(([kind, cct]) => `${kind}:${cct}`),
    );
    fc.assert(fc.property(words, (given) => expectResult(lightFromWords(given))));
  });

  it('take any level, temperature and rendering index', () => {
    const lamp = lightById('FL2')!;
    fc.assert(
      fc.property(number, number, number, (one, other, duv) => {
        expectResult(
          blendLights([
            { spd: lamp, level: one },
            { spd: lightById('A')!, level: other },
          ]),
        );
        expectResult(phosphorLedSpd({ cct_k: one, ra: other, duv }));
        expectFiniteOrThrow(() => planckSpd(one));
        expectFiniteOrThrow(() => daylightSpd(one));
      }),
    );
  });
});

describe('on screen and to the eye', () => {
  it('a colour is six digits', () => {
    const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, (l, a, b) => {
        expect(hexFromLab({ l, a, b })).toMatch(/^#[0-9a-f]{6}$/);
      }),
    );
  });

  it('has finite correlates for all tristimulus values of surfaces, however small', () => {
    const conditions = viewingConditions({ white: D65_2, la_cd_m2: 40, yb: 20 });
    const value = fc.oneof(fc.double({ min: 0, max: 120, noNaN: true }), fc.constantFrom(0, 5e-324, 1e-300));
    fc.assert(
      fc.property(value, value, value, (x, y, z) => {
        expect(allFinite(cam16FromXyz({ x, y, z }, conditions)), `${x} ${y} ${z}`).toBe(true);
      }),
    );
  });
});
