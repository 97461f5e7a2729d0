import type { SheetFormat } from '../../io/sheet/types';
import { finishCount } from './libraries';
import { spoken } from './spoken';

const count = new Intl.NumberFormat('en-US');

/** Words of the import of a file of finishes. */
export const IMPORT = spoken({
  title: 'Import finishes',
  intro:
    'A table (CSV, from any spreadsheet program), CGATS or ISO 28178, CxF3, ICC named colors, spectra in a table, or a library saved here. The file is read on this device; nothing is kept before you say so.',
  choose: 'Choose a file…',
  drop: 'or drop it here',
  accept: '.csv,.tsv,.txt,.cgats,.cxf,.xml,.icc,.icm,.json',
  cancel: 'Cancel',
  stop: 'Cancel',
  again: 'Another file…',
  back: 'Back to the libraries',
  tooLarge: (megabytes: number, most: number) =>
    `The file has ${count.format(megabytes)} MB; up to ${most} MB are read.`,
  tooLargeRemedy: 'Split it, or leave out what is no finish.',
  empty: 'The file is empty. Choose one with a row for each finish.',
  stages: {
    bytes: 'Reading the file',
    rows: 'Finding its rows',
    colors: 'Working out the colors',
  },
  formats: { csv: 'Table (CSV)', cgats: 'CGATS (ISO 28178)', cxf: 'CxF3', icc: 'ICC named colors' } satisfies {
    readonly [F in SheetFormat]: string;
  },
  what: 'The file',
  rows: (rows: number) => (rows === 1 ? '1 row' : `${count.format(rows)} rows`),
  columns: 'Columns',
  columnsOf: (columns: number, unknown: number) =>
    unknown === 0
      ? `Columns: all ${count.format(columns)} understood`
      : `Columns: ${count.format(unknown)} of ${count.format(columns)} left out`,
  columnsColorless: (columns: number) =>
    columns === 1 ? 'Columns: the one gives no color' : `Columns: none of ${count.format(columns)} gives a color`,
  column: (at: number) => `Column ${at}`,
  meaning: (heading: string) => `Meaning of ${heading}`,
  example: (cell: string) => `e.g. ${cell}`,
  leftOut: 'Left out',
  bands: (bands: number, from: number, to: number) =>
    `${count.format(bands)} columns of reflectance, ${from} to ${to} nm`,
  band: (nm: string) => `Reflectance at ${nm} nm`,
  questions: 'What the file does not say',
  questionsDone: 'What you said of it',
  waits: (rows: number) => (rows === 1 ? '1 row waits for it.' : `${count.format(rows)} rows wait for it.`),
  usualTaken: (rows: number) =>
    rows === 1
      ? '1 row does not say; the usual was taken.'
      : `${count.format(rows)} rows do not say; the usual was taken.`,
  usual: (words: string) => `Take the usual: ${words}`,
  unsaid: 'Choose…',
  about: {
    class: 'Material',
    conditions: 'Light and observer of the numbers',
    gloss: 'Gloss at 60°',
    columns: 'Which columns hold the color',
    scale: 'How reflectance is written',
  },
  why: {
    class: 'Fronts, floors and counters are offered by material, and sheen and spectrum follow from it.',
    conditions: 'The same numbers are another color under another light. Paint is usually D65, 10°; print D50, 2°.',
    gloss: 'How much it mirrors.',
    columns: 'None was recognized. Say under Columns what each of them means.',
    scale: 'As a share of the light, or in percent.',
  },
  scales: { factor: '0 to 1', percent: '0 to 100' },
  glosses: [
    [4, 'Flat, 4 GU'],
    [10, 'Matte, 10 GU'],
    [28, 'Satin, 28 GU'],
    [50, 'Semi-gloss, 50 GU'],
    [78, 'Gloss, 78 GU'],
  ] as readonly (readonly [gu: number, words: string])[],
  glossUsual: 'As is usual for each material',
  glossOfEach: 'that of each material',
  glossWords: (gu: number) => `${gu} GU`,
  materialsOf: (words: number, unknown: number) =>
    unknown === 0
      ? `Materials understood as (${words})`
      : `Materials: ${unknown} of ${words} ${words === 1 ? 'word' : 'words'} not understood`,
  trust: 'How far to trust it',
  provenance: 'How known, where the file does not say',
  asFile: 'As is usual for its numbers',
  outcome: 'What becomes of it',
  counts: (kept: number, waiting: number, refused: number, noticed: number) =>
    [
      `${finishCount(kept)} can be kept`,
      ...(waiting > 0 ? [`${count.format(waiting)} ${waiting === 1 ? 'waits' : 'wait'} for an answer`] : []),
      ...(refused > 0 ? [`${count.format(refused)} refused`] : []),
      ...(noticed > 0 ? [`${count.format(noticed)} to look at`] : []),
    ].join(', '),
  onlyProblems: 'Only what is refused or to look at',
  noProblems: 'Nothing is refused, and there is nothing to look at.',
  nothing: 'No row makes a finish yet.',
  line: (line: number) => `Line ${count.format(line)}`,
  refused: 'Refused',
  waiting: 'Waits',
  list: 'Rows of the file',
  heads: ['Finish', 'As the file gives it, and the color it makes'],
  makes: (lab: string, lrv: string) => `Makes Lab ${lab} · D65, 2°; LRV ${lrv}`,
  into: 'Keep them in',
  newLibrary: 'A new library',
  name: 'Its name',
  onSame: (same: number) => (same === 1 ? '1 code is there already' : `${count.format(same)} codes are there already`),
  keep: (finishes: number) => `Keep ${finishCount(finishes)}`,
  working: 'Working it out again…',
  library: (finishes: number) => `A library saved by this program, with ${finishCount(finishes)}.`,
  leave: 'Leave without keeping them?',
  instead: 'Read another file in its place? What you answered here goes.',
  insteadYes: 'Read the other file',
  insteadNo: 'Stay with this one',
} as const);

