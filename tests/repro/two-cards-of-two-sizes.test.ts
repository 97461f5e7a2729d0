import { expect, it } from 'vitest';
import { CARD_BLOCKS, cardLight } from '../../src/engine/photo/card-light';
import { patchIn } from '../../src/engine/photo/patch';
import { fitPlane } from '../../src/engine/photo/robust';
import type { LinearPicture } from '../../src/engine/photo/types';
import { box } from '../photo/scene';

const WIDTH = 600;
const HEIGHT = 100;
/** Light that falls off along x as exp(-x / 1000), seen on white everywhere. */
const light = (x: number): number => Math.exp(-x / 1000);
const picture: LinearPicture = {
  width: WIDTH,
  height: HEIGHT,
  step: 1,
  xyz: Float32Array.from({ length: 3 * WIDTH * HEIGHT }, (_, i) => 0.5 * light((Math.floor(i / 3) % WIDTH) + 0.5)),
  high: new Uint8Array(WIDTH * HEIGHT),
  low: new Uint8Array(WIDTH * HEIGHT),
};

// With a large card and a small one the slope between them came out too small, and their white was that of the large one's place.
it.each([
  ['alike', box(0, 0, 60, 60), box(540, 0, 60, 60)],
  ['the second small', box(0, 0, 90, 90), box(560, 0, 12, 12)],
  ['the first small', box(0, 0, 12, 12), box(500, 0, 90, 90)],
] as const)('the light between two places of a card: %s', (_, first, second) => {
  const cards = [first, second].map((quad) => patchIn(picture, quad, CARD_BLOCKS));
  const found = cardLight(cards, 0.5, { x: 300, y: 30 })!;
  for (const [alongX, alongY] of found.light.slopes) {
    expect(alongX).toBeCloseTo(-1 / 1000, 5);
    expect(alongY).toBeCloseTo(0, 5);
  }
  expect(found.light.white.y).toBeCloseTo(light(found.light.center.x), 2);
});

it('a plane is the same from whichever point it is measured', () => {
  const at = Array.from({ length: 24 }, (_, i) => [i % 6, Math.floor(i / 6)] as const);
  const plane = (x0: number, y0: number) =>
    fitPlane(
      Float64Array.from(at, ([x]) => x - x0),
      Float64Array.from(at, ([, y]) => y - y0),
      Float64Array.from(at, ([x, y]) => 3 + 0.5 * x - 0.25 * y),
    );
  expect(plane(2.5, 1.5).level).toBeCloseTo(3 + 0.5 * 2.5 - 0.25 * 1.5, 9);
  const far = plane(-10, 20);
  expect([far.level, far.alongX, far.alongY]).toEqual([-7, 0.5, -0.25].map((value) => expect.closeTo(value, 9)));
});
