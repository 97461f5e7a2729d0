import type { DecisionState } from '../../engine/surface';
import type { SampleStatus, SampleVerdict } from '../../model/order/records';
import type { Stage } from '../../model/order/stages';
import type { Measure } from '../../model/quantity/measures';
import { spoken } from './spoken';

/** Words of the schedule, its samples, dates and quantities. */
export const SCHEDULE = spoken({
  title: 'Schedule',
  /** Beside the title. */
  ofOption: (option: string) => `of ${option}`,
  close: 'Close',
  csv: 'Save as a table',
  print: 'Handover set…',
  freeze: 'Freeze a revision…',
  views: 'What to look at',
  view: {
    items: 'Items',
    samples: 'Samples',
    job: 'Job and dates',
    quantities: 'What quantities rest on',
    drawings: 'Drawings',
    revisions: 'Revisions',
  },
  frozenAs: (id: string) => `As frozen in ${id}.`,
  notFrozen: 'A draft: what is signed is a frozen revision.',
  changedSince: (id: string, items: number, tags: string) =>
    `${items === 1 ? 'One item is' : `${items} items are`} not as frozen in ${id}: ${tags}.`,
  order: 'In order of',
  orders: [
    { id: 'installing', name: 'Installing' },
    { id: 'deciding', name: 'Deciding' },
    { id: 'ordering', name: 'Ordering' },
  ],
  list: 'Items of the schedule',
  nothing: 'Nothing chosen yet',
  stays: 'Stays: nothing to order',
  toSettle: (count: number) => (count === 0 ? 'Nothing to settle' : `${count} to settle`),
  orderBy: 'Order by',
  orderedOn: (day: string) => `Ordered ${day}`,
  sampleOf: (status: string) => `Sample ${status}`,
  noSample: 'No sample',
  total: 'Total',
  superseded: 'Superseded',
  supersededRow: (revision: string, order: string | null, approved: string | null) =>
    [`last in ${revision}`, order, approved && `approved by ${approved}`].filter(Boolean).join(', '),
  isFrozen: 'As frozen: nothing has changed since.',
  sums: 'Prices known so far',
  noSums: 'No price is known yet.',
  sumOf: (known: number, all: number) => `${known} of ${all} items have a price`,
  add: 'Add something to order',
  stages: {
    floor: 'Floor',
    cabinets: 'Cabinets',
    template: 'Template of the counter',
    counter: 'Counter',
    backsplash: 'Backsplash',
    fittings: 'Fittings',
    paint: 'Paint',
  } satisfies { readonly [S in Stage]: string },
  measures: {
    m2: ['m²', 'm²'],
    ft2: ['sq ft', 'sq ft'],
    L: ['L', 'L'],
    gal: ['gal', 'gal'],
    kg: ['kg', 'kg'],
    lb: ['lb', 'lb'],
    m: ['m', 'm'],
    ft: ['ft', 'ft'],
    piece: ['piece', 'pieces'],
    panel: ['panel', 'panels'],
    slab: ['slab', 'slabs'],
    sheet: ['sheet', 'sheets'],
  } satisfies { readonly [M in Measure]: readonly [one: string, many: string] },
  packsOf: (packs: number, container: string, holds: string) => `${packs} × ${container} of ${holds}`,
  net: 'Net',
  lrv: (lrv: string) => `LRV ${lrv}`,
  gloss: (gu: number) => `${gu} GU`,
  color: (l: string, a: string, b: string) => `L* ${l}, a* ${a}, b* ${b} (D65, 2°)`,
  given: (words: string) => `Given as ${words}`,
  off: (de00: string) => `± ${de00} ΔE00`,
} as const);

