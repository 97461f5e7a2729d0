import { expect, it } from 'vitest';
import { chromaOf } from '../../src/engine/color/lab';
import { ISCC_NBS_NAMES, isccNbsName } from '../../src/engine/naming/iscc-nbs';
import { HUE_SECTORS } from '../../src/engine/naming/iscc-nbs-blocks.data';
import { labD65FromMunsell, munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { neutralLimit } from '../../src/engine/naming/undertone';
import { mulberry32 } from '../../src/engine/random';
import { ISCC_NBS_INTERIORS } from './iscc-nbs-interiors.data';
import { KELLY_CENTRES } from './kelly-centres.data';

const FAMILIES = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'];

function parse(notation: string) {
  const neutral = /^N (.+)$/.exec(notation);
  if (neutral) return { hue100: 0, value: Number(neutral[1]), chroma: 0 };
  const [, hue, family, value, chroma] = /^([\d.]+)([A-Z]+) ([\d.]+)\/([\d.]+)$/.exec(notation)!;
  return { hue100: 10 * FAMILIES.indexOf(family!) + Number(hue), value: Number(value), chroma: Number(chroma) };
}

it('has 267 names, 29 and 13 coarser ones (Kelly and Judd 1955, NBS Circular 553)', () => {
  expect(ISCC_NBS_NAMES).toHaveLength(267);
  expect(new Set(ISCC_NBS_NAMES.map((entry) => entry.name)).size).toBe(267);
  expect(new Set(ISCC_NBS_NAMES.map((entry) => entry.level2)).size).toBe(29);
  expect(new Set(ISCC_NBS_NAMES.map((entry) => entry.level1)).size).toBe(13);
});

it('names each of the 91 published block centres with its own block (Kelly 1958)', () => {
  expect(KELLY_CENTRES).toHaveLength(91);
  for (const [block, notation] of KELLY_CENTRES) {
    expect(isccNbsName(parse(notation)).block, notation).toBe(block);
  }
});

it('names a point inside each of the 267 published blocks with its block and name (NBS Circular 553)', () => {
  expect(ISCC_NBS_INTERIORS.map(([block]) => block)).toEqual(Array.from({ length: 267 }, (_, i) => i + 1));
  for (const [block, hue100, value, chroma, name] of ISCC_NBS_INTERIORS) {
    const found = isccNbsName({ hue100, value, chroma });
    expect([found.block, found.name]).toEqual([block, name]);
  }
});

it('names them alike after a round trip through CIELAB under D65', () => {
  for (const [block, notation] of KELLY_CENTRES) {
    const lab = labD65FromMunsell(notation);
    expect(lab.ok && isccNbsName(munsellFromLabD65(lab.value)).block, notation).toBe(block);
  }
});

it('leaves no gap and no overlap: 200,000 random points lie in exactly one rectangle', () => {
  const random = mulberry32(553);
  const sectors = HUE_SECTORS.map(([beginsAt, text]) => ({
    beginsAt,
    rectangles: text
      .split(';')
      .map((rectangle) => rectangle.split(' ').map((x) => (x === '~' ? Number.POSITIVE_INFINITY : Number(x)))),
  }));
  for (let i = 0; i < 200_000; i++) {
    const point = { hue100: random() * 100, value: random() * 10, chroma: random() ** 2 * 30 };
    const sector = sectors.findLast(({ beginsAt }) => beginsAt <= point.hue100) ?? sectors.at(-1)!;
    const holding = sector.rectangles.filter(
      ([, v0, v1, c0, c1]) => point.value >= v0! && point.value < v1! && point.chroma >= c0! && point.chroma < c1!,
    );
    if (holding.length !== 1 || holding[0]![0] !== isccNbsName(point).block) {
      expect.fail(`${holding.length} rectangles at ${JSON.stringify(point)}`);
    }
  }
});

it('takes hues beyond the circle and refuses what is no colour', () => {
  expect(isccNbsName({ hue100: 105, value: 5, chroma: 10 })).toBe(isccNbsName({ hue100: 5, value: 5, chroma: 10 }));
  expect(isccNbsName({ hue100: 0, value: 10, chroma: 0 }).name).toBe('white');
  expect(isccNbsName({ hue100: 0, value: 0, chroma: 0 }).name).toBe('black');
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => isccNbsName({ hue100: bad, value: 5, chroma: 1 })).toThrow(RangeError);
    expect(() => isccNbsName({ hue100: 0, value: bad, chroma: 1 })).toThrow(RangeError);
    expect(() => isccNbsName({ hue100: 0, value: 5, chroma: bad })).toThrow(RangeError);
  }
  expect(() => isccNbsName({ hue100: 0, value: 10.01, chroma: 0 })).toThrow(RangeError);
  expect(() => isccNbsName({ hue100: 0, value: 5, chroma: -0.01 })).toThrow(RangeError);
});

it('has plain white, gray and black end at the neutral limit, at every hue and value', () => {
  const plain = new Set(['white', 'light gray', 'medium gray', 'dark gray', 'black']);
  for (let hue100 = 0.05; hue100 < 100; hue100 += 0.5) {
    for (let value = 0.05; value < 10; value += 0.1) {
      const limit = neutralLimit({ hue100, value });
      expect(plain.has(isccNbsName({ hue100, value, chroma: limit - 1e-9 }).name)).toBe(true);
      expect(plain.has(isccNbsName({ hue100, value, chroma: limit }).name)).toBe(false);
    }
  }
});

it.each([
  // CIELAB chroma at the limits of 'white' and of '-ish white' at value 9.25, from the block tables and the renotation.
  ['5R', 0.5, 1.7, 1.5, 5.2],
  ['10YR', 0.7, 5.1, 2, 14.6],
  ['5Y', 0.7, 5.9, 2, 16.8],
  ['5G', 0.5, 3.8, 1.2, 9.1],
  ['5B', 0.5, 2.1, 1.5, 6.2],
  ['5PB', 0.5, 1.4, 1.5, 4.2],
  ['5P', 0.5, 1.3, 1.5, 4.0],
])('near-white limits in CIELAB at hue %s', (hue, neutral, neutralChroma, tint, tintChroma) => {
  const chroma = (munsellChroma: number) => {
    const lab = labD65FromMunsell(`${hue} 9.25/${munsellChroma}`);
    if (!lab.ok) throw new Error(lab.problem.text);
    return chromaOf(lab.value);
  };
  const point = parse(`${hue} 9.25/0`);
  expect(isccNbsName({ ...point, chroma: neutral - 0.001 }).name).toBe('white');
  expect(isccNbsName({ ...point, chroma: tint - 0.001 }).name).toMatch(/ish white$/);
  expect(isccNbsName({ ...point, chroma: tint }).name).not.toMatch(/white$/);
  expect(Math.abs(chroma(neutral) - neutralChroma)).toBeLessThan(0.1);
  expect(Math.abs(chroma(tint) - tintChroma)).toBeLessThan(0.1);
});
