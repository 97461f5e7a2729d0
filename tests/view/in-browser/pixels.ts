import { expect, it } from 'vitest';
import type { Vec3 } from '../../../src/engine/light/types';
import type { Pose } from '../../../src/view/camera-rig';
import { pickRect } from '../../../src/view/pick';
import { rayThrough } from '../../../src/view/projection';
import type { PicturePage } from '../browser';
import { type ExpectedPixel, expectedPixel } from '../expected-pixel';
import type { LabChange } from '../page/main';
import { type ShownPicture, shown as shownBy } from '../shown';
import { smallLight, smallLook, smallRoom } from '../small-room';
import { lab } from './lab';

// Source of every expected value here: the sum of weights, light and colours written out in expected-pixel.ts.

const room = smallRoom();
const light = smallLight(room);
const SIZE = [640, 400] as const;
const shown = (change: LabChange, by: PicturePage = lab): Promise<ShownPicture> => shownBy(by, change);

/** Compares a grid of pixels of one half of the picture; pixels on an edge between two faces are left out. */
function compare(
  picture: ShownPicture,
  pose: Pose,
  tint: number,
  left: number,
  width: number,
): { worst: number; compared: number } {
  const look = smallLook(room, light, tint);
  const aspect = width / picture.height;
  let worst = 0;
  let compared = 0;
  for (let y = 3; y < picture.height; y += 14) {
    for (let x = 4; x < width; x += 9) {
      const at = (dx: number, dy: number) => {
        const direction = rayThrough(pose, aspect, (2 * (x + dx)) / width - 1, 1 - (2 * (y + dy)) / picture.height);
        return expectedPixel(room, light, look, pose.eye, direction);
      };
      const expected = at(0.5, 0.5);
      const corners = [at(-0.5, -0.5), at(1.5, -0.5), at(-0.5, 1.5), at(1.5, 1.5)];
      if (!expected || corners.some((corner) => corner?.rect !== expected.rect)) continue;
      // A pixel larger than a texel shows an average from a mip level, which is not compared here.
      const step = corners.map((corner) => texelDistance(corner!, expected));
      if (Math.max(...step) > 1) continue;
      compared++;
      for (let k = 0; k < 3; k++) {
        const byte = picture.bytes[4 * (y * picture.width + left + x) + k]!;
        worst = Math.max(worst, Math.abs(byte - Math.round(expected.rgb[k]!)));
      }
    }
  }
  return { worst, compared };
}

function texelDistance(a: ExpectedPixel, b: ExpectedPixel): number {
  return a.texel && b.texel ? Math.hypot(a.texel[0] - b.texel[0], a.texel[1] - b.texel[1]) : 0;
}

const CLOSE: Pose = { eye: [1.6, 0.6, 1.45], target: [1.6, 1.2, 0.9], fov_deg: 50 };
const EDGE: Pose = { eye: [1.6, 0.45, 1.15], target: [1.6, 0.9, 0.85], fov_deg: 50 };
const ACROSS: Pose = { eye: [0.4, 0.3, 1.6], target: [2.4, 2.4, 1.1], fov_deg: 60 };
const BACKSPLASH: Pose = { eye: [2.2, 2.2, 1.3], target: [2.5, 3, 1.2], fov_deg: 70 };

it.each([
  ['a counter at close range', CLOSE],
  ['the backsplash, plain walls and a constant face', BACKSPLASH],
  ['an edge that carries the pattern on', EDGE],
])('shows the exact colour at %s', async (_, pose) => {
  const picture = await shown({ ...asChange(pose), besideTint: null, sheen: false, size: SIZE });
  const { worst, compared } = compare(picture, pose, 0, 0, picture.width);
  expect(compared).toBeGreaterThan(750);
  expect(worst).toBeLessThanOrEqual(1);
});

it('shows the exact colour where only half floats can be interpolated', async () => {
  const phone = await lab.openWithout(['OES_texture_float_linear']);
  try {
    const picture = await shown({ ...asChange(CLOSE), sheen: false, size: SIZE }, phone);
    const { worst, compared } = compare(picture, CLOSE, 0, 0, picture.width);
    expect(compared).toBeGreaterThan(750);
    expect(worst).toBeLessThanOrEqual(1);
    expect(phone.problems.filter((text) => !text.startsWith('THREE.Clock:'))).toEqual([]);
  } finally {
    await phone.close();
  }
});

