import { converter } from 'culori';
import { expect, it } from 'vitest';
import { pickRect } from '../../../src/view/pick';
import { rayThrough } from '../../../src/view/projection';
import { shown } from '../shown';
import { smallRoom } from '../small-room';
import { lab } from './lab';

const { fine } = smallRoom().light;
const SIZE = [640, 400] as const;
// sRGB transfer by a general color library (culori).
const encode = converter('rgb');
const bytesOf = (linear: readonly number[]): number[] => {
  const { r, g, b } = encode({ mode: 'lrgb', r: linear[0]!, g: linear[1]!, b: linear[2]! })!;
  return [r, g, b].map((x) => Math.round(255 * x));
};

const LEFT = [0.62, 0.41, 0.2];
const RIGHT = [0.08, 0.21, 0.5];
const CARD_M = 0.3;

/** The tiled wall over the counter, a place of it with nothing before it, and the eye straight before that. */
const rect = fine.findIndex(({ surface }) => surface === 5);
const U = 0.2;
const face = fine[rect]!;
const middle = [0, 1, 2].map((k) => face.origin[k]! + U * face.u[k]! + 0.5 * face.v[k]!) as [number, number, number];
const eye = [middle[0], middle[1] - 0.9, middle[2]] as const;

it('shows a card in the colors it is given, upright and not mirrored, within 1 code value', async () => {
  const picture = await shown(lab, {
    size: SIZE,
    eye,
    target: middle,
    fov_deg: 45,
    mark: { rect, u: U, v: 0.5 },
    card: { size_m: [CARD_M, CARD_M], width: 2, height: 1, linear: [...LEFT, ...RIGHT] },
  });
  let compared = 0;
  for (let y = 2; y < SIZE[1]; y += 5) {
    for (let x = 2; x < SIZE[0]; x += 5) {
      const direction = rayThrough(
        { eye, target: middle, fov_deg: 45 },
        SIZE[0] / SIZE[1],
        (2 * (x + 0.5)) / SIZE[0] - 1,
        1 - (2 * (y + 0.5)) / SIZE[1],
      );
      const hit = pickRect(fine, eye, direction);
      if (!hit) continue;
      const [dx, dz] = [0, 2].map((k) => eye[k]! + hit.distance * direction[k]! - middle[k]!) as [number, number];
      // Clear of the edges, and of the middle, where the two colors run into one another.
      if (Math.abs(dz) > 0.45 * CARD_M || Math.abs(dx) > 0.45 * CARD_M || Math.abs(dx) < 0.27 * CARD_M) continue;
      compared++;
      const expected = bytesOf(dx < 0 ? LEFT : RIGHT);
      const at = 4 * (y * picture.width + x);
      for (let k = 0; k < 3; k++) expect(Math.abs(picture.bytes[at + k]! - expected[k]!)).toBeLessThanOrEqual(1);
    }
  }
  expect(compared).toBeGreaterThan(50);
});

it('holds it in the half it belongs to alone', async () => {
  const halves = async (markIsRight: boolean) => {
    const { width, height, bytes } = await shown(lab, { size: SIZE, besideTint: 0.2, markIsRight });
    const isCard = (x: number) => {
      const at = 4 * (Math.floor(height / 2) * width + x);
      return bytesOf(LEFT).every((value, k) => Math.abs(bytes[at + k]! - value) <= 1);
    };
    const count = (from: number, to: number) =>
      Array.from({ length: to - from }, (_, i) => from + i).filter(isCard).length;
    return [count(0, width / 2) > 5, count(width / 2, width) > 5];
  };
  expect(await halves(false)).toEqual([true, false]);
  expect(await halves(true)).toEqual([false, true]);
});
