import { bandPrefix, bandsOf, type CgatsBand } from '../cgats-bands';
import { meaningOfHeading } from './field-of-heading';
import type { Field } from './types';

/** Names of the standard and of dialects, in capitals without lines below. */
const NAMES: Readonly<Record<string, Field>> = {
  SAMPLEID: 'code',
  SAMPLENAME: 'name',
  LABL: 'lab_l',
  LABA: 'lab_a',
  LABB: 'lab_b',
  LCHL: 'lch_l',
  LABC: 'lch_c',
  LCHC: 'lch_c',
  LABH: 'lch_h',
  LCHH: 'lch_h',
  XYZX: 'xyz_x',
  XYZY: 'xyz_y',
  XYZZ: 'xyz_z',
  RGBR: 'rgb_r',
  RGBG: 'rgb_g',
  RGBB: 'rgb_b',
};

/** What is put in the places of x, y and Y. */
const XYZ_OF_XYY = ['xyz_x', 'xyz_z', 'xyz_y'] as const;

/** Colors have names of their own in this format; other headings are taken as in any table. */
const NO_HEADING = /^(lab|lch|xyz|rgb)_|^nm:/;

/** Nothing shorter or longer is seen; a number outside belongs to something else. */
const NM_FROM = 300;
const NM_TO = 900;

/** Fewer columns named by a number are no spectrum. */
const LEAST_BANDS = 3;

/** What the fields of a table are. */
export interface CgatsColumns {
  /** One per field; bands in pairs have none. */
  readonly fields: readonly (Field | null)[];
  readonly bands: readonly CgatsBand[];
  /** Places of x, y and Y; null where they are not given. */
  readonly xyY: readonly [x: number, y: number, Y: number] | null;
  /** What colors there are: measured or computed ones; RGB and nothing better; none, or such as say nothing without a profile. */
  readonly colors: 'measured' | 'rgb' | 'none';
  /** How the fields of a spectrum in pairs are named. */
  readonly named: 'factor' | 'percent' | null;
}

export function cgatsColumns(names: readonly string[]): CgatsColumns {
  const keys = names.map((name) => name.toUpperCase().replace(/[_ ]/g, ''));
  const bands = spectrumAmong(names, bandsOf(names));
  const xyY = tripleOf(keys, ['XYYX', 'XYYY', 'XYYCAPY']);
  const fields = keys.map((key): Field | null => (Object.hasOwn(NAMES, key) ? NAMES[key]! : null));
  for (const [i, name] of names.entries()) {
    const field = fields[i] ?? meaningOfHeading(name)?.field ?? null;
    if (field && !NO_HEADING.test(field) && !fields.includes(field)) fields[i] = field;
  }
  for (const { nm, value } of bands) if (typeof nm === 'number') fields[value] = `nm:${nm}`;

  const has = (field: Field) => fields.includes(field);
  // LAB_C and LAB_H go with the LAB_L of LAB_A and LAB_B; alone they make a color with it.
  if (has('lch_c') && !has('lab_a')) fields[fields.indexOf('lab_l')] = 'lch_l';
  else if (!has('lch_l')) drop(fields, ['lch_c', 'lch_h']);
  const hasColor = has('lab_a') || has('lch_c') || has('xyz_x') || xyY !== null || bands.length > 0;
  const hasRgb = has('rgb_r') && has('rgb_g') && has('rgb_b');
  if (hasColor) drop(fields, ['rgb_r', 'rgb_g', 'rgb_b']);
  const isXyY = xyY !== null && !has('xyz_x');
  if (isXyY) for (const [k, field] of XYZ_OF_XYY.entries()) fields[xyY[k]!] = field;
  return {
    fields: once(fields),
    bands,
    xyY: isXyY ? xyY : null,
    colors: hasColor ? 'measured' : hasRgb ? 'rgb' : 'none',
    named: keys.includes('SPECTRALPCT') ? 'percent' : keys.includes('SPECTRALDEC') ? 'factor' : null,
  };
}

/** The bands of one spectrum: those in pairs, or the most columns that are named alike. */
function spectrumAmong(names: readonly string[], bands: readonly CgatsBand[]): readonly CgatsBand[] {
  if (bands.some(({ nm }) => typeof nm !== 'number')) return bands;
  const alike = new Map<string, CgatsBand[]>();
  for (const band of bands) {
    const nm = band.nm as number;
    const prefix = bandPrefix(names[band.value]!);
    if (!(nm >= NM_FROM && nm <= NM_TO) || /STD|DEV|SIGMA|ERR/.test(prefix)) continue;
    const group = alike.get(prefix);
    if (group) group.push(band);
    else alike.set(prefix, [band]);
  }
  const most = [...alike.values()].reduce((best, group) => (group.length > best.length ? group : best), []);
  return most.length >= LEAST_BANDS ? most : [];
}

function tripleOf(keys: readonly string[], wanted: readonly [string, string, string]): [number, number, number] | null {
  const [x, y, Y] = wanted.map((key) => keys.indexOf(key)) as [number, number, number];
  return x >= 0 && y >= 0 && Y >= 0 ? [x, y, Y] : null;
}

function drop(fields: (Field | null)[], unwanted: readonly Field[]): void {
  for (const [i, field] of fields.entries()) if (field && unwanted.includes(field)) fields[i] = null;
}

/** Of two columns for one field the first. */
const once = (fields: readonly (Field | null)[]): readonly (Field | null)[] =>
  fields.map((field, i) => (field && fields.indexOf(field) < i ? null : field));
