import type { Sheet } from './types';

/** Whether a table is none: of all its columns no heading or value was understood, but for names, so that no row can be a finish. */
export const isWordsOnly = ({ format, columns, rows }: Pick<Sheet, 'format' | 'columns' | 'rows'>): boolean =>
  format === 'csv' && rows.length > 0 && columns.every(({ field }) => field === null || field === 'name');
