import type { BulkChange } from '../library/bulk-edit';
import type { RangeOrder } from '../library/range-filters';
import { listed } from './numbers';
import { spoken } from './spoken';

const count = new Intl.NumberFormat('en-US');

/** "1 finish", "1,200 finishes". */
export const finishCount = (finishes: number): string =>
  `${count.format(finishes)} ${finishes === 1 ? 'finish' : 'finishes'}`;

/** Words of the dialog in which one looks after one's libraries. */
export const LIBRARIES = spoken({
  title: 'Libraries',
  open: 'Libraries…',
  link: 'Manage libraries…',
  intro: 'Kept in this browser, apart from projects. A project takes in what it lays.',
  close: 'Close',
  shelf: 'Libraries kept here',
  project: 'This project’s finishes',
  projectNote: 'What this project knows and saves. Changes here can be undone on the page, too.',
  waiting: 'Looking up your libraries…',
  none: 'No library is kept here yet. Import a file of finishes, or begin an empty one.',
  allLibraries: 'All libraries',
  newEmpty: 'New empty library',
  newName: 'New library',
  importFile: 'Import a file…',
  rename: 'Rename…',
  save: 'Copy to file…',
  remove: 'Remove',
  removed: (name: string) => `“${name}” is removed.`,
  bringBack: 'Bring back',
  notKept: 'That could not be kept in this browser. What you see is what is kept.',
  changedElsewhere:
    'Nothing was changed: this library was changed in another tab meanwhile. Here it is as it is now; do it again if you still want it.',
  cannotUndo: (label: string) =>
    `“${label}” cannot be undone: it was changed elsewhere since. Nothing was changed; here it is as it is now.`,
  name: 'Name',
  note: 'Note',
  keepName: 'Keep the name',
  cancel: 'Cancel',
  emptyName: 'Give it a name.',
  undo: 'Undo',
  undoOf: (label: string) => `Undo: ${label}`,
  undone: (label: string) => `Undone: ${label}.`,
  done: (label: string) => `Done: ${label}.`,
  labels: {
    rename: (name: string) => `rename ${name}`,
    create: (name: string) => `new library ${name}`,
    remove: (name: string) => `remove ${name}`,
    edit: (name: string) => `change ${name}`,
    add: (name: string) => `new finish ${name}`,
    copy: (finishes: number, to: string) => `copy ${finishCount(finishes)} to ${to}`,
    keep: (finishes: number, to: string) => `keep ${finishCount(finishes)} in ${to}`,
    bulk: (change: BulkChange, finishes: number) => `${BULK[change.kind]} ${finishCount(finishes)}`,
  },
} as const);

const BULK: { readonly [K in BulkChange['kind']]: string } = spoken({
  'add-tag': 'tag',
  'remove-tag': 'take a tag off',
  price: 'price band of',
  availability: 'availability of',
  provenance: 'provenance of',
  remove: 'remove',
});

/** Words of copying a library to a file. */
export const LIBRARY_FILE = spoken({
  format: 'As',
  formats: { json: 'Upstand library (.json)', csv: 'Table (.csv)' },
  spreadsheet: 'For spreadsheet programs (with a byte order mark)',
  jsonMeaning: 'Holds everything, to open here again or on another device.',
  csvMeaning: 'One finish a line, for a spreadsheet. Finishes of several colors are written as their area mean.',
  save: 'Save the file',
  saved: (file: string) => `Saved as ${file}.`,
} as const);

