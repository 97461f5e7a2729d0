import { bradfordMatrix } from '../color/adapt';
import { cctDuv } from '../color/correlated-temperature';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../color/lab';
import { apply } from '../color/matrix3';
import type { Lab } from '../color/types';
import { D65_2 } from '../color/whites';
import type { Provenance } from '../finish/types';
import { failure, type Result, success } from '../result';
import { calmBlocks } from './calm-blocks';
import { CARD_BLOCKS, type CardReading, cardLight } from './card-light';
import { correctedXyz, labsOf } from './correct';
import { COLORED_BY_LAMPS, flagOf, type PhotoFlag } from './flags';
import { findGlare } from './glare';
import { lightDrift } from './light-drift';
import { patchIn } from './patch';
import { photoTrust } from './photo-uncertainty';
import { overlapOf } from './quad-rows';
import { quantileOf } from './robust';
import { sampleColors } from './sample-colors';
import { sampleSlope } from './sample-slope';
import type { CardLight, LinearPicture, Patch, PictureQuad, SampleColor } from './types';

/** Where in a picture what lies. */
export interface PhotoPlaces {
  readonly sample: PictureQuad;
  /** None; one; or two places of one card or of two alike. */
  readonly cards: readonly PictureQuad[];
  /** Luminance factor of the card, 0-1. */
  readonly cardY: number;
  /** What lights both, as far as somebody knows. */
  readonly light: PhotoLight;
}

export type PhotoLight = 'daylight' | 'lamps' | 'unknown';

/** A color of a sample, and the same as the picture has it. */
export interface PhotoColor extends SampleColor {
  readonly rawLab: Lab<'D65-2'>;
}

/** What a picture says of a sample. */
export interface PhotoReading {
  readonly colors: readonly PhotoColor[];
  readonly flags: readonly PhotoFlag[];
  readonly provenance: Extract<Provenance, 'photo-with-card' | 'photo'>;
  readonly uncertaintyDe00: number;
}

export type PhotoProblemCode = 'sample-too-small' | 'card-too-small' | 'card-black' | 'boxes-overlap';

/** Fewer pixels than this are no area. Our judgment. */
const LEAST_PIXELS = 64;
/** More of a card than this in the sample's box would count as a color of the sample. Our judgment. */
const MOST_OVERLAP = 0.02;
/** More blocks say nothing more of a pattern. */
const MOST_BLOCKS = 160_000;
/** From this CIELAB difference of neighbors on, blocks are made larger, to quiet noise. Our judgment. */
const RESTLESS = 5;
/** Cards of less than this luminance factor count as gray ones. */
const WHITE_CARD = 0.5;

/** Reads the colors of a sample from a picture in linear light. The same picture and places give the same numbers. */
export function readSample(picture: LinearPicture, places: PhotoPlaces): Result<PhotoReading> {
  const sample = patchIn(picture, places.sample, MOST_BLOCKS);
  if (sample.pixels < LEAST_PIXELS || sample.count < 4) return failure(tooSmall('sample-too-small', 'sample'));
  if (places.cards.some((card) => overlapOf(card, places.sample) > MOST_OVERLAP)) return failure(BOXES_OVERLAP);
  const cards = places.cards.map((card) => patchIn(picture, card, CARD_BLOCKS));
  if (cards.some((card) => card.pixels < LEAST_PIXELS || card.count < 4))
    return failure(tooSmall('card-too-small', 'card'));
  const card = cards.length ? cardLight(cards, places.cardY, middleOf(places.sample)) : null;
  if (cards.length && !card) return failure(CARD_BLACK);
  const light = card?.light ?? null;

  const ready = quietPatch(picture, places.sample, sample, light);
  const glare = findGlare(ready.patch, ready.xyz, ready.lab, card !== null);
  // A sample that is all glare has no color of its own left; then all of it is read and the flag says so.
  const isAllGlare = glare.share > 0.9;
  const use = isAllGlare ? ready.patch.inside : ready.patch.inside.map((is, at) => (glare.mask[at] ? 0 : is));
  const found = sampleColors(ready.patch, use, ready.xyz, ready.lab);
  const strongest = Math.max(...found.map(({ lab }) => Math.hypot(lab.a, lab.b)));
  const slope = sampleSlope(ready.patch, use, ready.lab, found[0]!);

  const flags = [
    ...(card ? cardFlags(picture, places, cards, card) : []),
    flagOf('sample-clipped', sample.high + sample.low),
    glare.lighterThanWhite > 0.2 ? flagOf('lighter-than-white', glare.lighterThanWhite) : flagOf('glare', glare.share),
    card && light?.slopes.some(([x, y]) => x !== 0 || y !== 0) ? null : flagOf('uneven-light', slope),
    card && places.light !== 'daylight' ? flagOf('strong-color', strongest) : null,
    card ? null : flagOf('no-white', lightestOf(picture)),
    !card && places.light === 'lamps' ? flagOf('lamps-without-card', 1) : null,
  ].filter((flag) => flag !== null);
  const raw = rawColorsOf(light, middleOf(places.sample));
  return success({
    colors: found.map((one) => ({ ...one, rawLab: raw(one.lab) })),
    flags,
    ...photoTrust(card !== null, flags),
  });
}

