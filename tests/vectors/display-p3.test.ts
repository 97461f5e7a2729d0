import Color from 'colorjs.io';
import * as culori from 'culori/fn';
import { converter } from 'culori/fn';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { labD65FromHex } from '../../src/engine/color/display';
import { labD65FromDisplayP3 } from '../../src/engine/color/display-p3';
import type { Lab } from '../../src/engine/color/types';
import { finishComponent } from '../../src/engine/finish/component';

// Outside checks: culori and colorjs.io, general colour libraries. Their D65 white is rounded to four decimals of x, y.

function labOf(hex: string): Lab<'D65-2'> {
  const lab = labD65FromDisplayP3(hex);
  if (!lab.ok) throw new Error(lab.problem.text);
  return lab.value;
}

const bytes = fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255));
const hexOf = (rgb: readonly number[]) => `#${rgb.map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;

it('agrees with colorjs.io within 0.03 in L*, a*, b*', () => {
  fc.assert(
    fc.property(bytes, (rgb) => {
      const ours = labOf(hexOf(rgb));
      const [r, g, b] = rgb.map((byte) => byte / 255) as [number, number, number];
      const theirs = new Color('p3', [r, g, b]).to('lab-d65').coords as [number, number, number];
      expect(Math.abs(ours.l - theirs[0])).toBeLessThan(0.03);
      expect(Math.abs(ours.a - theirs[1])).toBeLessThan(0.03);
      expect(Math.abs(ours.b - theirs[2])).toBeLessThan(0.03);
    }),
    { numRuns: 200 },
  );
});

it('agrees with culori within 0.06 in L*, a*, b*', () => {
  culori.useMode(culori.modeP3);
  culori.useMode(culori.modeLab65);
  culori.useMode(culori.modeXyz65);
  const toLab65 = converter('lab65');
  fc.assert(
    fc.property(bytes, (rgb) => {
      const ours = labOf(hexOf(rgb));
      const [r, g, b] = rgb.map((byte) => byte / 255) as [number, number, number];
      const theirs = toLab65({ mode: 'p3', r, g, b });
      expect(Math.abs(ours.l - theirs.l)).toBeLessThan(0.06);
      expect(Math.abs(ours.a - (theirs.a ?? 0))).toBeLessThan(0.06);
      expect(Math.abs(ours.b - (theirs.b ?? 0))).toBeLessThan(0.06);
    }),
    { numRuns: 200 },
  );
});

it('has the white and the grays of sRGB and more saturated primaries', () => {
  for (const gray of ['#ffffff', '#808080', '#000000']) {
    const srgb = labD65FromHex(gray);
    expect(srgb.ok && labOf(gray).l - srgb.value.l).toBeCloseTo(0, 9);
    expect(Math.hypot(labOf(gray).a, labOf(gray).b)).toBeLessThan(1e-9);
  }
  for (const primary of ['#ff0000', '#00ff00']) {
    const srgb = labD65FromHex(primary);
    const chroma = (lab: Lab<'D65-2'>) => Math.hypot(lab.a, lab.b);
    expect(srgb.ok && chroma(labOf(primary)) - chroma(srgb.value)).toBeGreaterThan(5);
  }
});

it('counts as a screen colour, like sRGB', () => {
  const color = { kind: 'hex', hex: '#d9d4c8', space: 'display-p3' } as const;
  const result = finishComponent({ role: 'base', share: 1, color, finishClass: 'paint', provenance: 'measured' });
  expect(result.ok && result.value.provenance).toBe('screen');
  expect(result.ok && result.notices?.map(({ code }) => code)).toEqual(['provenance-set']);
  expect(result.ok && result.value.labD65).toEqual(labOf('#d9d4c8'));
});

it('refuses what is no screen colour', () => {
  for (const bad of ['', '#12', 'white']) {
    const result = labD65FromDisplayP3(bad);
    expect(!result.ok && result.problem.code).toBe('hex-not-understood');
  }
});
