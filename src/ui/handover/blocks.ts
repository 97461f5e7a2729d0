import type { ReactNode } from 'react';

/** Something that stands on one page whole. */
export interface FlowBlock {
  readonly kind: 'flow';
  readonly key: string;
  readonly node: ReactNode;
  /** A heading or an introduction: never the last thing on a page. */
  readonly keeps?: boolean;
}

/** A column of a table; widths are parts of their sum. */
export interface SheetColumn {
  readonly head: string;
  readonly width: number;
  readonly align?: 'end';
}

export interface SheetRow {
  readonly key: string;
  /** One a column; the first is the head of the row. */
  readonly cells: readonly ReactNode[];
  /** Stands apart from the row above by a heavier line. */
  readonly begins?: boolean;
}

/** A table that may go on on the next page, under its column heads again. A row never splits. */
export interface TableBlock {
  readonly kind: 'table';
  readonly key: string;
  /** What it holds, for those who cannot see it. */
  readonly label: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  /** `facts`: the columns need no heads. `forms`, `lines`: to be written in, with lines between columns and much or some room in a row. */
  readonly look?: 'facts' | 'forms' | 'lines';
}

export type Block = FlowBlock | TableBlock;

/** A part of the set that flows over as many pages as it needs. */
export interface FlowPart {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  /** Stands left of the blocks on every page of the part. */
  readonly aside?: ReactNode;
}

/** A part that fills one page. */
export interface PagePart {
  readonly id: string;
  readonly title: string;
  readonly page: ReactNode;
  /** The page says its title itself. */
  readonly isUntitled?: boolean;
}

/** A part of the handover set; each begins on a page of its own. */
export type SheetPart = FlowPart | PagePart;