/** Words of samples. */
export const SAMPLES = spoken({
  intro:
    'Order real pieces: a whole tile, a door, a brush-out of two coats no smaller than a sheet of paper. Judge counter and floor flat, all else upright, in the room.',
  list: 'Samples',
  status: 'Sample',
  none: 'none yet',
  statuses: {
    wanted: 'wanted',
    ordered: 'ordered',
    received: 'received',
    approved: 'approved',
    rejected: 'rejected',
  } satisfies { readonly [S in SampleStatus]: string },
  since: 'Since',
  batch: 'Batch of the sample',
  verdicts: 'Seen in',
  verdict: {
    holds: 'holds',
    fails: 'fails',
    unsure: 'cannot tell',
  } satisfies { readonly [V in SampleVerdict['verdict']]: string },
  add: 'Add what somebody saw',
  light: 'Light',
  lights: ['Morning', 'Noon', 'Late', 'Evening lamps', 'Under-cabinet light', 'At the window', 'In the store'],
  by: 'Seen by',
  found: 'Found',
  take: 'Add',
  removeOne: (light: string, by: string) => `Remove: ${light}, ${by}`,
  nobody: 'Nobody has written down yet what they saw.',
  needsPerson: 'Say who looked, and in what light.',
} as const);

/** Words of the job and its dates. */
export const JOB = spoken({
  who: 'Whom it is for',
  preparedFor: 'Prepared for',
  preparedBy: 'Prepared by',
  place: 'Place',
  brief: 'What is wanted',
  dates: 'Dates',
  startsOn: 'First day of installing',
  margin: 'Kept between delivery and need',
  days: 'days',
  stageDays: 'Days each stage takes',
  begins: 'begins',
  /** Instead of its first day. */
  stays: 'what is there stays: no days',
  nothingIn: 'nothing to put in: no days',
  noStart: 'Set the first day, and every item gets its dates.',
  order:
    'Installed in this order: floor, cabinets, then the template, which needs the base cabinets fixed and sink, faucet and cooktop there; the counter comes its lead time later. Decide in another: what stays, then counter, floor, cabinets, backsplash, wall.',
  templateFrom: (weeks: string) =>
    `The counter comes ${weeks} from the template: the longest lead time of what is cut to it.`,
  kept: 'Kept in this project and printed; never in a link.',
} as const);

/** Words of what quantities rest on. */
export const ASSUMED = spoken({
  intro: 'Usual values of the trade. Where yours differ, change them here, and every quantity follows.',
  usual: (value: string) => `usual ${value}`,
  between: (least: string, most: string) => `Give a number from ${least} to ${most}.`,
  densityUnit: 'kg/L',
  floor: 'Floor',
  floorReach: 'It reaches',
  floorReaches: { 'under-units': 'under the units', 'to-plinth': 'up to the toe kicks' },
  walls: 'Walls and ceiling',
  leastOpening: 'Openings are taken off from',
  behindUnits: 'Paint behind units as well',
  spread: 'Paint goes as far as',
  spreads: ['m²/L', 'sq ft/gal'],
  coats: 'Coats',
  fronts: 'Painted fronts',
  faces: 'Coated on',
  facesOf: { both: 'both faces and edges', front: 'one face' },
  paintWaste: 'Paint left in cans and rollers',
  slabs: 'Slabs',
  trim: 'Trimmed all round',
  kerf: 'Saw cut',
  shortest: 'Shortest part between seams',
  seamClear: 'Seams keep clear of cut-outs by',
  matchSeams: 'Match veins at every seam, even if it takes more slabs',
  grout: 'Grout',
  depth: 'Depth where the tile does not say its thickness',
  density: 'Weight',
  groutWaste: 'Grout that is washed off',
  spares: 'Repairs',
  sparePacks: 'Boxes or cartons kept',
  back: 'All as usual again',
} as const);

/** How settled an item is, as it stands in the list. */
export const STATE_SHORT: { readonly [S in DecisionState]: string } = spoken({
  fixed: 'Fixed',
  open: 'Open',
  decided: 'Decided',
  ordered: 'Ordered',
});
