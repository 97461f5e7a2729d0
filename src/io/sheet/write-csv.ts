import Papa from 'papaparse';
import type { Problem } from '../../engine/result';
import type { Finish } from '../../model/project';
import { guardedText } from './cell-text';
import { SOURCE } from './row-finish';
import { counted, sheetProblem } from './sheet-problem';
import { type ColorCells, carriedColor } from './write-color';

/** How a table is written. */
interface CsvOptions {
  /** Puts a byte order mark first, by which spreadsheets know that it is UTF-8. */
  readonly mark?: boolean;
}

/** A table of finishes, and what it cannot carry. */
export interface WrittenCsv {
  readonly text: string;
  readonly notices: readonly Problem[];
}

/** The first columns, always there and in this order; all others only where a finish has something for them. */
const FIRST = 'schema code name family lab_l lab_a lab_b illuminant observer_deg lrv gloss_60 texture source'.split(
  ' ',
);

const LATER = (
  'lch_l lch_c lch_h xyz_x xyz_y xyz_z munsell hex specular variation provenance uncertainty_de00 piece_width_mm piece_length_mm ' +
  'slab_length_mm slab_width_mm thickness_mm order_code supplier unit pack lead_time_weeks price price_currency price_per price_band ' +
  'availability tags note'
).split(' ');

/** Columns of text, in which a spreadsheet might see a formula. */
const TEXTS = new Set('code name source order_code supplier unit availability tags note munsell'.split(' '));

type Cells = Readonly<Record<string, string | number | undefined>>;

/**
 * Finishes as CSV by our own headings: UTF-8, CRLF, commas, decimal points, one finish a row, text that a spreadsheet would take for a
 * formula behind an apostrophe. Reading it again gives the same finishes, except what one row cannot hold: a finish of several
 * colors is written as the mean of its area (L*, a*, b* under D65, 2°), its pattern is left out; this is told. Where a finish was taken
 * from (`origin`) is not written.
 */
export function writeCsv(finishes: readonly Finish[], { mark = false }: CsvOptions = {}): WrittenCsv {
  const lost = { several: [] as string[], patterns: [] as string[], colors: [] as string[] };
  const rows = finishes.map((finish): Cells => {
    const color = carriedColor(finish);
    if (finish.components.length > 1) lost.several.push(finish.id);
    else if (color.isRewritten) lost.colors.push(finish.id);
    const isCarried =
      finish.pattern.kind === 'plain' || (finish.pattern.kind === 'brushed' && finish.class === 'metal');
    if (finish.components.length === 1 && !isCarried) lost.patterns.push(finish.id);
    return cellsOf(finish, color.cells);
  });
  const wavelengths = [...new Set(rows.flatMap((row) => Object.keys(row).filter((key) => key.startsWith('spd_'))))];
  wavelengths.sort((a, b) => Number(a.slice(4)) - Number(b.slice(4)));
  const later = LATER.filter((column) => rows.some((row) => row[column] !== undefined));
  const headings = [...FIRST, ...later, ...wavelengths];
  const table = rows.map((row) => headings.map((heading) => written(heading, row[heading])));
  const text = Papa.unparse([headings, ...table], { newline: '\r\n' });
  return { text: `${mark ? '\uFEFF' : ''}${text}\r\n`, notices: lostNotices(lost) };
}

const written = (heading: string, value: string | number | undefined): string =>
  value === undefined ? '' : TEXTS.has(heading) ? guardedText(String(value)) : String(value);

function cellsOf(finish: Finish, color: ColorCells): Cells {
  const { id, label, supply = {}, piece_mm, slab_mm, note = '' } = finish;
  const tail = `, ${id}`;
  const at = note.lastIndexOf(SOURCE);
  const hasSource = at === 0 || (at > 0 && note[at - 1] === ' ');
  return {
    schema: 1,
    code: id,
    name: label.endsWith(tail) ? label.slice(0, -tail.length) : label,
    family: finish.class,
    ...color,
    lrv: color.lrv ?? (finish.components.length === 1 ? finish.components[0]!.lrv : undefined),
    gloss_60: finish.gloss_gu,
    texture: finish.pattern.kind === 'plain' ? 'smooth' : finish.pattern.kind,
    source: hasSource ? note.slice(at + SOURCE.length) : undefined,
    variation: finish.variation,
    provenance: finish.provenance,
    uncertainty_de00: finish.uncertainty_de00,
    piece_width_mm: piece_mm?.[0],
    piece_length_mm: piece_mm?.[1],
    slab_length_mm: slab_mm?.[0],
    slab_width_mm: slab_mm?.[1],
    thickness_mm: finish.thickness_mm,
    order_code: supply.code,
    supplier: supply.supplier,
    unit: supply.unit,
    pack: supply.pack,
    lead_time_weeks: supply.lead_time_weeks,
    price: supply.price?.amount,
    price_currency: supply.price?.currency,
    price_per: supply.price?.per,
    price_band: supply.price_band,
    availability: supply.availability,
    tags: finish.tags?.join('; '),
    note: (hasSource ? note.slice(0, at).trim() : note) || undefined,
  };
}

/** More ids than this hide the message. */
const MOST_IDS = 5;

function lostNotices({ several, patterns, colors }: Record<'several' | 'patterns' | 'colors', readonly string[]>) {
  const listed = (ids: readonly string[]) =>
    ids.length > MOST_IDS ? `${ids.slice(0, MOST_IDS).join(', ')} and ${ids.length - MOST_IDS} more` : ids.join(', ');
  const tell = (code: string, ids: readonly string[], words: string): readonly Problem[] =>
    ids.length > 0
      ? [sheetProblem(code, `${counted(ids.length, 'finish', 'finishes')} ${words}: ${listed(ids)}.`, KEEP_WHOLE)]
      : [];
  return [
    ...tell('several-colors', several, 'of several colors stand in the table with the mean of their area'),
    ...tell('pattern-lost', patterns, 'stand in the table without their pattern'),
    ...tell('color-rewritten', colors, 'stand in the table with L*, a*, b* instead of the color as it was given'),
  ];
}

const KEEP_WHOLE = 'Save the library as a file of this program to keep all of it.';
