import { expect, it } from 'vitest';
import { overlapOf } from '../../src/engine/photo/quad-rows';
import { readSample } from '../../src/engine/photo/read-sample';
import type { PictureQuad } from '../../src/engine/photo/types';
import { PLACES, photoOf, SIZE } from './pictures';
import { box, linear } from './scene';

const rhombus: PictureQuad = [
  { x: 50, y: 0 },
  { x: 100, y: 50 },
  { x: 50, y: 100 },
  { x: 0, y: 50 },
];

// Areas by hand: a square of 100 and what of it lies in the other, over the smaller of both.
it.each([
  ['apart', box(0, 0, 100, 100), box(100, 0, 100, 100), 0],
  ['by a quarter', box(0, 0, 100, 100), box(75, 0, 100, 100), 0.25],
  ['by a corner', box(0, 0, 100, 100), box(50, 50, 100, 100), 0.25],
  ['within', box(0, 0, 100, 100), box(40, 40, 10, 10), 1],
  ['a rhombus in a square', box(0, 0, 100, 100), rhombus, 1],
  ['half of a rhombus', box(50, 0, 100, 100), rhombus, 0.5],
  ['no area', box(0, 0, 100, 100), box(10, 10, 0, 50), 0],
])('boxes overlap %s', (_, a, b, part) => {
  expect(overlapOf(a, b)).toBeCloseTo(part, 2);
  expect(overlapOf(b, a)).toBeCloseTo(part, 2);
});

it('refuses a sample that reaches over its card, and takes one that touches it', () => {
  const picture = linear(photoOf({}), SIZE.width, SIZE.height);
  const card = box(14, 24, 72, 72);
  const read = (sample: PictureQuad) => readSample(picture, { ...PLACES, cards: [card], sample });
  expect(read(box(14, 24, 200, 72))).toMatchObject({ ok: false, problem: { code: 'boxes-overlap' } });
  expect(read(box(86, 24, 100, 72)).ok).toBe(true);
});
