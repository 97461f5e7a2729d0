import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const css = readFileSync(new URL('../../src/ui/styles/tokens.css', import.meta.url), 'utf8');
const tokens = [...css.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => ({ name: name!, hex: hex! }));
const commented = [...css.matchAll(/(#[0-9a-f]{6}); \/\* L\* (\d+)/g)].map(([, hex, l]) => ({
  hex: hex!,
  l: Number(l),
}));

/** Relative luminance and contrast as WCAG 2.2 defines them. */
const luminance = (hex: string): number => {
  const c = Number.parseInt(hex.slice(1, 3), 16) / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
};
const contrast = (a: string, b: string): number => {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
};

/** The first definition of a token is the light theme, the second the dark one. */
const themed = (name: string): readonly string[] => tokens.filter((token) => token.name === name).map(({ hex }) => hex);

it('frames the picture in grays only: equal red, green and blue are a* = b* = 0 in sRGB', () => {
  expect(tokens.length).toBeGreaterThan(20);
  for (const { hex } of tokens) expect(new Set([hex.slice(1, 3), hex.slice(3, 5), hex.slice(5, 7)]).size).toBe(1);
});

it('has the lightness it claims, CIE 1976 L* of the luminance, within the step of 8 bits', () => {
  expect(commented.length).toBeGreaterThan(10);
  for (const { hex, l } of commented) expect(Math.abs(116 * Math.cbrt(luminance(hex)) - 16 - l)).toBeLessThan(0.35);
});

it('keeps the contrast of WCAG 2.2: text 4.5 (1.4.3), outlines of controls 3 (1.4.11), in both themes', () => {
  for (const theme of [0, 1, 2]) {
    for (const ground of ['panel', 'raised']) {
      const back = themed(ground)[theme]!;
      expect(contrast(themed('text')[theme]!, back)).toBeGreaterThan(7);
      expect(contrast(themed('text-2')[theme]!, back)).toBeGreaterThan(4.5);
      expect(contrast(themed('edge')[theme]!, back)).toBeGreaterThan(3);
    }
    expect(contrast(themed('text-2')[theme]!, themed('sunken')[theme]!)).toBeGreaterThan(4.5);
  }
});
