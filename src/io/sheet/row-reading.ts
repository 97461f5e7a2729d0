import type { Problem } from '../../engine/result';
import type { Columns } from './columns';
import type { SheetRow } from './types';

/** Reads the cells of one row that do not refuse it; collects what has to be told of them. */
export interface RowReading {
  readonly columns: Columns;
  readonly row: SheetRow;
  readonly notices: Problem[];
}
