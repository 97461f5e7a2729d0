import type { Wall } from '../../model/kitchen';
import type { UserNeed } from '../../model/project';
import { directionWord } from './daylight';
import { listed } from './numbers';
import { localeNow, spoken } from './spoken';

/** Words of the handover set: the controls round the pages, and what every page has. */
export const HANDOVER = spoken({
  title: 'Handover set',
  close: 'Close',
  print: 'Print',
  printHint: 'The print dialog also saves it as a PDF file. Set its margins to none and leave background graphics on.',
  paper: 'Paper',
  papers: [
    { id: 'a4', name: 'A4' },
    { id: 'letter', name: 'Letter' },
  ],
  options: 'Options in it',
  signed: 'To sign',
  day: 'Day',
  evening: 'Evening',
  preparedFor: 'Prepared for',
  preparedBy: 'Prepared by',
  freeze: 'A draft: freeze it to be signed',
  onePage: 'One page only',
  pages: 'Pages as they will print',
  coming: 'Setting the pages …',
  making: (option: string, setting: string, done: number, of: number) =>
    `Drawing ${option}, ${setting.toLowerCase()} (${done + 1} of ${of})`,
  made: (pages: number) => `${pages} ${pages === 1 ? 'page' : 'pages'}, ready to print.`,
  stopped: (missing: number) =>
    `Stopped: ${missing} ${missing === 1 ? 'view is' : 'views are'} missing. What is there can be printed.`,
  stop: 'Stop',
  goOn: 'Draw the rest',
  pageLabel: (page: number, of: number, title: string) => `Page ${page} of ${of}: ${title}`,
  pageNumber: (page: number, of: number) => `page ${page} of ${of}`,
  goesOn: (title: string) => `${title}, continued`,
  running: (project: string, revision: string) => `${project} · ${revision}`,
  draft: 'not frozen: draft',
  notedSince: 'with later entries',
  date: (date: Date) => date.toLocaleDateString(localeNow(), { dateStyle: 'long' }),
} as const);

/** Words of the cover. */
export const COVER = spoken({
  title: 'Cover',
  what: 'Kitchen finishes',
  toSign: 'Option to sign',
  others: 'Also shown',
  revision: 'Revision',
  date: 'Date',
  contents: 'In this set',
  upright: 'Upright',
  flat: 'Flat',
  blank: '________________',
} as const);

/** Words of the page on what was given. */
export const BRIEF = spoken({
  title: 'Brief and what stays',
  what: 'What',
  said: 'As given',
  place: 'Place',
  brief: 'What is wanted',
  kitchen: 'Kitchen',
  room: 'Room',
  roomSize: (width: string, depth: string, height: string) => `${width} wide, ${depth} deep, ${height} high`,
  region: 'Usual sizes of',
  year: 'House built',
  users: 'Used by',
  usersUsual: 'nobody with special needs was named',
  userWords: {
    'over-65': 'somebody over 65',
    'low-vision': 'somebody with low vision',
    wheelchair: 'somebody in a wheelchair',
    children: 'children',
  } satisfies Record<UserNeed, string>,
  note: 'Note',
  optionNote: (option: string) => `Note on ${option}`,
  notKnown: 'not known',
  windows: 'Windows',
  noWindow: 'none',
  walls: { left: 'left', back: 'back', right: 'right', front: 'door' } satisfies Record<Wall, string>,
  window: (kind: string, wall: string, width: string, height: string, sill: string, bearing_deg: number) =>
    `${kind} on the ${wall} wall, ${width} by ${height}, sill at ${sill}; it faces ${directionWord(bearing_deg)}`,
  backFaces: (bearing_deg: number) => `The back wall faces ${directionWord(bearing_deg)}.`,
  lamps: 'Lamps',
  noLamps: 'none',
  lights: 'Lights shown',
  stays: 'What stays',
  staysIntro: 'Everything else was chosen beside these. They are not part of the order.',
  nothingStays: 'Nothing was said to stay.',
  open: 'Still open',
  openIntro: 'These are not decided yet: what stands in this set is a proposal.',
  nothingOpen: 'Nothing is open.',
  id: 'ID',
  surface: 'Surface',
  finish: 'Finish',
  state: 'State',
} as const);

/** Words of the pages with pictures. */
export const VIEWS = spoken({
  title: (option: string) => `The room as ${option}`,
  picture: (option: string, setting: string) => `The kitchen as ${option}, ${setting.toLowerCase()} light`,
  missing: 'This view is not drawn yet.',
  cct: (kelvin: number) => `about ${100 * Math.round(kelvin / 100)} K at the counter`,
  from: (viewpoint: string, isMoved: boolean) =>
    isMoved ? `seen from near the place "${viewpoint}"` : `seen from the place "${viewpoint}"`,
  note: 'All options have one camera and in each light one exposure, so they compare side by side. Day and evening have each their own: eyes get used to either.',
} as const);

/** Words of the palette. */
export const PALETTE = spoken({
  title: (option: string) => `Palette of ${option}, in proportion`,
  intro:
    'Each band is as high as its share of what one sees from the usual places in the room, floor at the bottom. Very thin ones are drawn a little thicker; what is too small to be counted has no share.',
  figure: (option: string) => `Bands of the finishes of ${option}, each as high as its share of the view`,
  label: 'Finishes by where they are, from the ceiling down',
  share: 'Of the view',
  noShare: '–',
  groutOf: (surfaces: string) => `Grout of ${surfaces}`,
} as const);