it('shows each look exactly in its half of a split picture', async () => {
  const picture = await shown({ ...asChange(CLOSE), besideTint: 0.8, sheen: false, size: SIZE });
  const left = compare(picture, CLOSE, 0, 0, 320);
  const right = compare(picture, CLOSE, 0.8, 320, 320);
  const swapped = compare(picture, CLOSE, 0, 320, 320);
  expect(Math.min(left.compared, right.compared)).toBeGreaterThan(350);
  expect(left.worst).toBeLessThanOrEqual(1);
  expect(right.worst).toBeLessThanOrEqual(1);
  // The comparison can tell the two looks apart.
  expect(swapped.worst).toBeGreaterThan(20);
});

it('gives the same picture with sheen switched off as with no gloss at all', async () => {
  const base = { ...asChange(ACROSS), besideTint: null, size: SIZE };
  const matte = await shown({ ...base, sheen: false, gloss: [] });
  const polished = await shown({ ...base, sheen: true, gloss: [80, 12, 0, 90, 30, 85, 85] });
  const off = await shown({ ...base, sheen: false, gloss: [80, 12, 0, 90, 30, 85, 85] });
  expect(Buffer.compare(Buffer.from(matte.bytes), Buffer.from(off.bytes))).toBe(0);
  expect(Buffer.compare(Buffer.from(matte.bytes), Buffer.from(polished.bytes))).not.toBe(0);
});

it('leaves no pixel of the background in sight', async () => {
  // Faces whose corners lie on their neighbours' edges: a pinhole would show the cleared colour, pure black.
  for (const eye of [
    [0.4, 0.3, 1.6],
    [3.3, 0.4, 2.1],
    [0.35, 2.6, 0.6],
  ] as Vec3[]) {
    const picture = await shown({
      eye,
      target: [1.9, 1.6, 1.2],
      fov_deg: 75,
      besideTint: null,
      sheen: false,
      size: SIZE,
    });
    let black = 0;
    for (let i = 0; i < picture.bytes.length; i += 4) {
      if (picture.bytes[i]! + picture.bytes[i + 1]! + picture.bytes[i + 2]! < 24) black++;
    }
    expect(black).toBe(0);
  }
});

it('outlines a surface in black and white just outside of it', async () => {
  const base = { ...asChange(CLOSE), besideTint: null, sheen: false, size: SIZE };
  const plain = await shown({ ...base, outlined: [] });
  const outlined = await shown({ ...base, outlined: [3] });
  const counter = (x: number, y: number) => {
    const direction = rayThrough(CLOSE, 1.6, (2 * x + 1) / 640 - 1, 1 - (2 * y + 1) / 400);
    const hit = pickRect(room.light.fine, CLOSE.eye, direction);
    return hit !== null && room.light.fine[hit.rect]!.surface === 3;
  };
  let [changed, black] = [0, 0];
  for (let y = 0; y < 400; y++) {
    for (let x = 0; x < 640; x++) {
      const i = 4 * (y * 640 + x);
      if (plain.bytes.subarray(i, i + 3).every((byte, k) => byte === outlined.bytes[i + k])) continue;
      changed++;
      const bytes = [...outlined.bytes.subarray(i, i + 3)];
      expect(bytes[0] === 0 || bytes[0] === 255).toBe(true);
      expect(bytes).toEqual([bytes[0], bytes[0], bytes[0]]);
      if (bytes[0] === 0) black++;
      expect(counter(x, y)).toBe(false);
    }
  }
  // The counter's edges cross the picture several times, in a line four pixels wide with dashes in it.
  expect(changed).toBeGreaterThan(3 * 640);
  expect(black / changed).toBeGreaterThan(0.1);
  expect(black / changed).toBeLessThan(0.5);
});

