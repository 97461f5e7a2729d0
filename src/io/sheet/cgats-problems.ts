import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';

interface Told {
  readonly line: number;
  readonly count: number;
}

export const noTable = (file: string): Problem => ({
  code: 'no-table',
  text: 'The file has no table of data: BEGIN_DATA_FORMAT and BEGIN_DATA are missing.',
  at: placeIn(file, 1),
  remedy: 'Choose a file in the form of CGATS.17 or ISO 28178, with its data.',
});

export const noRows = (line: number, file: string): Problem => ({
  code: 'no-rows',
  text: `Line ${line}: the table that starts here has no rows.`,
  at: placeIn(file, line),
  remedy: 'Export the file again, with its data.',
});

export const tooMany = (what: string, line: number, file: string): Problem => ({
  code: 'too-many-rows',
  text: `Line ${line}: with this table the file has more than ${what}.`,
  at: placeIn(file, line),
  remedy: 'Split it into several files.',
});

export const unfinished = (line: number, missing: string, file: string): Problem => ({
  code: 'unfinished-table',
  text: `Line ${line}: the table that starts here has no ${missing}.`,
  at: placeIn(file, line),
  remedy: 'Fetch or export the file again: it may be cut off.',
});

export const noColors = (line: number, fields: readonly string[], file: string): Problem => {
  const isDevice = fields.some((name) => /^(CMYK?|\d+CLR|RGB|K|GRAY)_?/i.test(name));
  return {
    code: isDevice ? 'device-colors-only' : 'no-colors',
    text: isDevice
      ? `Line ${line}: the table that starts here has device colors only, which say nothing without the device's profile.`
      : `Line ${line}: the table that starts here has neither L*a*b*, XYZ nor a spectrum.`,
    at: placeIn(file, line),
    remedy: 'Export measured values: LAB_L LAB_A LAB_B, or a spectrum.',
  };
};

export const rgbOnly = (line: number, file: string): Problem => ({
  code: 'screen-colors',
  text: `Line ${line}: the table that starts here has RGB only; it is taken as screen colors (sRGB), with low confidence.`,
  at: placeIn(file, line),
  remedy: 'Export measured values if there are any: LAB_L LAB_A LAB_B, or a spectrum.',
});

export const wrongSets = ({ line, count }: Told, rows: number, file: string): Problem => ({
  code: 'set-count',
  text: `Line ${line}: NUMBER_OF_SETS is ${count}, but the data have ${rows} whole row${rows === 1 ? '' : 's'}. What is whole is read.`,
  at: placeIn(file, line),
  remedy:
    rows < count
      ? 'Look whether rows are missing at the end; fetch or export the file again.'
      : 'Nothing to do if all rows are right.',
});

export const wrongFields = ({ line, count }: Told, named: number, file: string): Problem => ({
  code: 'field-count',
  text: `Line ${line}: NUMBER_OF_FIELDS is ${count}, but ${named} fields are named. The names count.`,
  at: placeIn(file, line),
  remedy: 'Look whether names and values belong together; else export the file again.',
});

export const decimalComma = (line: number, file: string): Problem => ({
  code: 'decimal-comma',
  text: `Numbers have decimal commas, first in line ${line}.`,
  at: placeIn(file, line),
  remedy: 'Nothing to do if that is right.',
});

/** `tables` in the order in which they count. */
export const tablesJoined = (
  tables: readonly { readonly line: number; readonly condition: string | null }[],
  file: string,
): Problem => {
  const [first, ...others] = tables.map(({ line, condition }) => `${condition ? `${condition}, ` : ''}line ${line}`);
  return {
    code: 'tables-joined',
    text: `Tables hold the same samples and are read as one: what the table of ${first} gives goes before that of ${others.join(' and ')}.`,
    at: placeIn(file, tables[0]!.line),
    remedy: 'Nothing to do if that is right.',
  };
};
