import { expect, it } from 'vitest';
import type { Rect, Vec3 } from '../../../src/engine/light/types';
import { mirrorFaces, planesSeen } from '../../../src/view/mirror-planes';
import { rayThrough } from '../../../src/view/projection';
import { sheenOfLook } from '../../../src/view/sheen';
import { cornerParallel } from '../../physics/configuration-factors';
import { expectedPixel } from '../expected-pixel';
import { shown } from '../shown';
import { smallLight, smallLook, smallRoom } from '../small-room';
import { lab } from './lab';

const WALL = 1;
/** Smooth: a coat of index 1.5 reads 89. */
const GLOSS = [0, 92, 0, 0, 0, 0, 0];
const POSE = { eye: [1.9, 0.5, 1.5], target: [1.7, 3, 1.3], fov_deg: 80 } as const;
it('mirrors in a smooth wall what a mirrored ray meets', async () => {
  const picture = await shown(lab, {
    ...POSE,
    size: [640, 400],
    besideTint: null,
    sheen: true,
    gloss: GLOSS,
  });
  const room = smallRoom();
  const light = smallLight(room);
  const look = smallLook(room, light, 0, GLOSS);
  const sheen = sheenOfLook(look.surfaces[WALL]!)!;
  const differences: number[] = [];
  for (let y = 4; y < 396; y += 4) {
    for (let x = 4; x < 636; x += 4) {
      const at = (dx: number, dy: number) => {
        const d = rayThrough(POSE, 1.6, (2 * (x + dx)) / 640 - 1, 1 - (2 * (y + dy)) / 400);
        const wall = expectedPixel(room, light, look, POSE.eye, d);
        // The back wall at y = 3 above the counters.
        const t = (3 - POSE.eye[1]) / d[1];
        const place = POSE.eye.map((e, k) => e + t * d[k]!) as unknown as Vec3;
        const face = wall && room.light.fine[wall.rect];
        if (!face || face.surface !== WALL || Math.abs(face.origin[1] - 3) > 1e-9 || face.v[1] !== 0) return null;
        const seen = expectedPixel(room, light, look, place, [d[0], -d[1], d[2]]);
        return seen && { wall, seen, cosine: d[1] / Math.hypot(...d) };
      };
      const here = at(0.5, 0.5);
      const around = [at(-3, -3), at(4, -3), at(-3, 4), at(4, 4)];
      // Within a mirrored face without a pattern: the mirror's picture has half as many pixels.
      if (!here || here.seen.texel || around.some((one) => one?.seen.rect !== here.seen.rect)) continue;
      // Nor where the picture darkens the place.
      if (here.wall.exposed !== here.wall.shown) continue;
      const place = 16 * Math.sqrt(here.cosine);
      const i = Math.min(15, Math.floor(place));
      const low = sheen.mirrorAlbedo[i]!;
      const albedo = low + (sheen.mirrorAlbedo[i + 1]! - low) * (place - i);
      here.wall.linear.forEach((body, k) => {
        const both = (1 - albedo) * body * sheen.bodyGain[k]! + albedo * here.seen.linear[k]!;
        if (both > 0.95) return;
        const code = 255 * (1.055 * both ** (1 / 2.4) - 0.055);
        differences.push(Math.abs(picture.bytes[4 * (y * 640 + x) + k]! - code));
      });
    }
  }
  expect(differences.length).toBeGreaterThan(3000);
  // Mirrored light is kept in steps of a byte's square root: 2 % of an R of 0.04 and a rounding.
  differences.sort((a, b) => a - b);
  expect(differences.at(-1)!).toBeLessThan(3);
  expect(differences[Math.floor(differences.length * 0.9)]!).toBeLessThanOrEqual(1);
});

it('takes the planes an eye sees most of, by their solid angle', () => {
  const floor = (x: number, width: number, z: number, surface: number): Rect & { piece: number; pattern: never } => ({
    ...{ origin: [x, 0, z], u: [width, 0, 0], v: [0, 1, 0], surface },
    ...({ piece: 0 } as { piece: number; pattern: never }),
  });
  const fine = [
    floor(0, 1, 0, 0),
    floor(1, 1, 0, 0),
    floor(0, 0.5, 0.5, 1),
    floor(0, 2, 0.2, 2),
    floor(0, 0.02, 0.9, 1),
  ];
  const faces = mirrorFaces({ fine, windows: [] }, new Set([0, 1]), false);
  // Two rectangles of one plane count together, what does not mirror and what is narrow not at all.
  expect(faces.map(({ rects }) => rects.length)).toEqual([2, 1]);
  const eye: Vec3 = [0, 0, 1];
  const [first] = planesSeen(faces, eye, 1);
  expect(first!.offset).toBe(0);
  // Far up all of it is as small as Howell's factor says: nothing to mirror.
  const high: Vec3 = [0, 0, 200];
  expect(cornerParallel(2, 1, 200) * Math.PI).toBeLessThan(0.05);
  expect(planesSeen(faces, high, 2)).toEqual([]);
  // From below none is seen.
  expect(planesSeen(faces, [0.5, 0.5, -1], 2)).toEqual([]);
});
