import type { Provenance } from '../../engine/finish/types';
import { spoken } from './spoken';

const numbers = new Intl.NumberFormat('en-US');

/** Words of the drawer over the ledge. */
export const DRAWER = spoken({
  close: 'Close',
  more: 'Details',
  parts: 'What to set',
  library: 'Library',
  typeIn: 'Type one in',
  laying: 'Laying',
  reading: 'Show its reading',
  on: 'Lay it on',
  state: 'State',
  leaveEmpty: 'Leave empty',
  search: 'Name, code, undertone',
  searchHint: 'oak, bluish, code',
  classFilter: 'Material',
  allClasses: 'All materials',
  list: 'Finishes for this surface',
  none: 'No finish in the library fits that. Clear the search, or type one in.',
  current: 'on it now',
  lrv: (lrv: number) => `LRV ${Math.round(lrv)}`,
  count: (shown: number, all: number) =>
    shown === all ? `${numbers.format(all)} finishes` : `${numbers.format(shown)} of ${numbers.format(all)} finishes`,
  ofProject: (count: number) => `${numbers.format(count)} of this project`,
  from: 'From',
  fromAll: (count: number) => `From: all (${numbers.format(count)})`,
  fromProject: (count: number) => `From: this project (${numbers.format(count)})`,
  fromLibrary: (name: string, count: number) => `From: ${name} (${numbers.format(count)})`,
  libraries: 'Offer finishes of',
  libraryOf: (name: string, count: number) => `${name} (${numbers.format(count)})`,
  putAside: (count: number) => (count === 1 ? 'One library is left out.' : `${count} libraries are left out.`),
  foreign: 'not of this showroom’s range',
  outdated: (library: string) => `from ${library}, which has another version by now`,
  tag: 'Tag',
  anyTag: 'Any tag',
} as const);

/** Words of the form for how a finish is laid. */
export const LAYING = spoken({
  none: 'This finish goes on in one piece; there is nothing to set.',
  layout: 'Layout',
  longTile:
    'These tiles are longer than 381 mm (15 in). ANSI A108.02 allows them an offset of a third at most, unless a mock-up is approved.',
  hexagon: (width: number) => `Only where it is made as hexagons, ${width} mm from flat to flat.`,
  direction: 'Direction',
  directions: { 0: 'Straight', 45: 'Diagonal', 90: 'Turned' },
  joint: 'Joint',
  jointProblem: (least: string, most: string, unit: string) => `Give a joint from ${least} to ${most} ${unit}.`,
  grout: 'Grout',
  groutNone: 'None yet',
  start: 'Start',
  starts: { centered: 'Centered', corner: 'Whole in the corner' },
  slab: 'Beyond the slab’s end',
  matches: { bookmatch: 'Mirrored', slip: 'From the start' },
  slabSize: (length: number, width: number) =>
    `A slab of ${length} × ${width} mm; a longer run has a seam. Approve the layout on your own slabs.`,
  shift: 'Move along the slab',
  shiftProblem: (least: string, most: string, unit: string) => `Give a distance from ${least} to ${most} ${unit}.`,
} as const);

