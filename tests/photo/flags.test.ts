import { expect, it } from 'vitest';
import type { PhotoFlagCode } from '../../src/engine/photo/flags';
import { photoTrust } from '../../src/engine/photo/photo-uncertainty';
import { lightById } from '../../src/engine/spectrum/lights';
import { codesOf, type PictureChanges, patch, readingOf, SIZE } from './pictures';
import { box, cardOf } from './scene';

const light = (id: string) => ({ spd: lightById(id)! });
const spot = (size: number, strength: number) => (x: number, y: number) =>
  strength * Math.exp(-((x - 60) ** 2 + (y - 50) ** 2) / (2 * size * size));
const fall = (part: number) => [{ ...light('D50'), level: (x: number) => 1 - (part * x) / SIZE.width }];
const daylightAndLamp = (part: number) => [
  light('D65'),
  { ...light('A'), level: (x: number) => (part * x) / SIZE.width },
];

/** A picture on either side of each flag's limit: the first just does not raise it, the second does. */
const SIDES: readonly (readonly [PhotoFlagCode, fine: PictureChanges, raised: PictureChanges])[] = [
  ['card-clipped', { cardY: 0.9, exposure: 1 }, { cardY: 0.9, exposure: 1.09 }],
  [
    'sample-clipped',
    { sample: { materials: [patch('white 9.5 (.05 D)')] }, exposure: 1 },
    { sample: { materials: [patch('white 9.5 (.05 D)')] }, exposure: 1.2 },
  ],
  ['dark', { exposure: 0.17 }, { exposure: 0.13 }],
  ['noisy', { noise: 0.02 }, { noise: 0.06 }],
  ['mixed-light', { lights: daylightAndLamp(0.05) }, { lights: daylightAndLamp(0.2) }],
  ['uneven-light', { lights: fall(0.2) }, { lights: fall(0.6) }],
  [
    'glare',
    { sample: { materials: [patch('foliage')], mirror: spot(10, 0.02) } },
    { sample: { materials: [patch('foliage')], mirror: spot(10, 0.2) } },
  ],
  ['card-odd', { places: { cards: [box(14, 24, 72, 72)] } }, { places: { cards: [box(14, 24, 88, 72)] } }],
  ['card-small', { places: { cards: [box(30, 40, 31, 31)] } }, { places: { cards: [box(30, 40, 28, 28)] } }],
  ['card-tinted', {}, { card: { materials: [patch('foliage')] } }],
  ['card-colored', { light: 'D50' }, { cardY: 0.55, card: { materials: [patch('light skin')] } }],
  ['card-too-light', { exposure: 1 }, { card: { materials: [cardOf(0.9)] }, exposure: 0.9 }],
  ['card-too-dark', { cardY: 0.9 }, { cardY: 0.9, card: { materials: [cardOf(0.18)] } }],
  [
    'lighter-than-white',
    { sample: { materials: [patch('white 9.5 (.05 D)')] } },
    { cardY: 0.9, card: { materials: [cardOf(0.5)] }, sample: { materials: [patch('white 9.5 (.05 D)')] } },
  ],
  [
    'no-white',
    { cardY: 0.9, exposure: 0.8, places: { cards: [], light: 'daylight' } },
    { exposure: 0.8, places: { cards: [], light: 'daylight' } },
  ],
  [
    'strong-color',
    { places: { light: 'unknown' } },
    { sample: { materials: [patch('light skin')] }, places: { light: 'unknown' } },
  ],
  ['lamps-without-card', { places: { cards: [], light: 'unknown' } }, { places: { cards: [], light: 'lamps' } }],
];

it.each(SIDES)('raises %s on one side of its limit only, and trusts the color less', (code, fine, raised) => {
  const [before, after] = [readingOf({ noise: 0.005, ...fine }), readingOf({ noise: 0.005, ...raised })];
  expect(codesOf(before)).not.toContain(code);
  expect(codesOf(after)).toContain(code);
  expect(after.uncertaintyDe00).toBeGreaterThan(before.uncertaintyDe00);
  const flag = after.flags.find((one) => one.code === code)!;
  expect(flag.addsDe00).toBeGreaterThan(0);
  expect(flag.value).not.toBe(flag.limit);
});

it('has a picture for every flag there is', () => {
  const raised = new Set(SIDES.map(([code]) => code));
  const all: Readonly<Record<PhotoFlagCode, true>> = {
    'card-clipped': true,
    'card-colored': true,
    'card-odd': true,
    'card-small': true,
    'card-tinted': true,
    'card-too-dark': true,
    'card-too-light': true,
    dark: true,
    glare: true,
    'lamps-without-card': true,
    'lighter-than-white': true,
    'mixed-light': true,
    'no-white': true,
    noisy: true,
    'sample-clipped': true,
    'strong-color': true,
    'uneven-light': true,
  };
  expect([...raised].sort()).toEqual(Object.keys(all).sort());
});

it('a good picture of a good card raises nothing', () => {
  for (const id of ['D50', 'D65']) {
    for (const name of ['white 9.5 (.05 D)', 'neutral 5 (.70 D)', 'light skin', 'black 2 (1.5 D)']) {
      const read = readingOf({ light: id, noise: 0.01, sample: { materials: [patch(name)] } });
      expect(codesOf(read)).toEqual([]);
      expect(read.uncertaintyDe00).toBe(2.5);
    }
  }
});

it('trusts no photo more than its kind, and less the more is wrong with it', () => {
  const flag = (addsDe00: number) => ({ code: 'dark' as const, value: 0, limit: 1, addsDe00 });
  expect(photoTrust(true, [])).toEqual({ provenance: 'photo-with-card', uncertaintyDe00: 2.5 });
  expect(photoTrust(false, [])).toEqual({ provenance: 'photo', uncertaintyDe00: 5 });
  let before = 2.5;
  for (let n = 1; n < 8; n++) {
    const { provenance, uncertaintyDe00 } = photoTrust(
      true,
      Array.from({ length: n }, () => flag(2)),
    );
    expect(uncertaintyDe00).toBeGreaterThan(before);
    // A card that says no more than none does not count as one.
    expect(provenance).toBe(uncertaintyDe00 < 5 ? 'photo-with-card' : 'photo');
    expect(photoTrust(false, [flag(2)]).uncertaintyDe00).toBeGreaterThan(5);
    before = uncertaintyDe00;
  }
  // And never so little that the finish is refused (`checkFinish`).
  expect(photoTrust(true, [flag(40)]).uncertaintyDe00).toBe(30);
});
