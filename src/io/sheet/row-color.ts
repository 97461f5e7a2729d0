import type { Conditions, GivenColor, Specular } from '../../engine/finish/given-color';
import { hueWordOf } from '../../engine/finish/hue-words';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { LIGHT_IDS } from '../../engine/spectrum/lights';
import { isBlank } from './cell-number';
import { plainText } from './cell-text';
import { type Columns, cellOf } from './columns';
import { bareHeading, headingKey } from './field-of-heading';
import { isCellProblem, type NumberFieldId, numberOf } from './row-numbers';
import { GLOWING, rowSpectrum, type SpectrumLayout } from './row-spectrum';
import { conditionsInCell, conditionsInWords, observerInCell, otherLightIn, specularInCell } from './said-conditions';
import { quoted, sheetProblem } from './sheet-problem';
import type { SheetConditions, SheetRow } from './types';

/** How the numbers of a sheet are to be read, found out once for all rows. */
export interface ColorReading {
  readonly columns: Columns;
  /** Of rows that say none: what the file says, then what the person says. */
  readonly said: SheetConditions;
  readonly spectrum: SpectrumLayout | null;
  /** What numbers are multiplied by: 100 or 1 for XYZ and LRV, 255 or 1 for RGB. */
  readonly scales: { readonly lum: number; readonly xyz: number; readonly rgb: number; readonly lrv: number };
}

/** The color a row is known by, and what else it says of it. */
export interface RowColor {
  readonly color: GivenColor;
  /** Other notations of the same color, less trusted. */
  readonly others: readonly GivenColor[];
  readonly lrv?: number;
  readonly notices: readonly Problem[];
}

/** Code of a color that has numbers but neither a light nor an observer they hold for. */
export const CONDITIONS_MISSING = 'conditions-missing';

/** A notation is shorter; what is longer is wrong from its beginning on, and would take long to find so. */
const MOST_IN_NOTATION = 60;

type Triple = readonly [number, number, number];

/**
 * The color of a row by its most trusted notation: spectrum, L*a*b*, LCh, XYZ, Munsell, hex, RGB, LRV with a color word in the name.
 * Problems: words or impossible numbers in any of their cells, 'color-incomplete', 'no-color', 'conditions-missing'.
 */
export function colorOfRow(reading: ColorReading, row: SheetRow, name: string): Result<RowColor> {
  const { columns, said, scales } = reading;
  const specular = specularOfRow(reading, row);
  const conditions = conditionsOfRow(reading, row);
  const found: GivenColor[] = [];
  let missing: Problem | null = null;
  let isOpen = false;
  let glowing: Problem | null = null;
  if (reading.spectrum) {
    const read = rowSpectrum(reading.spectrum, columns, row);
    if (!read.ok && read.problem.code !== GLOWING) return read;
    if (!read.ok) glowing = read.problem;
    else if (read.value) found.push({ ...read.value, ...(specular && { specular }) });
  }
  for (const kind of ['lab', 'lch', 'xyz', 'xyy'] as const) {
    const read = kind === 'xyy' ? xyyOf(reading, row) : tripleOf(columns, row, kind, kind === 'xyz' ? scales.xyz : 1);
    if (!read.ok) {
      if (read.problem.code !== 'color-incomplete') return read;
      missing ??= read.problem;
    } else if (read.value) {
      if (!conditions.ok) return conditions;
      if (!conditions.value) isOpen = true;
      else found.push(numberColor(kind === 'xyy' ? 'xyz' : kind, read.value, conditions.value, specular));
    }
  }
  const munsell = cellOf(columns, row, 'munsell');
  if (!isBlank(munsell)) found.push({ kind: 'munsell', munsell: plainText(munsell).text.slice(0, MOST_IN_NOTATION) });
  const hex = hexOfRow(columns, row);
  if (!hex.ok) return hex;
  if (hex.value) found.push({ kind: 'hex', hex: hex.value });
  const rgb = tripleOf(columns, row, 'rgb', scales.rgb);
  if (!rgb.ok) {
    if (rgb.problem.code !== 'color-incomplete') return rgb;
    missing ??= rgb.problem;
  } else if (rgb.value) found.push({ kind: 'hex', hex: hexOfRgb(rgb.value) });
  const printed = numberOf(columns, row, 'lrv', scales.lrv);
  if (isCellProblem(printed)) return failure(printed.problem);
  const lrv = isOfOtherLight(columns, conditions.ok ? conditions.value : null) ? null : printed;

  // Numbers without a light are worth more than a screen color: they wait for the answer.
  const first = found[0];
  if (isOpen && first?.kind !== 'spectrum') return failure(conditionsMissing(said, row.line));
  if (glowing) {
    const numbers = found.filter(({ kind }) => kind === 'lab' || kind === 'lch' || kind === 'xyz');
    if (numbers.length === 0) return failure(glowing);
    return success({
      color: numbers[0]!,
      others: found.filter((one) => one !== numbers[0]),
      ...(lrv !== null && { lrv }),
      notices: [{ ...glowing, text: `${glowing.text} Its numbers were taken instead.` }],
    });
  }
  if (first) {
    const notices = missing ? [{ ...missing, remedy: 'Another notation of the row was taken.' }] : [];
    return success({ color: first, others: found.slice(1), ...(lrv !== null && { lrv }), notices });
  }
  if (missing) return failure(missing);
  return lrv === null ? failure(noColor(row.line)) : colorByName(lrv, name, row.line);
}

