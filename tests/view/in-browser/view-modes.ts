import Color from 'colorjs.io';
import { expect, it } from 'vitest';
import { pictureSrgb8 } from '../../../src/engine/color/picture-light';
import { rayThrough } from '../../../src/view/projection';
import { expectedPixel } from '../expected-pixel';
import { type ShownPicture, shown } from '../shown';
import { smallLight, smallLook, smallRoom } from '../small-room';
import { lab } from './lab';

const POSE = { eye: [0.4, 0.3, 1.6], target: [2.4, 2.4, 1.1], fov_deg: 60 } as const;
const BASE = { ...POSE, size: [640, 400], besideTint: null, sheen: true, gloss: [80, 12, 0, 90, 30, 85, 85] } as const;
const rgbAt = ({ width, bytes }: ShownPicture, x: number, y: number): [number, number, number] => {
  const i = 4 * (y * width + x);
  return [bytes[i]!, bytes[i + 1]!, bytes[i + 2]!];
};

/** Within a face: edges are blends of two colors, and the gray of a blend is not the blend of grays. */
function isEven(picture: ShownPicture, x: number, y: number): boolean {
  const here = rgbAt(picture, x, y);
  return [-1, 0, 1].every((dy) =>
    [-1, 0, 1].every((dx) => rgbAt(picture, x + dx, y + dy).every((v, k) => Math.abs(v - here[k]!) < 4)),
  );
}

/** CIELAB lightness of sRGB bytes, by colorjs.io: Y alone decides it, so its white (D50, adapted) does not matter to a neutral. */
const lightnessOf = (rgb: readonly number[]): number => {
  const y = new Color('srgb', rgb.map((v) => v / 255) as [number, number, number]).to('xyz-d65').coords[1] as number;
  return new Color('xyz-d65', [0.95047 * y, y, 1.08883 * y]).to('lab-d65').coords[0] as number;
};

/** The neutral byte of a lightness, by colorjs.io. */
const neutralOf = (lightness: number): number =>
  255 * (new Color('lab-d65', [lightness, 0, 0]).to('srgb').coords[1] as number);

it('shows the gray of each color by its lightness, within a code value', async () => {
  const color = await shown(lab, BASE);
  const gray = await shown(lab, { ...BASE, mode: 'gray' });
  let compared = 0;
  for (let y = 2; y < 398; y += 5) {
    for (let x = 2; x < 638; x += 5) {
      const rgb = rgbAt(color, x, y);
      if (Math.max(...rgb) === 255 || !isEven(color, x, y)) continue;
      compared++;
      const [r, g, b] = rgbAt(gray, x, y);
      expect([g, b]).toEqual([r, r]);
      expect(Math.abs(r - neutralOf(lightnessOf(rgb)))).toBeLessThanOrEqual(1);
    }
  }
  expect(compared).toBeGreaterThan(3000);
});

it('shows lightness in ten steps of ten', async () => {
  const color = await shown(lab, BASE);
  const steps = await shown(lab, { ...BASE, mode: 'lightness' });
  const seen = new Set<number>();
  for (let y = 2; y < 398; y += 5) {
    for (let x = 2; x < 638; x += 5) {
      const rgb = rgbAt(color, x, y);
      const lightness = lightnessOf(rgb);
      const step = Math.floor(lightness / 10);
      // Half a code value of the color is up to 0.4 of lightness: beside a limit either step is right.
      if (
        Math.max(...rgb) === 255 ||
        !isEven(color, x, y) ||
        Math.abs(lightness - 10 * Math.round(lightness / 10)) < 0.5
      ) {
        continue;
      }
      const [r, g, b] = rgbAt(steps, x, y);
      expect([g, b]).toEqual([r, r]);
      expect(Math.abs(r - neutralOf(10 * step + 5))).toBeLessThanOrEqual(1);
      seen.add(step);
    }
  }
  expect(seen.size).toBeGreaterThanOrEqual(4);
});