/** Words of the list of a library's finishes. */
export const RANGE = spoken({
  list: 'Finishes of this library',
  keys: 'Arrow keys move, Space chooses, Shift with arrow keys chooses more, Enter edits.',
  empty: 'This library is empty. Type a finish in, import a file into it, or copy finishes from another one.',
  none: 'Nothing here fits that. Clear the search or the filters.',
  count: (shown: number, all: number) =>
    shown === all ? finishCount(all) : `${count.format(shown)} of ${finishCount(all)}`,
  near: '— LRVs are still being worked out: for now by near values.',
  search: 'Search',
  searchHint: 'Name, code, tag, supplier',
  filters: (set: number) => (set > 0 ? `Filters (${set})` : 'Filters'),
  provenance: 'How known',
  anyProvenance: 'Any',
  tag: 'Tag',
  anyTag: 'Any tag',
  order: 'Order',
  orders: {
    library: 'As kept',
    name: 'Name',
    code: 'Code',
    lrv: 'LRV',
    sheen: 'Sheen',
    price: 'Price',
    lead: 'Lead time',
  } satisfies { readonly [O in RangeOrder]: string },
  turn: 'Other way round',
  add: 'Type one in…',
  edit: (name: string) => `Edit ${name}`,
  choose: (name: string) => `Choose ${name}`,
  columns: {
    choose: 'Chosen',
    swatch: 'Color',
    name: 'Name and code',
    material: 'Material, sheen',
    lrv: 'LRV',
    undertone: 'Undertone',
    known: 'How known',
    supply: 'Price, availability',
    tags: 'Tags',
  },
  gloss: (gu: number) => `${Math.round(gu)} GU`,
  chooseAll: 'Choose all shown',
  chooseNone: 'Choose none',
  chosen: (chosen: number) => `${finishCount(chosen)} chosen`,
  bulkTag: 'Tag',
  addTag: 'Add',
  removeTag: 'Take off',
  bulkPrice: 'Price band',
  bulkAvailability: 'Availability',
  bulkProvenance: 'How known',
  leave: 'Leave as they are',
  noPrice: 'None',
  apply: 'Set',
  change: 'Change them…',
  copyOpen: 'Copy to…',
  copyTo: 'Copy to',
  copy: 'Copy',
  noTarget: 'Choose a library',
  onSame: 'Codes that are there already',
  removeChosen: 'Remove',
  copied: (words: string) => `Copied: ${words}.`,
} as const);

/** What became of finishes that were put to others. */
export function mergedWords(merged: { added: number; replaced: number; skipped: number }): string {
  const parts = [
    `${count.format(merged.added)} added`,
    ...(merged.replaced > 0 ? [`${count.format(merged.replaced)} replaced`] : []),
    ...(merged.skipped > 0 ? [`${count.format(merged.skipped)} left out`] : []),
  ];
  return listed(parts);
}

/** What to do with codes that are there already. */
export const ON_SAME = spoken({
  both: 'Keep both',
  replace: 'Replace the old ones',
  skip: 'Leave the new ones out',
} as const);

/** Words of the form of one finish. */
export const FINISH_FORM = spoken({
  newTitle: 'New finish',
  back: 'Back to the list',
  previous: 'Previous',
  next: 'Next',
  what: 'What it is',
  name: 'Name',
  code: 'Code',
  class: 'Material',
  gloss: 'Gloss at 60°, GU',
  thickness: (unit: string) => `Thickness, ${unit}`,
  wrongThickness: 'Thickness: give a length from 0.1 to 200 mm.',
  lrv: 'Printed LRV',
  lrvHint: 'for a check',
  supply: 'To order it',
  supplier: 'Supplier',
  band: 'Price band',
  noBand: 'None',
  availability: 'Availability',
  lead: 'Lead time, weeks',
  unit: 'Unit',
  pack: 'Units a pack',
  tags: 'Tags, with commas between',
  note: 'Note',
  color: 'Color',
  colorNow: 'Color as it is',
  manyColors: (colors: number) => `It has ${colors} colors in a pattern; they stay as they are.`,
  changeColor: 'Give it another color',
  keepColor: 'Leave its color as it is',
  provenance: 'How known',
  save: 'Keep the changes',
  add: 'Add it',
  kept: 'Kept.',
  leave: 'Leave without keeping the changes?',
  leaveYes: 'Leave',
  leaveNo: 'Stay',
  wrongNumber: (label: string, least: number, most: number) => `${label}: give a number from ${least} to ${most}.`,
  noName: 'Give it a name.',
} as const);
