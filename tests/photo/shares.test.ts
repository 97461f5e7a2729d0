import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import type { FinishPattern } from '../../src/engine/pattern/types';
import { readSample } from '../../src/engine/photo/read-sample';
import { lightById } from '../../src/engine/spectrum/lights';
import { CAMERAS } from './camera';
import { mixInLight } from './mix';
import { bakedSample, patch } from './pictures';
import { box, cardOf, linear, photograph } from './scene';

const [WIDTH, HEIGHT] = [340, 220];
const WHITE = patch('white 9.5 (.05 D)');
const LIGHT = patch('neutral 8 (.23 D)');
const GRAY = patch('neutral 5 (.70 D)');
const DARK = patch('neutral 3.5 (1.05 D)');
const BROWN = patch('dark skin');

function photographed(
  pattern: FinishPattern,
  shares: readonly number[],
  materials: readonly (typeof WHITE)[],
  noise: number,
) {
  const { at, truth } = bakedSample(pattern, shares, 5, HEIGHT, HEIGHT);
  const rgba = photograph({
    width: WIDTH,
    height: HEIGHT,
    camera: CAMERAS[1]!,
    lights: [{ spd: lightById('D50')! }],
    noise,
    things: [
      { left: 10, top: 20, width: 100, height: 180, materials: [cardOf(0.18)] },
      { left: 120, top: 0, width: HEIGHT, height: HEIGHT, materials, at },
    ],
  });
  const places = {
    sample: box(120, 0, HEIGHT, HEIGHT),
    cards: [box(14, 24, 92, 172)],
    cardY: 0.18,
    light: 'daylight' as const,
  };
  const read = readSample(linear(rgba, WIDTH, HEIGHT), places);
  if (!read.ok) throw new Error(read.problem.text);
  return { ...read.value, truth };
}

const FLECK: FinishPattern = { kind: 'fleck', size_mm: 14 };
const VEINS: FinishPattern = { kind: 'veined', spacing_mm: 120, direction_deg: 20 };
const LAYERS: FinishPattern = { kind: 'linear', size_mm: 12, direction_deg: 0 };

it.each([
  ['flecks', FLECK, [0.9, 0.1], [WHITE, DARK]],
  ['flecks of two kinds', FLECK, [0.7, 0.18, 0.12], [WHITE, BROWN, DARK]],
  ['dark with light flecks', FLECK, [0.85, 0.15], [DARK, WHITE]],
  ['veins', VEINS, [0.9, 0.1], [LIGHT, DARK]],
  ['brown veins', VEINS, [0.85, 0.15], [LIGHT, BROWN]],
  ['layers', LAYERS, [0.74, 0.26], [LIGHT, GRAY]],
] as const)('finds the shares of %s within 0.02 and their base within 1 dE00', (_, pattern, shares, materials) => {
  for (const noise of [0, 0.01]) {
    const { colors, truth } = photographed(pattern, shares, materials, noise);
    expect(colors.length).toBe(shares.length);
    const base = colors[0]!;
    expect(differenceCiede2000(base.lab, labD65FromReflectance(materials[0]!))).toBeLessThan(1);
    materials.forEach((material, k) => {
      const lab = labD65FromReflectance(material);
      const found = colors.reduce((a, b) =>
        differenceCiede2000(a.lab, lab) < differenceCiede2000(b.lab, lab) ? a : b,
      );
      expect(Math.abs(found.share - truth[k]!)).toBeLessThan(0.02);
    });
    expect(colors.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  }
});

it('keeps the mean of the area, however it is taken apart', () => {
  for (const [pattern, materials] of [
    [VEINS, [WHITE, DARK]],
    [{ kind: 'cloud', size_mm: 60 }, [LIGHT, GRAY]],
    [{ kind: 'grain' }, [LIGHT, BROWN]],
  ] as const) {
    const { colors, truth } = photographed(pattern, [0.8, 0.2], materials, 0.01);
    const mean = mixInLight(colors.map(({ lab, share }) => ({ lab, share })));
    const real = mixInLight(materials.map((rho, k) => ({ lab: labD65FromReflectance(rho), share: truth[k]! })));
    expect(differenceCiede2000(mean, real)).toBeLessThan(1.5);
  }
});

it('makes one color of one color: noise, grain of the light and a gradient are no second one', () => {
  for (const noise of [0, 0.02, 0.05]) {
    const { colors } = photographed({ kind: 'plain' }, [1], [GRAY], noise);
    expect(colors.map(({ share }) => share)).toEqual([1]);
  }
});

it('leaves out dust, and keeps a minority that stands out', () => {
  const dust = photographed(FLECK, [0.995, 0.005], [WHITE, DARK], 0.01);
  expect(dust.colors.length).toBe(1);
  expect(differenceCiede2000(dust.colors[0]!.lab, labD65FromReflectance(WHITE))).toBeLessThan(1);
  const minority = photographed(FLECK, [0.97, 0.03], [WHITE, DARK], 0.01);
  expect(minority.colors.length).toBe(2);
});
