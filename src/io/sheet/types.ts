import type { Conditions, Specular } from '../../engine/finish/given-color';
import type { FinishClass, Provenance } from '../../engine/finish/types';
import type { Problem } from '../../engine/result';
import type { Finish } from '../../model/project';

/** Formats that hold many finishes. */
export type SheetFormat = 'csv' | 'cgats' | 'cxf' | 'icc';

export const FIELDS = [
  'code',
  'name',
  'class',
  'lab_l',
  'lab_a',
  'lab_b',
  'lch_l',
  'lch_c',
  'lch_h',
  'xyz_x',
  'xyz_y',
  'xyz_z',
  'xyy_x',
  'xyy_y',
  'xyy_lum',
  'hex',
  'rgb_r',
  'rgb_g',
  'rgb_b',
  'munsell',
  'lrv',
  'illuminant',
  'observer_deg',
  'specular',
  'gloss_60',
  'texture',
  'variation',
  'provenance',
  'uncertainty_de00',
  'piece_width_mm',
  'piece_length_mm',
  'slab_length_mm',
  'slab_width_mm',
  'thickness_mm',
  'order_code',
  'supplier',
  'unit',
  'pack',
  'lead_time_weeks',
  'price',
  'price_currency',
  'price_per',
  'price_band',
  'availability',
  'tags',
  'note',
  'source',
] as const;

/** What a column of a sheet means; `nm:450` holds the reflectance at 450 nm. */
export type Field = (typeof FIELDS)[number] | `nm:${number}`;

export interface SheetColumn {
  /** As the file writes it; '' where it has none. */
  readonly heading: string;
  /** What it was taken for; null where nothing is known of it. */
  readonly field: Field | null;
}

export interface SheetRow {
  /** Number of the row among all of the file, refused ones too, from 1; absent where none was refused. */
  readonly row?: number;
  /** Line of the file the row begins in, from 1. */
  readonly line: number;
  /** One per column, as written; '' where it is empty. */
  readonly cells: readonly string[];
}

/** Conditions of all rows that say nothing of their own. */
export interface SheetConditions extends Partial<Conditions> {
  readonly specular?: Specular;
  /** How reflectances are written; found out from the values. */
  readonly scale?: 'factor' | 'percent';
}

/** A row that makes no finish, with what is wrong (`problem.at.line`) and what to do. */
export interface RefusedRow {
  readonly row: number;
  readonly code: string | null;
  readonly name: string | null;
  readonly problem: Problem;
}

/** A file of finishes as it stands, before anything is made of it. */
export interface Sheet {
  readonly format: SheetFormat;
  readonly file: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  readonly said: SheetConditions;
  /** Columns that nothing is known of and nothing else is told of, by number. */
  readonly unknown?: readonly number[];
  /** A comma in a number is its decimal mark. */
  readonly decimalComma?: boolean;
  /** Rows the reader of the format had to refuse. */
  readonly refused: readonly RefusedRow[];
  /** Of the whole file: encoding, decimal comma, scale, ... */
  readonly notices: readonly Problem[];
}

/** What the person who imports says; what is left open is taken from the row, then from the file. */
export interface ImportChoices {
  /** Meaning of columns other than the one they were taken for, by column number; null: leave it out. */
  readonly fields?: Readonly<Record<number, Field | null>>;
  /** Of rows that say none. */
  readonly class?: FinishClass;
  /** What words for materials mean, by `materialKey`; others as they are understood. */
  readonly classes?: Readonly<Record<string, FinishClass>>;
  /** A gloss for all of them, or what is usual for the class of each. */
  readonly gloss_gu?: number | 'usual';
  readonly conditions?: Conditions;
  readonly provenance?: Provenance;
  readonly scale?: 'factor' | 'percent';
}

/**
 * What has to be said, with how many rows wait for it. Rows without class or conditions stand among the refused until it is; for a gloss
 * that nobody gave that usual for the class is taken and said, so these rows are kept.
 */
export interface ImportQuestion {
  readonly about: 'class' | 'conditions' | 'gloss' | 'columns' | 'scale';
  readonly rows: number;
  /** What is usual, to begin with; absent where nothing is. */
  readonly usual?: ImportChoices;
}

/** A row that made a finish. */
export interface KeptRow {
  readonly row: number;
  readonly finish: Finish;
  readonly notices: readonly Problem[];
}

/** A word of the file for a material, what it was taken for (null: not understood), and in how many rows it stands. */
export interface MaterialWord {
  readonly word: string;
  readonly class: FinishClass | null;
  readonly rows: number;
}

/** The outcome of an import, row by row in the order of the file. */
export interface ImportOutcome {
  readonly kept: readonly KeptRow[];
  readonly refused: readonly RefusedRow[];
  readonly questions: readonly ImportQuestion[];
  readonly notices: readonly Problem[];
  /** Words for materials; our own names of classes are left out. */
  readonly words: readonly MaterialWord[];
}
