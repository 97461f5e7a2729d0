import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';
import { cellNumber } from '../table-cells';
import type { XmlElement } from '../xml-reader';
import { childOf, childrenOf } from './cxf-elements';
import { type CxfSpecification, mirrorPartOf, wavelength } from './cxf-specifications';
import { CONDITIONS_BEST_FIRST, conditionIn, type MeasurementCondition } from './measurement-condition';
import { quoted } from './sheet-problem';
import type { Field } from './types';

/** Ways in which files depart from the standard and are understood all the same. */
export type CxfDialect = 'no-reference' | 'own-steps' | 'no-date';

/** One measurement of an object, or one color of it in numbers. */
export interface CxfValue {
  readonly element: XmlElement;
  readonly specification: CxfSpecification;
  readonly condition: MeasurementCondition | null;
  readonly specular: CxfSpecification['specular'];
}

export interface CxfSpectrum {
  readonly start_nm: number;
  readonly step_nm: number;
  readonly values: readonly string[];
  readonly greatest: number;
}

/** Colors in numbers, the most direct first: element, its children, and the fields they fill. */
const COLORS: readonly (readonly [name: string, children: readonly string[], fields: readonly Field[]])[] = [
  ['ColorCIELab', ['L', 'A', 'B'], ['lab_l', 'lab_a', 'lab_b']],
  ['ColorCIELCh', ['L', 'C', 'H'], ['lch_l', 'lch_c', 'lch_h']],
  ['ColorCIEXYZ', ['X', 'Y', 'Z'], ['xyz_x', 'xyz_y', 'xyz_z']],
  ['ColorCIExyY', ['x', 'y', 'Y'], ['xyz_x', 'xyz_y', 'xyz_z']],
];

export const COLOR_NAMES: readonly string[] = COLORS.map(([name]) => name);

const LEAST_VALUES = 3;
const MOST_VALUES = 1000;
/** Longer texts are no spectra. */
const MOST_LETTERS = 40 * MOST_VALUES;

/** The value with the specification that it refers to; a problem where there is none. */
export function withSpecification(
  element: XmlElement,
  specifications: ReadonlyMap<string, CxfSpecification | 'twice'>,
  dialects: Set<CxfDialect>,
  file: string,
): CxfValue | Problem {
  const id = element.attributes.get('ColorSpecification');
  const only = id === undefined && specifications.size === 1 ? [...specifications.values()][0] : undefined;
  if (only) dialects.add('no-reference');
  const specification = only ?? specifications.get(id ?? '');
  if (specification === undefined || specification === 'twice') {
    const what =
      id === undefined
        ? `${element.name} names no ColorSpecification`
        : specification
          ? `ColorSpecification ${quoted(id)} stands in the file more than once`
          : `ColorSpecification ${quoted(id)} is not in the file`;
    return wrongValue('bad-reference', element, `${what}: light, observer and wavelengths are not known`, file);
  }
  const name = `${element.attributes.get('Name') ?? ''} ${id ?? ''}`.replaceAll('_', ' ');
  return {
    element,
    specification,
    condition: specification.condition ?? conditionIn(name),
    specular: specification.specular ?? mirrorPartOf(name),
  };
}

/**
 * The best of several for a finish that is to be seen in a room. With the mirror-like reflection included before without it: the
 * whole reflectance is what light in a room meets, and what this program parts into body and gloss; without it the part that is
 * missing has to be guessed from the gloss. Then by measurement condition (see there). The first of equals.
 */
export function bestOf(values: readonly CxfValue[]): CxfValue | null {
  return values.reduce<CxfValue | null>((best, one) => (best && rank(best) <= rank(one) ? best : one), null);
}

function rank({ condition, specular, specification }: CxfValue): number {
  // What says nothing of itself is taken as an ordinary measurement.
  const ofCondition = condition ? CONDITIONS_BEST_FIRST.indexOf(condition) : 1;
  return (specular === 'included' ? 0 : 100) + (specification.geometry === 'other-angle' ? 10 : 0) + ofCondition;
}

/** Condition and geometry of a value in a few letters; its name where nothing is known. */
export const labelOf = ({ element, condition, specular }: CxfValue): string =>
  [condition, specular === 'included' ? 'SCI' : specular === 'excluded' && !condition ? 'SCE' : null]
    .filter((word) => word !== null)
    .join(' ') || quoted(element.attributes.get('Name') ?? element.attributes.get('ColorSpecification') ?? '');