it('hatches what is brighter than the screen, and nothing else', async () => {
  // The wall round the window, where daylight is over white.
  const pose = { eye: [3.2, 0.4, 1.6], target: [0.5, 2.4, 1.1], fov_deg: 80 } as const;
  const plain = await shown(lab, { ...BASE, ...pose, exposure: 2, sheen: false });
  const marked = await shown(lab, { ...BASE, ...pose, exposure: 2, sheen: false, marksClipped: true });
  const room = smallRoom();
  const light = smallLight(room);
  const look = smallLook(room, light, 0, [], 2);
  const counts = { within: 0, darkened: 0, fading: 0, darkenedStripes: 0, fadingStripes: 0 };
  for (let y = 0; y < 400; y += 3) {
    for (let x = 0; x < 640; x += 2) {
      const direction = rayThrough(pose, 1.6, (2 * x + 1) / 640 - 1, 1 - (2 * y + 1) / 400);
      const expected = expectedPixel(room, light, look, pose.eye, direction);
      if (!expected || !isEvenAt(plain, x, y)) continue;
      // Patterns are seen through mip levels here: near the limits the two may differ.
      const sure = expected.texel ? 0.15 : 0.02;
      if (Math.abs(expected.exposed - 1) < sure || Math.abs(expected.shown - 1) < sure) continue;
      const changed = rgbAt(plain, x, y).join() !== rgbAt(marked, x, y).join();
      if (expected.exposed < 1) {
        counts.within++;
        expect(changed).toBe(false);
      } else if (expected.shown < 1) {
        counts.darkened++;
        if (changed) counts.darkenedStripes++;
      } else {
        counts.fading++;
        if (changed) counts.fadingStripes++;
      }
      if (changed) expect([0, 765]).toContain(rgbAt(marked, x, y).reduce((a, b) => a + b));
    }
  }
  expect(Math.min(counts.within, counts.darkened, counts.fading)).toBeGreaterThan(300);
  // Four of fifteen pixels along a line; four of six, two of which may be white on white.
  expect(counts.darkenedStripes / counts.darkened).toBeCloseTo(4 / 15, 1);
  expect(counts.fadingStripes / counts.fading).toBeGreaterThan(0.3);
  expect(counts.fadingStripes / counts.fading).toBeLessThan(0.7);
});

it('shows what is outside darker by one factor, and hatches it where it is brighter than the screen', async () => {
  // Down through the window at the ground near by, where no haze lies before it.
  const pose = { eye: [1.2, 1.3, 1.95], target: [0, 1.3, 1.2], fov_deg: 60 } as const;
  const plain = await shown(lab, { ...BASE, ...pose, sheen: false });
  const marked = await shown(lab, { ...BASE, ...pose, sheen: false, marksClipped: true });
  const room = smallRoom();
  const { ground, darkenedBy } = smallLook(room, smallLight(room), 0, []).outside!;
  const expected = pictureSrgb8({ r: ground[0] / darkenedBy, g: ground[1] / darkenedBy, b: ground[2] / darkenedBy });
  let pixels = 0;
  let stripes = 0;
  for (let y = 0; y < 400; y += 3) {
    for (let x = 0; x < 640; x += 2) {
      const [dx, dy, dz] = rayThrough(pose, 1.6, (2 * x + 1) / 640 - 1, 1 - (2 * y + 1) / 400);
      // The pane is x = 0 from y 0.7 to 1.9 and z 1 to 2; below 20 degrees the haze is gone.
      const [atY, atZ] = [pose.eye[1] - (pose.eye[0] * dy) / dx, pose.eye[2] - (pose.eye[0] * dz) / dx];
      if (dx >= 0 || dz / Math.hypot(dx, dy, dz) > -0.36) continue;
      if (atY < 0.75 || atY > 1.85 || atZ < 1.05 || atZ > 1.95) continue;
      pixels++;
      for (let k = 0; k < 3; k++) expect(Math.abs(rgbAt(plain, x, y)[k]! - expected[k]!)).toBeLessThanOrEqual(1);
      if (rgbAt(marked, x, y).join() !== rgbAt(plain, x, y).join()) stripes++;
    }
  }
  expect(pixels).toBeGreaterThan(1000);
  // Brighter than white but not as shown: the sparse stripes, four of fifteen pixels along a line.
  expect(stripes / pixels).toBeCloseTo(4 / 15, 1);
});

const isEvenAt = (picture: ShownPicture, x: number, y: number): boolean =>
  x > 0 && y > 0 && x < picture.width - 1 && y < picture.height - 1 && isEven(picture, x, y);
