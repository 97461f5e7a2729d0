import type { PhotoFlag, PhotoFlagCode } from '../../engine/photo/flags';
import { brief, decimal, percent } from './numbers';
import { spoken } from './spoken';

/** How a flag is said: what is wrong, with its number, and what to do about it. */
interface FlagWords {
  readonly text: (flag: PhotoFlag) => string;
  readonly remedy: string;
}

export const FLAG_WORDS: { readonly [C in PhotoFlagCode]: FlagWords } = spoken({
  'card-clipped': {
    text: ({ value }) => `${percent(value)} of the card is burnt out or black.`,
    remedy: 'Take it again darker or lighter, or use a gray card.',
  },
  'card-colored': {
    text: () => 'The card is strongly colored in the photo.',
    remedy:
      'Check that it is a gray or white card, not cream or printed, and leave the camera’s white balance on automatic.',
  },
  'card-too-dark': {
    text: ({ value }) => `For a white card it is dark in the photo: white would be at ${percent(value)} of the range.`,
    remedy: 'Check whether it is the gray card; if not, take it again in more light.',
  },
  'card-too-light': {
    text: ({ value }) => `For a gray card it is light in the photo: white would be at ${percent(value)} of the range.`,
    remedy: 'Check whether it is the white card; if not, take it again darker.',
  },
  'card-odd': {
    text: ({ value }) => `${percent(value)} of the card’s box does not look like the rest of it.`,
    remedy: 'Draw the box inside the card, away from print, fingers and shadows.',
  },
  'card-small': {
    text: ({ value }) => `The card has only ${brief(value)} pixels.`,
    remedy: 'Go nearer, or lay the card right beside the sample.',
  },
  'card-tinted': {
    text: () => 'The card is greener or pinker than any white light makes a neutral card.',
    remedy: 'Check that the box lies on the card and that the card is gray or white, not cream or printed.',
  },
  dark: {
    text: ({ value }) => `The picture is dark: white beside the card would be at ${percent(value)} of its range.`,
    remedy: 'Take it again in more light.',
  },
  glare: {
    text: ({ value }) => `${percent(value)} of the sample mirrors light; that part is left out.`,
    remedy: 'Turn the sample or stand aside until nothing mirrors in it.',
  },
  'lamps-without-card': {
    text: () => 'By lamps, a photo without a card keeps much of the lamps’ color.',
    remedy: 'Take it by daylight with the lamps off, or with a card.',
  },
  'lighter-than-white': {
    text: ({ value }) => `${percent(value)} of the sample comes out lighter than white.`,
    remedy: 'Check whether the card is the gray or the white one, and that no shadow lies on it.',
  },
  'mixed-light': {
    text: ({ value }) =>
      `The light changes color across the card by ${decimal(value)} units: two kinds of light are mixed.`,
    remedy: 'No correction mends that. Turn the lamps off, or close the blinds and use only the lamps.',
  },
  'no-white': {
    text: () => 'Without a card, and with nothing near white in the photo, how light the sample is stays a guess.',
    remedy: 'Lay a gray or white card beside it.',
  },
  noisy: {
    text: ({ value }) => `The picture is grainy: neighbors on the card differ by ${decimal(value)} units.`,
    remedy: 'Take it again in more light, without digital zoom.',
  },
  'sample-clipped': {
    text: ({ value }) => `${percent(value)} of the sample is burnt out, black, or beyond what the picture can hold.`,
    remedy: 'Take it again a little darker or lighter.',
  },
  'strong-color': {
    text: () => 'By lamps a card mends whites and grays, but not all of a color this strong.',
    remedy: 'If it was taken by daylight alone, say so above; else take it by daylight.',
  },
  'uneven-light': {
    text: ({ value }) =>
      `It is ${percent(value)} lighter at one end than at the other: uneven light, or the material itself.`,
    remedy: 'Move away from the window or lamp, or mark the card in a second place on the other side.',
  },
});

/** Words of the form that takes a finish from a photo. */
export const PHOTO = spoken({
  choose: 'Open a photo…',
  take: 'Take a photo',
  another: 'Another photo…',
  drop: 'or drop one here',
  how: [
    'Lay a gray or white card beside the sample, in the same plane and the same light.',
    'No flash. Lamps off by day, or only lamps and the blinds closed.',
    'Fill the picture with the two; keep your shadow and mirrored windows out of it.',
  ],
  stays: 'The photo stays on this device. The project keeps the numbers only: no picture, place, time or camera.',
  reading: 'Reading the photo…',
  broken: 'The picture could not be decoded; it is broken or of a kind this browser cannot read.',
  brokenRemedy: 'Save it anew as JPEG and open that.',
  picture: 'Photo with the boxes of card and sample',
  card: 'Card',
  cardSecond: 'Card, second place',
  sample: 'Sample',
  corner: (box: string, corner: number) => `${box}, corner ${corner}`,
  whole: (box: string) => `${box}, all of the box`,
  place: (x: number, y: number) => `${percent(x)} from the left, ${percent(y)} from the top`,
  movable: 'movable with the arrow keys',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  cardKind: 'Card',
  cardKinds: { gray: 'Gray 18%', white: 'White 90%', own: 'Own L*', none: 'No card' },
  light: 'Light',
  lights: { unknown: 'Not sure', daylight: 'Daylight only', lamps: 'Lamps' },
  ownL: 'L* of the card',
  ownWrong: (text: string) => `“${text}” is no lightness of a card.`,
  ownRemedy: 'Write the L* printed with it, 20 to 99.',
  addCard: 'Second card place',
  removeCard: 'Remove second place',
  withoutCard:
    'Without a card the camera’s own guess at the light is believed: any color may be off by ten dE00. Only what is sure is said.',
  trust: (words: string, de00: string) => `Counts as ${words}: the true color may be off by about ${de00}.`,
  added: (usual: string) => `Usual is ${usual}; what is flagged below adds to it.`,
  raw: 'as the photo has it',
  corrected: 'corrected',
  base: 'Base',
  other: (n: number) => `Color ${n}`,
  share: (share: number) => `${percent(share)} of the area`,
  swatches: 'Each color as the photo has it, and beside that corrected.',
  about: (name: string) => `about ${name}`,
  leanMay: (words: string) => `perhaps ${words}; too unsure to tell which way it leans`,
  soft: 'Where colors run into each other, shares are good to about five points.',
  pattern: 'How are they spread?',
  patterns: { veined: 'Veins', fleck: 'Flecks', cloud: 'Clouds', grain: 'Grain' },
  size: 'Size',
  sizeMeaning: { veined: 'from vein to vein', fleck: 'of a fleck', cloud: 'of a cloud', grain: '' },
  sizeWrong: 'Give a size from 1 to 2,000 mm.',
  unnamed: 'From a photo',
  flags: 'What is wrong with the photo',
  noFlags: 'Nothing is wrong with the photo that one could see in it.',
  use: 'Use it',
} as const);
