import { failure, type Problem, type Result } from '../engine/result';
import { type IesCursor, type IesNumber, iesProblem, nextRecord } from './ies-numbers';
import { MOST_CANDELA, tooManyCandela } from './ies-web';

const FOOT_M = 0.3048;
/** No luminous opening of a room is larger (our judgment); feet taken for inches are. */
const LARGEST_OPENING_M = 20;

const FIELDS = {
  bulbs: 'the number of bulbs',
  bulbLumens: 'the lumens of a bulb',
  multiplier: 'the multiplier',
  rows: 'the number of vertical angles',
  columns: 'the number of horizontal angles',
  type: 'the photometric type',
  units: 'the unit of length',
  width: 'the width',
  length: 'the length',
  height: 'the height',
  ballast: 'the ballast factor',
  former: 'the second ballast factor',
  watts: 'the watts',
};

/** The numbers that stand before the angles. */
export type IesFields = Readonly<Record<keyof typeof FIELDS, IesNumber>>;

/** Reads and checks the numbers before the angles. */
export function readIesFields(cursor: IesCursor): Result<IesFields> {
  const read = nextRecord(cursor, FIELDS);
  const problem = read.ok ? fieldsProblem(read.value, cursor.file) : null;
  return problem ? failure(problem) : read;
}

function fieldsProblem(fields: IesFields, file?: string): Problem | null {
  const { bulbs, multiplier, rows, columns, type, units, ballast } = fields;
  const wrong = (code: string, { line }: IesNumber, what: string, remedy: string): Problem =>
    iesProblem(code, line, what, remedy, file);
  const count = [
    { number: bulbs, least: 1, what: 'bulbs' },
    { number: rows, least: 2, what: 'vertical angles' },
    { number: columns, least: 1, what: 'horizontal angles' },
  ].find(({ number, least }) => !(Number.isInteger(number.value) && number.value >= least));
  if (count) {
    const { number, least, what } = count;
    const text = `${number.value} is no number of ${what}; there must be at least ${least}.`;
    return wrong('bad-count', number, text, 'Correct it, or fetch the file again.');
  }
  if (rows.value * columns.value > MOST_CANDELA) return tooManyCandela(rows.line, rows.value * columns.value, file);
  if (type.value !== 1) return typeProblem(type, file);
  if (units.value !== 1 && units.value !== 2) {
    const text = `the unit of length is ${units.value}; 1 (feet) and 2 (meters) are known.`;
    return wrong('bad-unit', units, text, 'Correct it: most files of today are in meters, 2.');
  }
  const sides = [fields.width, fields.length];
  const large = sides.find(({ value }) => !(Math.abs(value) * unitOf(fields) <= LARGEST_OPENING_M));
  if (large) {
    const text = `an opening of ${large.value} ${units.value === 1 ? 'feet' : 'meters'} is larger than any lamp of a room.`;
    return wrong('bad-size', large, text, 'Correct the size or its unit: 1 means feet, 2 means meters.');
  }
  const factor = [multiplier, ballast].find(({ value }) => !(value > 0));
  if (!factor) return null;
  const text = `${factor === ballast ? 'the ballast factor' : 'the multiplier'} is ${factor.value}; it must be over 0.`;
  return wrong('bad-factor', factor, text, 'Write 1 where nothing else is known.');
}

function typeProblem({ value, line }: IesNumber, file?: string): Problem {
  const letter = value === 2 ? 'B' : value === 3 ? 'A' : '';
  const text = letter
    ? `the lamp was measured as type ${letter}, about a level axis, as floodlights and car lamps are.`
    : `the photometric type is ${value}; only 1 (type C) is read.`;
  return iesProblem('not-type-c', line, text, 'Ask for the file in type C, which lamps of rooms have.', file);
}

const unitOf = ({ units }: IesFields): number => (units.value === 1 ? FOOT_M : 1);

/** Width and length of the luminous opening, m. Negative sides are diameters; where a round opening has only one of them, it holds both ways. */
export function openingOf(fields: IesFields): readonly [number, number] {
  const [width, length] = [fields.width.value, fields.length.value];
  const across = width === 0 && length < 0 ? length : width;
  const along = length === 0 && width < 0 ? width : length;
  return [Math.abs(across) * unitOf(fields), Math.abs(along) * unitOf(fields)];
}
