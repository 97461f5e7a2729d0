import { expect, it } from 'vitest';
import { cctDuv } from '../engine/color/correlated-temperature';
import { whiteOf } from '../engine/color/xyz';
import { colorRendering } from '../engine/lamp/color-rendering';
import { lightById } from '../engine/spectrum/lights';
import { observer2 } from '../engine/spectrum/observers';
import { lampMeaning, lampTint } from './lamp-meaning';

const figures = (id: string) => {
  const spd = lightById(id)!;
  const temperature = cctDuv(whiteOf(spd, observer2));
  const rendering = colorRendering(spd);
  return {
    cct_k: temperature?.cct_k ?? null,
    duv: temperature?.duv ?? null,
    ra: rendering?.ra ?? null,
    r: rendering?.r ?? null,
    outside_tolerance: rendering?.isOutsideTolerance ?? false,
  };
};

it('calls neither a filament nor daylight tinted, though daylight lies above the Planckian locus', () => {
  for (const id of ['A', 'D50', 'D65', 'D75', 'LED-B3']) {
    const { cct_k, duv } = figures(id);
    expect([id, lampTint(cct_k!, duv!)]).toEqual([id, 'none']);
  }
});

// ANSI C78.377: lamps may lie 0.006 from the center of their color temperature (from memory).
it.each([
  [2700, 0.0029, 'none'],
  [2700, 0.004, 'slightly greenish'],
  [2700, 0.007, 'greenish'],
  [2700, -0.004, 'slightly pinkish'],
  [6500, 0, 'slightly pinkish'],
  [6500, -0.004, 'pinkish'],
])('says of %d K, Duv %d: %s', (cct_k, duv, tint) => {
  expect(lampTint(cct_k, duv)).toBe(tint);
});

it('says what looks off under a halophosphate tube (CIE 13.3: Ra of FL2 is 64, R9 -84), and nothing under a filament', () => {
  expect(lampMeaning(figures('FL2')).slice(0, 2)).toEqual(['Colors: somewhat off.', 'Strong reds: dull.']);
  expect(lampMeaning(figures('A'))).toEqual([
    'Colors: right.',
    'Strong reds: right.',
    'Wood and skin: right.',
    'White: no tint.',
  ]);
});

it.each([
  [90, 'right'],
  [89, 'nearly right'],
  [75, 'nearly right'],
  [74, 'somewhat off'],
  [59, 'off'],
])('tells wood and skin by R13 alone: %d is %s', (r13, words) => {
  const r = [...new Array(12).fill(50), r13, 50];
  const figures = { cct_k: 2700, duv: 0, ra: 50, r, outside_tolerance: false };
  expect(lampMeaning(figures)[2]).toBe(`Wood and skin: ${words}.`);
});

it('judges indices as the whole numbers they are stated in', () => {
  const at = (ra: number) =>
    lampMeaning({ cct_k: 2700, duv: 0, ra, r: new Array(14).fill(60), outside_tolerance: false })[0];
  expect(at(79.6)).toBe(at(80));
  expect(at(79.4)).not.toBe(at(80));
});

it('says so when a light has no color temperature or no color rendering', () => {
  expect(lampMeaning({ cct_k: null, duv: null, ra: null, r: null, outside_tolerance: false })).toHaveLength(1);
  expect(lampMeaning({ cct_k: 30_000, duv: 0, ra: null, r: null, outside_tolerance: false })).toHaveLength(1);
});

it('does not praise or blame the colors of a light too far from white for Ra (CIE 13.3)', () => {
  const r = new Array(14).fill(95);
  const sentences = lampMeaning({ cct_k: 3000, duv: -0.03, ra: 95, r, outside_tolerance: true }).join(' ');
  expect(sentences).toContain('Too far from white');
  expect(sentences).not.toMatch(/Colors|reds|skin/);
});
