import type { Problem } from '../../engine/result';
import type { XmlElement } from '../xml-reader';
import { glossOf, identity, taggedCells } from './cxf-descriptions';
import { CXF3, childOf } from './cxf-elements';
import type { CxfSpecification } from './cxf-specifications';
import {
  bestOf,
  COLOR_NAMES,
  type CxfDialect,
  type CxfSpectrum,
  type CxfValue,
  colorFields,
  greatestOf,
  labelOf,
  screenColor,
  spectrumOf,
  withSpecification,
  wrongValue,
} from './cxf-values';
import { isGlowing } from './reflectance-scale';
import type { Field } from './types';

/** An object of a CxF3 file as cells by field, or by the name of a tag that is not known. */
export interface CxfObject {
  readonly line: number;
  readonly cells: ReadonlyMap<Field, string>;
  readonly others: ReadonlyMap<string, string>;
  readonly spectrum: CxfSpectrum | null;
  /** What was taken and what was left where it was measured several times, 'M1 (not M0, M2)'; null where it was not. */
  readonly chosen: string | null;
  readonly condition: CxfValue['condition'];
  /** Angles at which its gloss was read, where none is at 60 degrees. */
  readonly glossAngles: readonly string[];
  readonly dialects: ReadonlySet<CxfDialect>;
}

/** What is said of a measurement that was left because it fluoresces. */
export const GLOWS = 'sends back more light than falls on it and cannot be computed with';

type Specifications = ReadonlyMap<string, CxfSpecification | 'twice'>;

/** What an object holds; a problem where it has nothing that a finish can be made of. */
export function readCxfObject(object: XmlElement, specifications: Specifications, file: string): CxfObject | Problem {
  const dialects = new Set<CxfDialect>();
  if (!childOf(object, 'CreationDate')) dialects.add('no-date');
  const values = childOf(object, 'ColorValues');
  const given = values?.children.filter(({ uri }) => uri === CXF3) ?? [];
  const measured: CxfValue[] = [];
  for (const element of given) {
    if (element.name !== 'ReflectanceSpectrum' && !COLOR_NAMES.includes(element.name)) continue;
    const value = withSpecification(element, specifications, dialects, file);
    if ('code' in value) return value;
    measured.push(value);
  }
  const usable = measured.filter(
    ({ specification: { geometry, isTransmitted } }) =>
      !isTransmitted && geometry !== 'light-source' && geometry !== 'many-angles',
  );
  const onAngles = usable.filter(
    ({ element, specification }) => element.name === 'ReflectanceSpectrum' && specification.geometry === 'other-angle',
  );
  const isGoniometric =
    onAngles.length > 1 && !usable.some(({ specification: { geometry } }) => geometry === 'one-angle');
  const reflected = isGoniometric ? [] : usable;
  const spectra = reflected.filter(({ element }) => element.name === 'ReflectanceSpectrum');
  // One that fluoresces cannot be computed with; the same sample without ultraviolet can.
  const best = bestOf(spectra.filter((one) => !isGlowing(greatestOf(one)))) ?? bestOf(spectra);
  const color = colorBeside(reflected, best);
  const screen = values && !best && !color ? screenColor(values) : null;
  if (!best && !color && !screen) return nothingIn(object, given, measured, file);

  const spectrum = best ? spectrumOf(best, dialects, file) : null;
  if (spectrum && 'code' in spectrum) return spectrum;
  const fields = color ? colorFields(color, file) : screen!;
  if (fields && 'code' in fields) return fields as Problem;
  const tagged = taggedCells(object);
  const gloss = glossOf(object);
  return {
    line: object.line,
    cells: new Map<Field, string>([
      ...identity(object),
      ...((fields as ReadonlyMap<Field, string> | null) ?? []),
      ...(color ? lightOf(color) : []),
      ...mirrorPart(best ?? color),
      ...gloss.cells,
      ...tagged.known,
    ]),
    others: tagged.others,
    spectrum,
    chosen: best && spectra.length > 1 ? chosenAmong(best, spectra) : null,
    condition: (best ?? color)?.condition ?? null,
    glossAngles: gloss.cells.length > 0 ? [] : gloss.otherAngles,
    dialects,
  };
}

/**
 * The color in numbers that goes with a spectrum: of the same specification if there is one, else the best; none of the other kind
 * as to the mirror-like part.
 */
function colorBeside(values: readonly CxfValue[], spectrum: CxfValue | null): CxfValue | null {
  const colors = values.filter(
    ({ element, specular }) =>
      element.name !== 'ReflectanceSpectrum' && !(spectrum?.specular && specular && specular !== spectrum.specular),
  );
  const same = colors.filter(({ specification }) => specification === spectrum?.specification);
  const among = same.length > 0 ? same : colors;
  for (const name of COLOR_NAMES) {
    const best = bestOf(among.filter(({ element }) => element.name === name));
    if (best) return best;
  }
  return null;
}

function nothingIn(
  object: XmlElement,
  given: readonly XmlElement[],
  measured: readonly CxfValue[],
  file: string,
): Problem {
  const has = (pattern: RegExp) => given.some(({ name }) => pattern.test(name));
  const is = (geometry: CxfSpecification['geometry']) =>
    measured.some(({ specification }) => specification.geometry === geometry);
  if (is('light-source') || has(/^Emissive/)) {
    return wrongValue(
      'light-source',
      object,
      'the object is the light of a source, not the reflectance of a surface',
      file,
    );
  }
  if (is('many-angles') || is('other-angle')) {
    return wrongValue(
      'many-angles',
      object,
      'the object is measured from several angles; a finish that changes with the angle cannot be held as one color',
      file,
    );
  }
  if (has(/^Transmittance/) || measured.some(({ specification }) => specification.isTransmitted)) {
    return wrongValue('transmittance', object, 'the object is what light passes through, not a surface', file);
  }
  if (childOf(object, 'DeviceColorValues') || has(/CMYK|RGB|HTML|Custom/)) {
    return wrongValue(
      'device-colors-only',
      object,
      'the object has device colors only, which say nothing without the device’s profile',
      file,
    );
  }
  return wrongValue('no-color', object, 'the object has neither a spectrum nor L*a*b* or XYZ', file);
}

const lightOf = ({ specification: { illuminant, observer_deg } }: CxfValue): readonly (readonly [Field, string])[] => [
  ['illuminant', illuminant ?? ''],
  ['observer_deg', observer_deg ? String(observer_deg) : ''],
];

const mirrorPart = (value: CxfValue | null): readonly (readonly [Field, string])[] =>
  value?.specular ? [['specular', value.specular]] : [];

function chosenAmong(best: CxfValue, all: readonly CxfValue[]): string {
  const others = [...new Set(all.filter((one) => one !== best).map(labelOf))];
  const words = `${labelOf(best)} was taken, ${others.join(' and ')} ${others.length === 1 ? 'was' : 'were'} left`;
  const glowing = [...new Set(all.filter((one) => one !== best && isGlowing(greatestOf(one))).map(labelOf))];
  return glowing.length > 0 && !isGlowing(greatestOf(best)) ? `${words}; ${glowing.join(' and ')} ${GLOWS}` : words;
}
