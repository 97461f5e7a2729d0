import type { ComponentRecord } from '../../engine/judge/assessment';
import type { Facing } from '../../engine/surface';
import { spoken } from './spoken';

/** Words of the reading card. */
export const READING = spoken({
  title: 'Reading',
  back: 'Back to findings',
  surface: 'Surface',
  sample: 'As a sample',
  sampleNote: 'In neutral daylight (D65, 2°)',
  here: 'As installed here',
  hereFace: (face: string) => `As installed here, ${face}`,
  hereNote: (setting: string) => `In ${setting.toLowerCase()} light, with the room’s bounce, eyes used to the room`,
  point: 'At the point you chose',
  lab: 'Lab',
  labOf: (lab: string) => `Lab ${lab}`,
  lrv: 'LRV',
  munsell: 'Munsell',
  name: 'Name',
  undertone: 'Undertone',
  light: 'Light on it',
  lightness: 'Lightness in the room',
  shift: 'Shift from the sample',
  tint: 'Tint of the place',
  view: 'Share of the view',
  undertoneOpen: (word: string) =>
    word && word !== 'none' ? `Cannot tell; the numbers say ${word}` : 'Cannot tell; the numbers say none',
  known: 'Known',
  spectrum: 'Spectrum',
  component: 'Part',
  onScreen: 'On screen without sheen',
  /** Where white would burn out. */
  darkened: (times: string) => `darkened ${times} times`,
  parts: 'Its parts',
  copy: 'Copy numbers',
  copied: 'Copied with their conditions',
  pending: 'The light on this surface is still being worked out.',
  dark: 'No light is on in this setting.',
  lx: (lx: string) => `${lx} lx`,
  lxDirect: (lx: string, direct: string) => `${lx} lx, ${direct} lx of it direct`,
  lxMean: (mean: string, least: string) => `${mean} lx on average, ${least} lx at the least`,
  whiteCard: 'A perfect white there',
  lightFrom: 'Where the light comes from',
  direct: (group: string) => `${group}, direct`,
  bounced: (surface: string) => `Off the ${surface.toLowerCase()}`,
  rest: 'And the rest',
  tintPart: (share: string, from: string) => `${share} ${from}`,
  tintShare: (share: string, from: string) => `${share} from ${from}`,
  tintDirect: (group: string) => `straight from the ${group.toLowerCase()} light`,
  tintBounced: (surface: string) => `from the ${surface.toLowerCase()}`,
  ofThisTint: (parts: string) => `of this tint comes ${parts}.`,
  mirrors: (what: string, de00: string) => `From here it mirrors ${what}: that moves its color by ${de00} dE00.`,
  mirrorsHiding: (what: string) => `From here it mirrors ${what} so strongly that its own color is hidden.`,
  mirroredGroup: (group: string) => `the ${group.toLowerCase()} light`,
  mirroredSurface: (surface: string) => `the ${surface.toLowerCase()}`,
  lightnessValue: (l: string) => `L* ${l} against the counter`,
  shiftValue: (de00: string, word: string) => `${de00} dE00, ${word}`,
  known_as: (words: string, de00: string, size: string) => `${words}: as a rule within about ${de00} dE00, ${size}`,
  whiteThere: (word: string) => `A white held there would look ${word}.`,
  noTint: 'A white held there would still look white.',
  tintComes: (parts: string) => `of the tint, ${parts}.`,
  lightMix: 'the mix of lights here',
  tintUnknown: 'Where the tint comes from is still being worked out.',
} as const);

/** Words of the part of a reading that goes through the lights. */
export const IN_LIGHTS = spoken({
  title: 'The sample in each light, without the room',
  note: 'Only the lamp changes here; what floor and walls add is said above. Against neutral daylight, once the eye is used to the light.',
  guessed: 'Only its color is known: the range is over the spectra such a color may have.',
  measured: 'Its spectrum was measured.',
  mixed: 'Not all its spectra were measured: the range is over those its colors may have.',
  pending: 'Working out the lights.',
  light: 'Light',
  reads: 'Reads',
  change: 'Change, dE00',
  now: 'now',
  settings: 'Settings of this project',
  others: 'Other lamps',
  pair: 'Do they look the same in each light?',
  beside: 'Held beside',
  alone: 'Nothing',
  kelvin: (cct: number | null) => (cct === null ? 'no white' : `${Math.round(cct)} K`),
  range: (from: string, to: string) => (from === to ? from : `${from} to ${to}`),
} as const);

/** Where a spectrum comes from. */
export const SPECTRUM_WORDS: { readonly [S in ComponentRecord['spectrum_source']]: string } = spoken({
  measured: 'measured',
  lhtss: 'guessed from the color',
  sigmoid: 'guessed from the color',
  mixed: 'guessed in part',
});

/** From here on an undertone is anybody's guess, except that of a strong color. */
export const isTooRough = (de00: number): boolean => de00 > 3.6;

/** How much an uncertainty is, by what eyes can tell (CIEDE2000 0.8 perceptible, 1.8 acceptable) and twice that. */
export function uncertaintyWord(de00: number): string {
  if (de00 <= 0.4) return 'finer than eyes can tell';
  if (de00 <= 1.2) return 'about what eyes can just tell';
  if (!isTooRough(de00)) return 'a difference most people see';
  return 'too rough to judge an undertone by';
}

/** Which way a face looks, in words that tell flat from upright. */
export const FACING_WORDS: { readonly [F in Facing]: string } = spoken({
  up: 'lying flat, facing up',
  down: 'flat overhead, facing down',
  upright: 'standing upright',
});

/** The face a swatch shows. */
export const FACE_WORDS: { readonly [F in Facing]: string } = spoken({
  up: 'the top',
  down: 'the underside',
  upright: 'the upright face',
});

/** How large a shift is (thresholds as in the trade's reading of CIEDE2000: 1, 2, 5). */
export function shiftWord(de00: number): string {
  if (de00 <= 1) return 'the same to most eyes';
  if (de00 <= 2) return 'very close';
  if (de00 <= 5) return 'noticeable';
  return 'clearly different';
}

/** Words of the part that holds one sample flat and upright. */
export const STAND = spoken({
  title: 'Flat and upright',
  note: 'The same sample on the counter here, in this light: standing, and lying below.',
  pending: 'Laying the sample flat and standing it up.',
  none: 'Too dark at the counter to tell, or the light is still being worked out.',
  upright: 'Upright',
  flat: 'Flat',
  label: (upright: string, flat: string) =>
    `A sample standing on a line, ${upright}, and the same lying below it, ${flat}`,
  same: (de00: string) => `Flat and upright it reads the same to most eyes: ${de00} dE00.`,
  differs: (how: string, de00: string, share: string) =>
    `Upright it reads ${how}: ${de00} dE00 in color, with ${share} of the light. Judge samples the way they will stand.`,
  shift: (de00: string, word: string) => `${de00} dE00 from the sample (${word})`,
  both: (words: readonly string[]) => `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`,
  darker: 'darker',
  brighter: 'brighter',
  yellower: 'yellower',
  bluer: 'bluer',
  pinker: 'pinker',
  greener: 'greener',
  otherwise: 'a little different',
} as const);
