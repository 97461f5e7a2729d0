import { differenceCiede2000 } from 'culori';
import { expect, it } from 'vitest';
import { bakePattern } from '../../../src/engine/pattern/bake';
import { jointShare } from '../../../src/engine/pattern/joint-share';
import type { FinishPattern, Layout, PatternSpec, PatternTexture } from '../../../src/engine/pattern/types';
import type { Pose } from '../../../src/view/camera-rig';
import { rayThrough } from '../../../src/view/projection';
import { type ExpectedPixel, expectedPixel } from '../expected-pixel';
import type { LabChange } from '../page/main';
import { type ShownPicture, shown as shownBy } from '../shown';
import { type LaidPattern, smallLight, smallLook, smallRoom } from '../small-room';
import { lab } from './lab';

// The picture reads patterns on the graphics card, readings read them by the engine's `samplePattern`: both must show the same
// at every place, for every kind of pattern and every layout. Light and display encoding are those of expected-pixel.ts.

const room = smallRoom();
const light = smallLight(room);
const SIZE = [480, 300] as const;
/** Over the counter, so near that a pixel is smaller than a texel. */
const NEAR: Pose = { eye: [1.6, 1.02, 1.3], target: [1.6, 1.2, 0.9], fov_deg: 11 };
const BAKED_AT = '/baked-pattern';

/** What the page shows of a pattern baked here: baking takes longer than sending its bytes. */
async function shown(change: LabChange & { laid: LaidPattern & { baked: PatternTexture } }): Promise<ShownPicture> {
  const { data, ...baked } = change.laid.baked;
  await lab.page.route(`**${BAKED_AT}`, (route) => route.fulfill({ body: Buffer.from(data) }));
  const laid = { ...change.laid, baked: { ...baked, data: new Uint8Array() } };
  const picture = await shownBy(lab, { ...change, laid, bakedAt: BAKED_AT });
  await lab.page.unroute(`**${BAKED_AT}`);
  return picture;
}

const withBaked = <Laid extends LaidPattern>(laid: Laid) => ({ ...laid, baked: bakePattern(laid.spec) });

const asChange = <Laid extends LaidPattern>(
  { eye, target, fov_deg }: Pose,
  laid: Laid,
  size: readonly [number, number],
) => ({
  eye,
  target,
  fov_deg,
  laid,
  size,
  sheen: false,
  besideTint: null,
});

function specOf(pattern: FinishPattern, layout: Layout, more: Partial<PatternSpec> = {}): PatternSpec {
  const piece_mm = more.piece_mm ?? ([120, 60] as const);
  const joint = layout === 'plain' || layout === 'planks' ? 0 : jointShare(piece_mm, 3, layout);
  const own = [0.7, 0.3].map((share) => share * (1 - joint));
  const shares = joint ? [...own, joint] : own;
  return { pattern, layout, piece_mm, ...(joint ? { joint_mm: 3 } : {}), variation: 'V3', shares, seed: 5, ...more };
}

const SLAB = { slab: { size_mm: [1400, 700], match: 'bookmatch' } } as const;
const BOARD: FinishPattern = { kind: 'grain', board_mm: [60, 400] };

const CASES: readonly (readonly [string, LaidPattern])[] = [
  ['a veined sheet', { spec: specOf({ kind: 'veined', spacing_mm: 120, direction_deg: 30 }, 'plain') }],
  ['linear stone', { spec: specOf({ kind: 'linear', size_mm: 8, direction_deg: 0 }, 'plain'), shift: [0.31, -0.17] }],
  ['chips', { spec: specOf({ kind: 'fleck', size_mm: 12 }, 'plain') }],
  ['crystals, turned', { spec: specOf({ kind: 'fleck', size_mm: 9 }, 'plain', { shares: [0.5, 0.5], turn_deg: 90 }) }],
  ['veneer, turned', { spec: specOf({ kind: 'grain' }, 'plain', { turn_deg: 90 }) }],
  ['veneer with pores', { spec: specOf({ kind: 'grain', figure: 'pores' }, 'plain') }],
  ['veneer with rays', { spec: specOf({ kind: 'grain', figure: 'ray-fleck' }, 'plain') }],
  ['slate', { spec: specOf({ kind: 'cleft', size_mm: 80 }, 'stack', { piece_mm: [200, 200] }) }],
  ['concrete', { spec: specOf({ kind: 'cloud', size_mm: 90, gathers: 'anywhere' }, 'plain') }],
  ['brushed metal', { spec: specOf({ kind: 'brushed' }, 'plain', { shares: [1] }) }],
  [
    'a bookmatched slab over its seam',
    { spec: specOf({ kind: 'veined', spacing_mm: 90, direction_deg: 25 }, 'plain', SLAB), shift: [0.66, 0.1] },
  ],
  [
    'a slip-matched slab over its seam',
    {
      spec: specOf({ kind: 'veined', spacing_mm: 90, direction_deg: 25 }, 'plain', {
        slab: { ...SLAB.slab, match: 'slip' },
      }),
      shift: [0.66, 0.1],
    },
  ],
  ['boards', { spec: specOf(BOARD, 'planks'), shift: [-1.3, 0.4] }],
  [
    'boards in herringbone, aslant',
    { spec: specOf(BOARD, 'herringbone', { joint_mm: 0, shares: [0.7, 0.3], turn_deg: 45 }) },
  ],
  ['pooled tiles in a stack', { spec: specOf({ kind: 'cloud', size_mm: 18 }, 'stack'), shift: [-0.9, -2.2] }],
  ['an upright stack', { spec: specOf({ kind: 'cloud', size_mm: 18 }, 'stack-upright', { turn_deg: 90 }) }],
  ['a running bond', { spec: specOf({ kind: 'plain' }, 'running-bond') }],
  ['a third offset', { spec: specOf({ kind: 'plain' }, 'third-offset'), shift: [-1.77, -1.21] }],
  ['tiles in herringbone', { spec: specOf({ kind: 'plain' }, 'herringbone'), shift: [-2.5, -0.6] }],
  ['hexagons', { spec: specOf({ kind: 'plain' }, 'hexagon', { piece_mm: [60, 60] }), shift: [-1.5, -1.4] }],
  ['a fabric print', { spec: specOf({ kind: 'thread', size_mm: 4 }, 'plain') }],
];