/** Words of the pages with findings. */
export const REPORT = spoken({
  title: (option: string) => `What was found in ${option}`,
  both: 'In both lights',
  only: (setting: string) => `Only in ${setting.toLowerCase()} light`,
  balance: (setting: string) => `Balance, ${setting.toLowerCase()}`,
  nothing: 'Nothing here works against anything else.',
  nothingMore: 'Nothing besides what holds in both lights.',
  missing: 'The findings of this light were not worked out.',
  read: (setting: string, said: string) => `${setting}: ${said}`,
} as const);

/** Words of the page that compares options. */
export const COMPARISON = spoken({
  title: 'What differs',
  surfaces: 'Finishes that differ',
  alike: 'No surface has another finish.',
  surface: 'Surface',
  findings: (setting: string) => `Findings that differ, ${setting.toLowerCase()}`,
  option: 'Option',
  own: 'Only there, or not in all',
  none: 'Nothing that the others do not have, too',
  unknown: 'not worked out',
  intro: 'What all options have in common is left out, and so are notes, which stand on the pages of each option.',
  label: 'Surfaces whose finish is not the same in all options',
} as const);

/** Words of the page on samples. */
export const SAMPLES = spoken({
  title: 'Samples to judge',
  intro: 'Every finish to be ordered is judged as a real piece, in the room. Write down what you see.',
  label: 'Samples with boxes to tick',
  id: 'ID',
  finish: 'Finish',
  batch: 'Batch',
  byWindow: 'By the window',
  evening: 'Evening lamps',
  verdict: 'Verdict',
  verdicts: ['keep', 'change', 'look again'],
  lights: ['good', 'not'],
  who: 'Who',
  date: 'Date',
  none: 'Nothing is left to be ordered.',
  how: 'How to look at samples',
  steps: [
    'Ask for real pieces from the batch you would get: a whole tile, a door, a piece of the slab, paint in two coats on a card as large as this sheet. A small chip hides veins and looks paler than a wall.',
    'Hold each as it will be: counter and floor flat, fronts, tile and wall upright. The same piece turned is another color to the eye.',
    'Put one or two at a time before something plain, gray and matte, with what stays beside them. Printer paper is bluish: do not take it for white.',
    'Look in the morning, at noon and late, each time by the window and in the corner farthest from it; then at night with your own lamps only, those under the cabinets on and off.',
    'Step back 2 to 3 m, then come near. Wet or wipe what will get wet. Write down who looked, when, and what was said.',
    'Where two people or two lights disagree, keep both pieces and look again on another day before anything is ordered.',
  ],
} as const);

/** Words of the page with cautions and of what the colors rest on. */
export const CERTAINTY = spoken({
  cautions: 'Before you order',
  ask: 'Ask those who build',
  title: 'How sure this is',
  intro:
    'The colors in this set rest on what was given for each finish. The number says how far the true color may lie from the one used here, as a rule, in CIEDE2000 units: 1 can just be seen side by side, 5 is plainly another color.',
  label: 'What the color of each finish rests on',
  id: 'ID',
  finish: 'Finish',
  known: 'Its color is',
  off: 'May be off by',
  about: (number: string) => `± ${number}`,
  cannotTell: '"Cannot tell" is an answer',
  cannotTellMeans:
    'Where two finishes differ by less than they are known, no computation can say whether they agree. Then samples decide, held together in the room.',
  metamerism:
    'Two finishes that match in one light may part in another. Without measured spectra that is a risk that is told, never a match that is promised.',
  prints:
    'Screens and printers change colors, each in its own way. Nothing printed here is a sample, nor a color to match to.',
  questions: 'Open questions of this option',
  none: 'No question is open.',
} as const);

/** Words of the page to sign. */
export const SIGN = spoken({
  title: 'To sign',
  what: (option: string, revision: string) =>
    `Signed is the finish schedule of ${option} in revision ${revision}, together with the physical samples that were approved. Pictures and printed colors are there to talk about, and are not part of what is signed.`,
  draft:
    'This set is a draft: the project as it is here was not frozen as a revision, so there is no number to sign. Freeze a revision, and print the set again.',
  draftMark: 'Draft, not for signature',
  notedSince:
    'Later entries are orders, lots, samples, deliveries, approvals and dates noted after it was frozen; what is ordered is as frozen.',
  changes: 'After this, a change is a new revision with a new number and a new signature.',
  approved: 'Samples approved',
  approvedLabel: 'Samples that were approved, by ID',
  id: 'ID',
  finish: 'Finish',
  sample: 'Sample seen',
  initials: 'Initials',
  name: 'Name',
  date: 'Date',
  signature: 'Signature',
  client: 'For the client',
  maker: 'For who prepared it',
  printed: (date: string) => `Printed on ${date}.`,
} as const);

/** Words of the sample board. */
export const BOARD = spoken({
  title: (option: string) => `Sample board, ${option}`,
  intro:
    'Pieces in rough proportion to what one sees, as they stand in the room: ceiling and wall above, floor at the bottom. Small ones are shown larger. Put the real samples over them.',
  board: (option: string) => `Swatches of ${option}, from the ceiling down to the floor`,
  batch: 'Batch',
  sheen: (word: string, gu: string) => `${word}, ${gu} GU`,
} as const);

/** Words of the one page. */
export const ONE_SHEET = spoken({
  title: (option: string) => `${option} on one page`,
  label: 'Finishes of this option',
  findings: 'What was found',
  cautions: 'Before you order',
  more: (count: number) => `And ${count} more, on screen.`,
  code: 'Code',
  price: 'Price',
  lead: 'Lead time',
  lights: (settings: readonly string[]) => `In ${listed(settings)} light.`,
} as const);