/** Words of the form for a color from outside the library. */
export const TYPE_IN = spoken({
  kind: 'What do you have?',
  kinds: {
    numbers: 'Lab numbers',
    munsell: 'Munsell',
    hex: 'Hex code',
    lrv: 'LRV and hue',
    spectrum: 'Spectrum',
    photo: 'Photo',
  },
  numbers: 'Numbers',
  numbersOf: { lab: 'L*, a*, b*', lch: 'L*, C*, h', xyz: 'X, Y, Z' },
  labels: {
    lab: (conditions: string) => `L*, a*, b* (${conditions})`,
    lch: (conditions: string) => `L*, C*, h (${conditions})`,
    xyz: (conditions: string) => `X, Y, Z (${conditions})`,
    munsell: () => 'Munsell notation',
    hex: () => 'Hex code',
    lrv: () => 'LRV, word for the hue',
    spectrum: () => 'Reflectance from an instrument',
  },
  hints: {
    lab: '84, 0.5, 6',
    lch: '84, 6, 85',
    xyz: '62, 65, 63',
    munsell: '2.5Y 8.5/1',
    hex: '#d9d4c8',
    lrv: '62 yellowish white',
  },
  /** What to write, where nothing can be made of a text. */
  remedies: {
    lab: 'Write three numbers, for example 84, 0.5, 6, or paste the line from the data sheet.',
    lch: 'Write lightness, chroma and hue angle, for example 84, 6, 85.',
    xyz: 'Write three numbers on the scale where white has Y 100, for example 62, 65, 63.',
    munsell: 'Write hue, value and chroma, for example 2.5Y 8.5/1, or N 9 for a neutral.',
    hex: 'Write six hexadecimal digits, for example #d9d4c8.',
    lrv: 'Write the printed number and a word for the hue, for example 62 yellowish white.',
    spectrum: 'Open a table of wavelengths and reflectances.',
  },
  /** Names of the numbers in the order of their fields. */
  numberNames: { lab: ['L*', 'a*', 'b*'], lch: ['L*', 'C*', 'h'], xyz: ['X', 'Y', 'Z'] } as {
    readonly [field: string]: readonly string[];
  },
  conditions: 'Light, observer',
  /** What people usually find on them; common practice, no source. */
  conditionsOf: {
    'D65, 2°': 'D65, 2°',
    'D65, 10°': 'D65, 10° (paint)',
    'D50, 2°': 'D50, 2° (print)',
    'D50, 10°': 'D50, 10°',
    'C, 2°': 'C, 2° (older)',
    'A, 2°': 'A, 2° (bulb)',
    'A, 10°': 'A, 10° (bulb)',
  } as { readonly [conditions: string]: string },
  specular: 'Mirror reflection',
  speculars: { unsaid: 'Not said', included: 'SCI, included', excluded: 'SCE, excluded' },
  space: 'Screen',
  spaces: { srgb: 'sRGB (usual)', 'display-p3': 'Display P3' },
  lrv: 'Printed LRV',
  lrvHint: 'for a check',
  lrvWrong: (text: string) => `“${text}” is no LRV.`,
  lrvRemedy: 'Write the printed number, 0 to 100, or leave it empty.',
  openSpectrum: 'Open a measured spectrum…',
  noSpectrum: 'No spectrum is open yet.',
  tooLarge: (megabytes: number) => `The file has ${megabytes} MB; a spectrum has far less.`,
  name: 'Call it',
  nameHint: 'Shop sample',
  /** What a color is called where nobody calls it anything: short, as it was given. */
  unnamed: {
    lab: (numbers: string, light: string) => `Lab ${numbers}, ${light}`,
    lch: (numbers: string, light: string) => `LCh ${numbers}, ${light}`,
    xyz: (numbers: string, light: string) => `XYZ ${numbers}, ${light}`,
    munsell: (notation: string) => `Munsell ${notation}`,
    lrv: (lrv: string, hue: string) => `LRV ${lrv} ${hue}`,
    displayP3: (hex: string) => `${hex} on P3`,
    spectrum: 'Measured sample',
  },
  provenance: 'How do you know it?',
  /** Short enough for the menu; what it means is said beside the form. */
  provenances: {
    measured: 'Measured',
    declared: 'Supplier’s figure',
    'photo-with-card': 'Photo, gray card',
    photo: 'Photo',
    'by-eye': 'By eye',
    screen: 'Screen color',
  } satisfies { readonly [P in Provenance]: string },
  class: 'Material',
  sheen: 'Sheen',
  sheens: { flat: 'Flat', satin: 'Satin', gloss: 'Gloss' },
  gloss: 'Gloss at 60°, GU',
  glossHint: (gu: number) => `about ${gu}`,
  glossWrong: (text: string) => `“${text}” is no gloss.`,
  glossRemedy: 'Write the gloss units an instrument shows at 60°, 0 to 100, or leave it empty.',
  use: 'Use it',
  meaning: 'What that means',
  result: (lab: string, lrv: string, undertone: string) => `Lab ${lab}; LRV ${lrv}; ${undertone}`,
  given: (words: string) => `Under D65, 2°, from ${words}.`,
  uncertain: (words: string, number: string, word: string) =>
    `It counts as ${words}: the true color may be off by about ${number}, ${word}.`,
  pieces: (width: number, length: number) => `Pieces of ${width} × ${length} mm, as now.`,
  screen: 'A display can be far from the real sample.',
  wide: 'Many comparisons will answer “cannot tell”. Hold the samples together to be sure.',
  rounded: (de00: string) => `The notation is rounded: by that alone the color may lie about ${de00} dE00 away.`,
  specularOpen: (de00: string) => `If it was measured without mirror reflection (SCE), it is about ${de00} dE00 off.`,
  empty: 'Type a color to see what it is and how sure the answers can be.',
  emptySpectrum: 'Open a file to see what it is: wavelengths in nm and reflectances, one line each.',
} as const);