/**
 * Bytes by which a pixel may differ: half a byte of display, and up to a step of what a graphics card keeps of an interpolated byte;
 * 1/128 of the gain is half a byte of a middle gray, 1/255 of a weight a quarter of that.
 */
const MOST_OFF = 1.25;

it.each(CASES)('draws %s as the engine reads it', async (_, given) => {
  const laid = withBaked(given);
  const picture = await shown(asChange(NEAR, laid, SIZE));
  const look = smallLook(room, light, 0, [], 1, laid);
  const aspect = picture.width / picture.height;
  let compared = 0;
  let off = 0;
  let worst = 0;
  for (let y = 3; y < picture.height; y += 24) {
    for (let x = 4; x < picture.width; x += 13) {
      const at = (dx: number, dy: number): ExpectedPixel | null => {
        const place = [(2 * (x + dx)) / picture.width - 1, 1 - (2 * (y + dy)) / picture.height] as const;
        return expectedPixel(room, light, look, NEAR.eye, rayThrough(NEAR, aspect, ...place));
      };
      const expected = at(0.5, 0.5);
      if (!expected?.texel) continue;
      // A graphics card places a sample within a texel to a 256th of it (OpenGL ES asks for no more); where the pattern is so
      // steep that a few hundredths of a pixel change a byte, that is no difference.
      const around = [at(0.44, 0.5), at(0.56, 0.5), at(0.5, 0.44), at(0.5, 0.56)];
      if (around.some((one) => one?.rect !== expected.rect)) continue;
      compared++;
      const wrong = [0, 1, 2].map((k) => {
        const values = [expected, ...around].map((one) => one!.rgb[k]!);
        const byte = picture.bytes[4 * (y * picture.width + x) + k]!;
        return Math.max(0, Math.min(...values) - byte, byte - Math.max(...values));
      });
      worst = Math.max(worst, ...wrong);
      if (Math.max(...wrong) > MOST_OFF) off++;
    }
  }
  expect(compared).toBeGreaterThan(450);
  expect([off, worst <= MOST_OFF]).toEqual([0, true]);
});

/** From the far corner, in a picture of a few pixels: each covers many pieces or a whole figure. */
const FAR: Pose = { eye: [3.4, 2.2, 2.2], target: [0.4, 0.2, 0], fov_deg: 60 };

it.each<readonly [string, PatternSpec]>([
  ['fine chips', specOf({ kind: 'fleck', size_mm: 5 }, 'plain', { variation: 'V0' })],
  ['a running bond', specOf({ kind: 'plain' }, 'running-bond', { variation: 'V0' })],
  ['hexagons', specOf({ kind: 'cloud', size_mm: 18 }, 'hexagon', { piece_mm: [60, 60], variation: 'V0' })],
  ['tiles in herringbone', specOf({ kind: 'plain' }, 'herringbone', { variation: 'V0' })],
])('shows a far floor of %s in its mean color', async (_, spec) => {
  const given = withBaked({ spec });
  const picture = await shown(asChange(FAR, given, [48, 30]));
  const laid = smallLook(room, light, 0, [], 1, given);
  // The same floor of one color: its weights are the shares, its gain 1.
  const mean = {
    width: 1,
    height: 1,
    width_m: 1,
    height_m: 1,
    data: Uint8Array.of(...[1, 2, 3].map((k) => Math.round(255 * (spec.shares[k] ?? 0))), 128),
  };
  const look = { ...laid, patterns: new Map([['waves', mean]]) };
  const aspect = picture.width / picture.height;
  const [sum, expectedSum] = [
    [0, 0, 0],
    [0, 0, 0],
  ];
  let pixels = 0;
  for (let y = 0; y < picture.height; y++) {
    for (let x = 0; x < picture.width; x++) {
      const at = (dx: number, dy: number): ExpectedPixel | null => {
        const place = [(2 * (x + dx)) / picture.width - 1, 1 - (2 * (y + dy)) / picture.height] as const;
        return expectedPixel(room, light, look, FAR.eye, rayThrough(FAR, aspect, ...place));
      };
      const expected = at(0.5, 0.5);
      if (expected?.rect !== 0) continue;
      if ([at(-1, -1), at(2, -1), at(-1, 2), at(2, 2)].some((corner) => corner?.rect !== 0)) continue;
      pixels++;
      for (let k = 0; k < 3; k++) {
        sum[k]! += linear(picture.bytes[4 * (y * picture.width + x) + k]!);
        expectedSum[k]! += linear(expected.rgb[k]!);
      }
    }
  }
  expect(pixels).toBeGreaterThan(60);
  const colorOf = ([r, g, b]: number[]) => ({ mode: 'lrgb', r: r! / pixels, g: g! / pixels, b: b! / pixels }) as const;
  // CIEDE2000 (ISO/CIE 11664-6) from npm culori.
  expect(differenceCiede2000()(colorOf(sum), colorOf(expectedSum))).toBeLessThan(0.3);
});

/** IEC 61966-2-1. */
const linear = (byte: number): number =>
  byte <= 0.04045 * 255 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;