/** What a column may hold. */
export const FIELD_WORDS: { readonly [field: string]: string } = spoken({
  code: 'Code',
  name: 'Name',
  class: 'Material',
  lab_l: 'L*',
  lab_a: 'a*',
  lab_b: 'b*',
  lch_l: 'L* (with C*, h)',
  lch_c: 'C*',
  lch_h: 'h',
  xyz_x: 'X',
  xyz_y: 'Y',
  xyz_z: 'Z',
  xyy_x: 'x (with y, Y)',
  xyy_y: 'y (with x, Y)',
  xyy_lum: 'Y (with x, y)',
  hex: 'Hex code',
  rgb_r: 'R',
  rgb_g: 'G',
  rgb_b: 'B',
  munsell: 'Munsell notation',
  lrv: 'LRV',
  illuminant: 'Light',
  observer_deg: 'Observer',
  specular: 'Mirror reflection',
  gloss_60: 'Gloss at 60°',
  texture: 'Texture',
  variation: 'Variation, V0 to V4',
  provenance: 'How known',
  uncertainty_de00: 'How far colors may be off',
  piece_width_mm: 'Width of a piece, mm',
  piece_length_mm: 'Length of a piece, mm',
  slab_length_mm: 'Length of a slab, mm',
  slab_width_mm: 'Width of a slab, mm',
  thickness_mm: 'Thickness, mm',
  order_code: 'Code to order by',
  supplier: 'Supplier',
  unit: 'Unit',
  pack: 'Units a pack',
  lead_time_weeks: 'Lead time, weeks',
  price: 'Price',
  price_currency: 'Currency of the price',
  price_per: 'What the price is for',
  price_band: 'Price band',
  availability: 'Availability',
  tags: 'Tags',
  note: 'Note',
  source: 'Source',
});
