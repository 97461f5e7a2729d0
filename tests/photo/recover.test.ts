import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import { readSample } from '../../src/engine/photo/read-sample';
import { lightById } from '../../src/engine/spectrum/lights';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { CAMERAS } from './camera';
import { codesOf, PLACES, patch, photoOf, readingOf, SIZE } from './pictures';
import { box, cardOf, linear } from './scene';

const light = (id: string) => ({ spd: lightById(id)! });
const errorOf = (rho: ReflectanceSpd, changes: Parameters<typeof readingOf>[0] = {}) => {
  const read = readingOf({ noise: 0.01, ...changes, sample: { ...changes.sample, materials: [rho] } });
  return { ...read, error: differenceCiede2000(read.colors[0]!.lab, labD65FromReflectance(rho)) };
};

// Spectra: Ohta's chart (see color-checker.data.ts); lights: CIE 15.
const NEUTRALS = ['white 9.5 (.05 D)', 'neutral 3.5 (1.05 D)'];

it.each(['D65', 'D50', 'A', 'LED-B1', 'LED-B3', 'FL2', 'FL11'])(
  'finds neutrals under %s to 1 dE00 with a card, whatever the camera does',
  (id) => {
    for (const camera of [CAMERAS[0]!, CAMERAS[3]!]) {
      for (const name of NEUTRALS) {
        // A camera that stays at daylight would burn the red of a bulb out at the usual exposure.
        const { error, uncertaintyDe00, provenance } = errorOf(patch(name), { light: id, camera, exposure: 0.4 });
        expect(error).toBeLessThan(1);
        expect(uncertaintyDe00).toBeGreaterThan(error);
        expect(provenance).toBe(uncertaintyDe00 < 5 ? 'photo-with-card' : 'photo');
      }
    }
  },
);

it('finds colors by daylight to 2 dE00, and says more where lamps lit them', () => {
  for (const name of ['dark skin', 'light skin', 'blue sky', 'foliage', 'orange yellow']) {
    for (const id of ['D50', 'D65']) expect(errorOf(patch(name), { light: id }).error).toBeLessThan(2);
    const { error, uncertaintyDe00 } = errorOf(patch(name), { light: 'LED-B3', places: { light: 'lamps' } });
    expect(uncertaintyDe00).toBeGreaterThan(3);
    // Twice the root mean square holds nearly all.
    expect(error).toBeLessThan(2 * uncertaintyDe00);
  }
});

it('errs far more without a card, and counts as a photo', () => {
  for (const id of ['D50', 'A', 'LED-B3']) {
    const rho = patch('neutral 6.5 (.44 D)');
    const bare = errorOf(rho, { light: id, places: { cards: [], light: 'unknown' } });
    expect(bare.error).toBeGreaterThan(3 * errorOf(rho, { light: id }).error);
    expect(bare.provenance).toBe('photo');
    expect(bare.uncertaintyDe00).toBeGreaterThanOrEqual(5);
  }
});

it('takes any card whose lightness it is told', () => {
  for (const cardY of [0.09, 0.18, 0.5, 0.9]) expect(errorOf(patch('light skin'), { cardY }).error).toBeLessThan(2);
});

it('carries a gradient of light on from one card, and between two', () => {
  const rho = patch('neutral 6.5 (.44 D)');
  const gradient = (fall: number) => [{ ...light('D50'), level: (x: number) => 1 - (fall * x) / SIZE.width }];
  // The sample lies in 10 to 20 % less light than the card: 3 to 7 L* if nobody minded.
  for (const fall of [0.2, 0.4]) expect(errorOf(rho, { lights: gradient(fall) }).error).toBeLessThan(1);
  const two = {
    card: { left: 0, top: 0, ...SIZE },
    sample: { left: 80, width: 80 },
    places: { cards: [box(4, 10, 70, 100), box(166, 10, 70, 100)], sample: box(84, 14, 72, 92) },
  };
  expect(errorOf(rho, { lights: gradient(0.6), ...two }).error).toBeLessThan(1);
  const mixed = errorOf(rho, {
    lights: [light('D65'), { ...light('A'), level: (x) => (0.3 * x) / SIZE.width }],
    ...two,
  });
  expect(mixed.error).toBeLessThan(1);
  expect(codesOf(mixed)).toContain('mixed-light');
});

