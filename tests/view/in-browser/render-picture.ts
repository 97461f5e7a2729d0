import { expect, it } from 'vitest';
import { rendered, type ShownPicture, shown } from '../shown';
import { smallRoom } from '../small-room';
import { lab } from './lab';

const BASE = {
  eye: [0.4, 0.3, 1.6],
  target: [2.4, 2.4, 1.1],
  fov_deg: 60,
  size: [640, 400],
  sheen: true,
  gloss: [80, 12, 0, 90, 30, 85, 85],
} as const;
it.each([
  ['one look', null, []],
  ['two looks side by side', 0.6, []],
  ['an outline, asked for', null, [3]],
] as const)('gives the pixels on screen at scale 1: %s', async (_, besideTint, outlined) => {
  const onScreen = await shown(lab, { ...BASE, besideTint, outlined, marksClipped: true });
  const picture = await rendered(lab, { width: 640, height: 400, marks: outlined.length > 0 });
  expect([picture.width, picture.height]).toEqual([640, 400]);
  expect(worstDifference(onScreen, picture)).toBe(0);
  // And leaves the canvas as it was.
  expect(worstDifference(onScreen, await shown(lab, { ...BASE, besideTint, outlined, marksClipped: true }))).toBe(0);
});

it('leaves the outline out unless it is asked for', async () => {
  const plain = await shown(lab, { ...BASE, besideTint: null, outlined: [] });
  await shown(lab, { ...BASE, besideTint: null, outlined: [3] });
  expect(worstDifference(plain, await rendered(lab, { width: 640, height: 400 }))).toBe(0);
});

it('draws four times as many pixels along an edge, in tiles without seams', async () => {
  const small = await shown(lab, { ...BASE, size: [640, 200], besideTint: null, outlined: [] });
  const large = await rendered(lab, { width: 640, height: 200, scale: 4 });
  expect([large.width, large.height]).toEqual([2560, 800]);
  // Sixteen pixels together make one of the small picture, but for how edges and patterns are sampled.
  let sum = 0;
  let off = 0;
  for (let y = 0; y < 200; y++) {
    for (let x = 0; x < 640; x++) {
      let mean = 0;
      for (let k = 0; k < 16; k++) mean += large.bytes[4 * ((4 * y + (k >> 2)) * 2560 + 4 * x + (k & 3)) + 1]! / 16;
      const difference = Math.abs(mean - small.bytes[4 * (y * 640 + x) + 1]!);
      sum += difference;
      if (difference > 24) off++;
    }
  }
  expect(sum / 128_000).toBeLessThan(1);
  expect(off / 128_000).toBeLessThan(0.01);
  // The seam between tiles (the width is cut at 1280) is no brighter or darker than lines beside it.
  const step = (x: number): number => {
    let total = 0;
    for (let y = 0; y < 800; y++) {
      total += Math.abs(large.bytes[4 * (y * 2560 + x) + 1]! - large.bytes[4 * (y * 2560 + x - 1) + 1]!);
    }
    return total / 800;
  };
  expect(step(1280)).toBeLessThan(1.5 * Math.max(step(1278), step(1279), step(1281), step(1282)) + 0.2);
});

it('draws a picture with an outline in tiles', async () => {
  await shown(lab, { ...BASE, besideTint: null, outlined: [3] });
  const whole = await rendered(lab, { width: 640, height: 200, scale: 4, marks: true });
  // Black and white pixels of the line are there on both sides of the seam.
  const neutral = (x: number): number => {
    let count = 0;
    for (let y = 0; y < whole.height; y++) {
      const i = 4 * (y * 2560 + x);
      const [r, g, b] = whole.bytes.subarray(i, i + 3) as unknown as [number, number, number];
      if (r === g && g === b && (r === 0 || r === 255)) count++;
    }
    return count;
  };
  expect(neutral(1280)).toBeGreaterThan(0);
  expect(Math.abs(neutral(1279) - neutral(1280))).toBeLessThan(12);
});

it('leaves a held card out unless it is asked for', async () => {
  const rect = smallRoom().light.fine.findIndex(({ surface }) => surface === 5);
  const card = { size_m: [0.3, 0.3], width: 1, height: 1, linear: [0.9, 0.1, 0.1] } as const;
  const plain = await shown(lab, { ...BASE, besideTint: null, outlined: [] });
  const held = await shown(lab, { ...BASE, besideTint: null, outlined: [], mark: { rect, u: 0.5, v: 0.5 }, card });
  expect(worstDifference(plain, held)).toBeGreaterThan(50);
  expect(worstDifference(plain, await rendered(lab, { width: 640, height: 400 }))).toBe(0);
  expect(worstDifference(held, await rendered(lab, { width: 640, height: 400, marks: true }))).toBe(0);
});

function worstDifference(a: ShownPicture, b: ShownPicture): number {
  let worst = 0;
  for (let i = 0; i < a.bytes.length; i++) worst = Math.max(worst, Math.abs(a.bytes[i]! - b.bytes[i]!));
  return worst;
}