const FIELDS_OF = {
  lab: ['lab_l', 'lab_a', 'lab_b'],
  lch: ['lch_l', 'lch_c', 'lch_h'],
  xyz: ['xyz_x', 'xyz_y', 'xyz_z'],
  xyy: ['xyy_x', 'xyy_y', 'xyy_lum'],
  rgb: ['rgb_r', 'rgb_g', 'rgb_b'],
} as const satisfies Record<string, readonly NumberFieldId[]>;

/** Three numbers, or null where none is given; C* and h may share their L* with a* and b*. */
function tripleOf(columns: Columns, row: SheetRow, kind: keyof typeof FIELDS_OF, scale: number): Result<Triple | null> {
  const fields = FIELDS_OF[kind].map((field) => (field === 'lch_l' && !columns.at.has(field) ? 'lab_l' : field));
  const own = fields.filter((field) => !(kind === 'lch' && field === 'lab_l'));
  if (!own.some((field) => columns.at.has(field))) return success(null);
  const values: (number | null)[] = [];
  for (const field of fields) {
    const value = numberOf(columns, row, field, scale);
    if (isCellProblem(value)) return failure(value.problem);
    values.push(value);
  }
  if (own.every((field) => isBlank(cellOf(columns, row, field)))) return success(null);
  const empty = values.indexOf(null);
  if (empty < 0) return success(values as unknown as Triple);
  const what = {
    lab: ['L*', 'a*', 'b*'],
    lch: ['L*', 'C*', 'h'],
    xyz: ['X', 'Y', 'Z'],
    xyy: ['x', 'y', 'Y'],
    rgb: ['R', 'G', 'B'],
  }[kind];
  const words = `${what[empty]} is missing; the other numbers of the color are there.`;
  return failure(sheetProblem('color-incomplete', words, 'Fill it in: an empty cell is not 0.', undefined, row.line));
}

/** X, Y, Z of x, y, Y: X = x Y/y and Z = (1 - x - y) Y/y (CIE 15). */
function xyyOf({ columns, scales }: ColorReading, row: SheetRow): Result<Triple | null> {
  const read = tripleOf(columns, row, 'xyy', 1);
  if (!read.ok || !read.value) return read;
  const [x, y, given] = read.value;
  const lum = given * scales.lum;
  if (lum === 0) return success([0, 0, 0]);
  if (y > 0 && x + y <= 1) {
    return success(
      [(x * lum) / y, lum, ((1 - x - y) * lum) / y].map((one) => Number(one.toPrecision(8))) as unknown as Triple,
    );
  }
  const words = `x is ${x} and y is ${y}, which no color has.`;
  return failure(
    sheetProblem(
      'bad-chromaticity',
      words,
      'Correct x and y: with y above 0 they sum to 1 at most.',
      undefined,
      row.line,
    ),
  );
}

function numberColor(
  kind: 'lab' | 'lch' | 'xyz',
  triple: Triple,
  { illuminant, observer_deg }: Conditions,
  specular: Specular | undefined,
): GivenColor {
  const under = { illuminant, observer_deg, ...(specular && { specular }) };
  if (kind === 'lab') return { kind, lab: triple, ...under };
  return kind === 'lch' ? { kind, lch: triple, ...under } : { kind, xyz: triple, ...under };
}

/** No light, observer or geometry takes more. */
const MOST_LETTERS = 80;