it('shows each color as the photo has it, too', () => {
  const rho = patch('neutral 6.5 (.44 D)');
  const withCard = errorOf(rho, { light: 'A' });
  const without = errorOf(rho, { light: 'A', places: { cards: [] } });
  expect(differenceCiede2000(withCard.colors[0]!.rawLab, without.colors[0]!.lab)).toBeLessThan(0.1);
});

it('does not mind which way the picture is turned', () => {
  const { width, height } = SIZE;
  const rgba = photoOf({ noise: 0.02 });
  const turned = new Uint8Array(rgba.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      // A quarter turn clockwise: row y becomes column height - 1 - y.
      turned.set(rgba.subarray(4 * (y * width + x), 4 * (y * width + x) + 4), 4 * (x * height + height - 1 - y));
    }
  }
  const quarter = (quad: (typeof PLACES)['sample']) =>
    quad.map(({ x, y }) => ({ x: height - y, y: x })) as unknown as (typeof PLACES)['sample'];
  const places = { ...PLACES, sample: quarter(PLACES.sample), cards: PLACES.cards.map(quarter) };
  const [one, other] = [
    readSample(linear(rgba, width, height), PLACES),
    readSample(linear(turned, height, width), places),
  ];
  if (!one.ok || !other.ok) throw new Error('unread');
  expect(other.value.colors.length).toBe(one.value.colors.length);
  expect(differenceCiede2000(other.value.colors[0]!.lab, one.value.colors[0]!.lab)).toBeLessThan(1e-3);
  expect(other.value.uncertaintyDe00).toBeCloseTo(one.value.uncertaintyDe00, 6);
});

it('does not mind in which order the pixels of card and sample lie, where they have no pattern', () => {
  const rgba = photoOf({ noise: 0.02 });
  const swapped = rgba.slice();
  const row = (y: number) => rgba.subarray(4 * y * SIZE.width, 4 * (y + 1) * SIZE.width);
  // Rows 24 to 95 lie wholly in both boxes; each takes the place of the one across.
  for (let y = 24; y < 96; y++) swapped.set(row(119 - y), 4 * y * SIZE.width);
  const [one, other] = [rgba, swapped].map((codes) => readSample(linear(codes, SIZE.width, SIZE.height), PLACES));
  if (!one?.ok || !other?.ok) throw new Error('unread');
  expect(differenceCiede2000(other.value.colors[0]!.lab, one.value.colors[0]!.lab)).toBeLessThan(0.05);
});

it('says what is wrong where there is nothing to read', () => {
  const picture = linear(photoOf({}), SIZE.width, SIZE.height);
  const nowhere = box(1000, 1000, 50, 50);
  const tiny = box(20, 30, 3, 3);
  const problemOf = (places: Partial<typeof PLACES>) => {
    const read = readSample(picture, { ...PLACES, ...places });
    return read.ok ? null : read.problem.code;
  };
  expect(problemOf({ sample: nowhere })).toBe('sample-too-small');
  expect(problemOf({ sample: tiny })).toBe('sample-too-small');
  expect(problemOf({ cards: [nowhere] })).toBe('card-too-small');
  expect(problemOf({})).toBeNull();
  const black = linear(new Uint8Array(4 * SIZE.width * SIZE.height), SIZE.width, SIZE.height);
  const read = readSample(black, PLACES);
  expect(read.ok ? null : read.problem.code).toBe('card-black');
});

it('a card of 18 % read as one is worth the same as one of 90 % read as that', () => {
  const rho = patch('neutral 5 (.70 D)');
  const [gray, white] = [errorOf(rho, { cardY: 0.18 }), errorOf(rho, { cardY: 0.9 })];
  expect(differenceCiede2000(gray.colors[0]!.lab, white.colors[0]!.lab)).toBeLessThan(0.5);
  expect(cardOf(0.18)[0]).toBe(0.18);
});