/** Luminance that the lightest half percent of a picture reaches. */
function lightestOf({ xyz }: LinearPicture): number {
  const every = 3 * Math.ceil(xyz.length / (3 * ENOUGH));
  const some = new Float64Array(Math.ceil(xyz.length / every));
  for (let i = 0; i < some.length; i++) some[i] = xyz[i * every + 1]!;
  return quantileOf(some.sort(), 0.995);
}

/** As many cells tell how light a picture is. */
const ENOUGH = 50_000;

interface Ready {
  readonly patch: Patch;
  readonly xyz: Float64Array;
  readonly lab: Float64Array;
}

/** The sample corrected, in blocks large enough for its noise not to hide its colors. */
function quietPatch(picture: LinearPicture, quad: PictureQuad, first: Patch, light: CardLight | null): Ready {
  let patch = first;
  for (let round = 0; ; round++) {
    const xyz = correctedXyz(patch, light);
    const lab = labsOf(xyz);
    const { restless } = calmBlocks(patch, lab);
    if (round === 2 || restless < RESTLESS || patch.count < 4000) return { patch, xyz, lab };
    patch = patchIn(picture, quad, Math.ceil((patch.width * patch.height) / 4));
  }
}

function cardFlags(picture: LinearPicture, places: PhotoPlaces, cards: readonly Patch[], card: CardReading) {
  const { white } = card.light;
  const drift = lightDrift(card, cards);
  const duv = cctDuv(white)?.duv ?? 0.05;
  const whiteLab = labD65FromXyzD65({ x: (100 * white.x) / white.y, y: 100, z: (100 * white.z) / white.y });
  const tint = Math.hypot(whiteLab.a, whiteLab.b);
  const noise = Math.max(
    ...places.cards.map((quad) => {
      const fine = patchIn(picture, quad, 20_000);
      return calmBlocks(fine, labsOf(correctedXyz(fine, card.light))).restless;
    }),
  );
  return [
    flagOf('card-clipped', Math.max(...cards.map(({ high, low }) => high + low))),
    flagOf('card-small', Math.min(...cards.map(({ pixels }) => pixels))),
    flagOf('card-odd', card.oddShare),
    flagOf('card-tinted', Math.abs(duv)),
    flagOf('card-colored', places.light === 'daylight' || tint > COLORED_BY_LAMPS ? tint : 0),
    places.cardY < WHITE_CARD ? flagOf('card-too-light', white.y) : flagOf('card-too-dark', white.y),
    flagOf('dark', white.y),
    flagOf('noisy', noise),
    cards.length > 1 ? spanned(flagOf('mixed-light', drift.hue)) : flagOf('mixed-light', drift.hue),
    flagOf('uneven-light', cards.length > 1 ? 0 : drift.level),
  ];
}

/** Between two places the drift is known and taken off; this part of it is left to what is not even. Our judgment. */
const LEFT_BETWEEN = 0.4;

const spanned = (flag: PhotoFlag | null) => flag && { ...flag, addsDe00: LEFT_BETWEEN * flag.addsDe00 };

/** Takes a corrected color back to how the picture has it at a place. */
function rawColorsOf(light: CardLight | null, place: { readonly x: number; readonly y: number }) {
  if (!light) return (lab: Lab<'D65-2'>) => lab;
  const back = bradfordMatrix(D65_2, light.white);
  return (lab: Lab<'D65-2'>): Lab<'D65-2'> => {
    const { x, y, z } = xyzD65FromLabD65(lab);
    const raw = apply(back, [x, y, z]);
    const scale = light.slopes.map(([alongX, alongY]) =>
      Math.exp(alongX * (place.x - light.center.x) + alongY * (place.y - light.center.y)),
    );
    const onPicture = raw.map((value, c) => value * light.white.y * scale[c]!) as [number, number, number];
    return labD65FromXyzD65({ x: onPicture[0], y: onPicture[1], z: onPicture[2] });
  };
}

const middleOf = (quad: PictureQuad) => ({
  x: quad.reduce((sum, { x }) => sum + x / 4, 0),
  y: quad.reduce((sum, { y }) => sum + y / 4, 0),
});

const tooSmall = (code: PhotoProblemCode, what: 'sample' | 'card') => ({
  code,
  text: `The box of the ${what} holds too few pixels.`,
  remedy: `Draw it larger over the ${what}, or take the picture from nearer.`,
});

const CARD_BLACK = {
  code: 'card-black',
  text: 'Where the card should be, the picture is black.',
  remedy: 'Move the box onto the card, or take the picture in more light.',
};

const BOXES_OVERLAP = {
  code: 'boxes-overlap',
  text: 'The box of the sample reaches over the card, which would count as a color of the sample.',
  remedy: 'Draw the boxes apart, the one of the sample beside the card and clear of its shadow.',
};