/** The greatest value of a spectrum as it is written; NaN where one is no number. */
export const greatestOf = ({ element }: CxfValue): number =>
  element.text.length > MOST_LETTERS ? Number.NaN : Math.max(...element.text.trim().split(/\s+/).map(cellNumber));

/** Wavelengths and values of a ReflectanceSpectrum. Steps are those of its specification. */
export function spectrumOf(
  { element, specification }: CxfValue,
  dialects: Set<CxfDialect>,
  file: string,
): CxfSpectrum | Problem {
  const values = element.text.split(/\s+/).filter((value) => value !== '');
  const wrong = (what: string) => wrongValue('bad-spectrum', element, what, file);
  if (values.length < LEAST_VALUES || values.length > MOST_VALUES)
    return wrong(`a spectrum has ${values.length} values`);
  const numbers = values.map(cellNumber);
  const bad = values[numbers.findIndex((value) => Number.isNaN(value))];
  if (bad !== undefined) return wrong(`${quoted(bad)} in a spectrum is not a number`);
  const start_nm = wavelength(element, 'StartWL') ?? specification.start_nm;
  if (start_nm === null) return wrong('a spectrum does not say at which wavelength it starts (StartWL)');
  const end_nm = wavelength(element, 'EndWL');
  const own = wavelength(element, 'Increment') ?? (end_nm ? (end_nm - start_nm) / (values.length - 1) : null);
  const step_nm = specification.step_nm ?? own;
  if (step_nm === null || step_nm <= 0)
    return wrong('a spectrum has no steps: its specification has no WavelengthRange');
  if (own !== null && Math.abs(own - step_nm) > 0.01) {
    return wrong(`a spectrum has steps of ${Number(own.toFixed(3))} nm, its specification says ${step_nm} nm`);
  }
  if (own !== null) dialects.add('own-steps');
  const last_nm = start_nm + step_nm * (values.length - 1);
  if (start_nm < 300 || last_nm > 900) {
    return wrong(`a spectrum goes from ${start_nm} to ${last_nm} nm, which is not of light that is seen`);
  }
  return { start_nm, step_nm, values, greatest: Math.max(...numbers) };
}

/** The fields that a color in numbers fills, xyY as XYZ; a problem where a number is missing. */
export function colorFields({ element }: CxfValue, file: string): ReadonlyMap<Field, string> | Problem {
  const [name, children, fields] = COLORS.find(([one]) => one === element.name)!;
  const texts = children.map((child) => childOf(element, child)?.text ?? '');
  const numbers = texts.map(cellNumber);
  const bad = numbers.findIndex((value) => Number.isNaN(value));
  if (bad >= 0) return wrongValue('bad-color', element, `${children[bad]} of ${name} is no number`, file);
  if (name !== 'ColorCIExyY') return new Map(fields.map((field, i) => [field, texts[i]!]));
  const [x, y, Y] = numbers as [number, number, number];
  if (!(y > 0) && Y !== 0) return wrongValue('bad-color', element, 'y of ColorCIExyY is not above 0', file);
  // X = x Y/y and Z = (1 - x - y) Y/y (CIE 15).
  const xyz = Y === 0 ? [0, 0, 0] : [(x * Y) / y, Y, ((1 - x - y) * Y) / y];
  return new Map(fields.map((field, i) => [field, String(Number(xyz[i]!.toPrecision(8)))]));
}

/** R, G, B of 0-255 from a ColorSRGB or, where it says 255 or nothing, a ColorRGB; null where there is none. */
export function screenColor(values: XmlElement): ReadonlyMap<Field, string> | null {
  const element = childrenOf(values, 'ColorSRGB')[0];
  if (!element) return null;
  const most = Number(element.attributes.get('MaxRange') ?? childOf(element, 'MaxRange')?.text ?? 255);
  const rgb = ['R', 'G', 'B'].map((name) => (cellNumber(childOf(element, name)?.text ?? '') / most) * 255);
  if (rgb.some((value) => !(value >= 0 && value <= 255.5))) return null;
  const [r, g, b] = rgb.map((value) => String(Math.round(value))) as [string, string, string];
  return new Map<Field, string>([
    ['rgb_r', r],
    ['rgb_g', g],
    ['rgb_b', b],
  ]);
}

export const wrongValue = (code: string, { line }: XmlElement, what: string, file: string): Problem => ({
  code,
  text: `Line ${line}: ${what}.`,
  at: placeIn(file, line),
  remedy: 'Correct the object, or export it again.',
});