/** Light and observer: of the row, else of the file, else as the person said; null where one of them is open. */
function conditionsOfRow({ columns, said }: ColorReading, row: SheetRow): Result<Conditions | null> {
  const light = cellOf(columns, row, 'illuminant');
  const own = isBlank(light) || light.length > MOST_LETTERS ? {} : conditionsInCell(light);
  const other = light.length > MOST_LETTERS ? null : otherLightIn(light);
  if (other || (!isBlank(light) && !own.illuminant && !own.observer_deg)) {
    return failure(unknownLight(light, other !== null, row.line));
  }
  const cell = cellOf(columns, row, 'observer_deg');
  const observer = isBlank(cell) ? own.observer_deg : observerInCell(cell.slice(0, MOST_LETTERS));
  if (observer === null) {
    const words = `${quoted(cell)} is no CIE observer.`;
    return failure(sheetProblem('unknown-observer', words, 'Write 2 or 10.', undefined, row.line));
  }
  const illuminant = own.illuminant ?? said.illuminant;
  const observer_deg = observer ?? said.observer_deg;
  return success(illuminant && observer_deg ? { illuminant, observer_deg } : null);
}

function specularOfRow({ columns, said }: ColorReading, row: SheetRow): Specular | undefined {
  const cell = cellOf(columns, row, 'specular');
  return (isBlank(cell) ? undefined : specularInCell(cell.slice(0, MOST_LETTERS))) ?? said.specular;
}

/** A column called Y holds for the light of its row, an LRV for D65 and 10° (BS 8493). */
function isOfOtherLight({ at, headings }: Columns, ofRow: Conditions | null): boolean {
  const column = headings[at.get('lrv') ?? -1];
  if (column?.field !== 'lrv' || headingKey(bareHeading(column.heading)) !== 'y') return false;
  const { illuminant = ofRow?.illuminant, observer_deg = ofRow?.observer_deg } = conditionsInWords([column.heading]);
  return (illuminant !== undefined && illuminant !== 'D65') || observer_deg === 2;
}

function hexOfRow(columns: Columns, row: SheetRow): Result<string | null> {
  const cell = cellOf(columns, row, 'hex');
  if (isBlank(cell)) return success(null);
  const digits = /^(?:#|0x)?([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(cell.trim())?.[1]?.toLowerCase();
  if (digits) return success(`#${digits.length === 3 ? [...digits].map((one) => one + one).join('') : digits}`);
  const words = `${quoted(cell)} is no hex code.`;
  return failure(sheetProblem('bad-hex', words, 'Write six hexadecimal digits, like #a1b2c3.', undefined, row.line));
}

const hexOfRgb = (rgb: Triple): string =>
  `#${rgb.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('')}`;

/** Names often end in a word for their color: "Harbor Warm Gray". */
function colorByName(lrv: number, name: string, line: number): Result<RowColor> {
  const words = name.split(/[\s,]+/);
  const hue = [words, words.slice(-2), words.slice(-1)].map((part) => hueWordOf(part.join(' '))).find((one) => one);
  if (!hue) return failure(noColor(line));
  const said = `The row has no color but an LRV of ${lrv}; which color it is was taken from its name: ${hue}.`;
  const notice = sheetProblem('color-from-name', said, 'Give L*, a*, b* for a firmer verdict.', undefined, line);
  return success({ color: { kind: 'lrv', lrv, hue }, others: [], notices: [notice] });
}

const noColor = (line: number): Problem =>
  sheetProblem('no-color', 'The row has no color.', 'Give L*, a*, b*, a spectrum or a hex code.', undefined, line);

function conditionsMissing({ illuminant, observer_deg }: SheetConditions, line: number): Problem {
  const words = illuminant
    ? `The numbers hold for ${illuminant}, but neither the row nor the file says for which observer.`
    : observer_deg
      ? `The numbers hold for the ${observer_deg}° observer, but neither the row nor the file says under which light.`
      : 'Neither the row nor the file says which light and observer the numbers hold for.';
  const remedy = 'Say it: paints are usually given for D65 and 10°, graphic arts for D50 and 2°.';
  return sheetProblem(CONDITIONS_MISSING, words, remedy, undefined, line);
}

function unknownLight(cell: string, isOther: boolean, line: number): Problem {
  const what = isOther ? 'is a light whose table is not held here' : 'is no CIE light that is known here';
  const remedy = `Use one of ${LIGHT_IDS.join(', ')}${isOther ? '; ask for the numbers under D65 or D50' : ''}.`;
  return sheetProblem('unknown-illuminant', `${quoted(cell)} ${what}.`, remedy, undefined, line);
}