it('picks the face under a click and nothing in the window', async () => {
  await shown({ ...asChange(CLOSE), besideTint: null, size: SIZE });
  await lab.page.mouse.click(320, 200);
  await shown({ eye: [2.5, 1.3, 1.5], target: [0, 1.3, 1.5], fov_deg: 40, size: SIZE });
  await lab.page.mouse.click(320, 200);
  const picks = await lab.page.evaluate(() => window.lab.picks);
  expect(picks).toHaveLength(2);
  expect(picks[0]!.onProp).toBeNull();
  expect(room.surfaces[picks[0]!.surface]).toBe('counter');
  expect(picks[0]!.point[2]).toBeCloseTo(0.9, 9);
  expect(picks[1]).toBeNull();
});

it('picks a prop and where on its mesh', async () => {
  await shown({ ...asChange(EDGE), besideTint: null, size: SIZE });
  const before = await lab.page.evaluate(() => window.lab.picks.length);
  await lab.page.mouse.click(320, 230);
  const picks = await lab.page.evaluate(() => window.lab.picks);
  expect(picks).toHaveLength(before + 1);
  const { rect, surface, onProp, point } = picks.at(-1)!;
  expect([rect, surface, onProp!.prop]).toEqual([-1, 3, 1]);
  // The bevel is the plane z = y between 0.82 and 0.9.
  expect(point[2]).toBeCloseTo(point[1], 6);
  const { positions } = room.light.props[1]!;
  const mixed = [0, 1, 2].map((k) =>
    onProp!.vertices.reduce((sum, vertex, i) => sum + onProp!.weights[i]! * positions[3 * vertex + k]!, 0),
  );
  mixed.forEach((x, k) => {
    expect(x).toBeCloseTo(point[k]!, 6);
  });
});

it('comes back the same after the context was lost', async () => {
  const base = { ...asChange(ACROSS), sheen: true, gloss: [80, 12, 0, 90, 30, 85, 85], besideTint: null, size: SIZE };
  const before = await shown(base);
  const events = await lab.page.evaluate(async () => {
    const context = document.querySelector('canvas')!.getContext('webgl2')!;
    const handle = context.getExtension('WEBGL_lose_context')!;
    const settled = (name: string) =>
      new Promise<void>((resolve) => {
        const wait = () => (window.lab.events.includes(name) ? resolve() : setTimeout(wait, 20));
        wait();
      });
    handle.loseContext();
    await settled('lost');
    handle.restoreContext();
    await settled('restored');
    return window.lab.events;
  });
  expect(events).toEqual(['lost', 'restored']);
  const after = await shown(base);
  let worst = 0;
  for (let i = 0; i < before.bytes.length; i++) worst = Math.max(worst, Math.abs(before.bytes[i]! - after.bytes[i]!));
  expect(worst).toBe(0);
});

it('holds no more on the graphics card after many changes than before', async () => {
  const base = { ...asChange(ACROSS), sheen: true, gloss: [80, 12, 0, 90, 30, 85, 85], size: SIZE };
  const counted = async (): Promise<Record<string, number>> => lab.page.evaluate(() => window.lab.held());
  await shown({ ...base, besideTint: 0.5, outlined: [3] });
  await shown({ ...base, tint: 0, besideTint: null, outlined: [] });
  const before = await counted();
  for (let i = 0; i < 2; i++) {
    await shown({ ...base, tint: i / 2, besideTint: 0.5, outlined: [3, i] });
    await shown({ ...base, tint: 0, besideTint: null, outlined: [] });
  }
  expect(await counted()).toEqual(before);
  expect(before['textures']).toBeGreaterThan(0);
});

it('draws nothing while nothing changes', async () => {
  await shown({ ...asChange(ACROSS), size: SIZE });
  const drawn = await lab.page.evaluate(async () => {
    const before = window.lab.frames();
    await new Promise((resolve) => setTimeout(resolve, 1000));
    return window.lab.frames() - before;
  });
  expect(drawn).toBe(0);
});

it('reports no problem of its own to the console', () => {
  // Notices of the renderer library: its clock, the loss staged above, and freeing textures of the context that was lost.
  const foreign = /^THREE\.Clock:|Context Lost|delete\w*: object does not belong to this context/;
  expect(lab.problems.filter((text) => !foreign.test(text))).toEqual([]);
});

function asChange(pose: Pose): Pick<LabChange, 'eye' | 'target' | 'fov_deg'> {
  return { eye: pose.eye, target: pose.target, fov_deg: pose.fov_deg };
}
