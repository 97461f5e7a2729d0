import { failure, type Problem, type Result, success } from '../../engine/result';
import { placeIn } from '../place-problem';
import { readXml, type XmlElement } from '../xml-reader';
import { MOST_ROWS } from './cut-rows';
import { CXF3, childOf, childrenOf } from './cxf-elements';
import { chosenNotices, conditionNotices, dialectNotices, glossNotices } from './cxf-notices';
import { type CxfObject, readCxfObject } from './cxf-object';
import { cxfSpecifications } from './cxf-specifications';
import type { CxfSpectrum } from './cxf-values';
import { MOST_CELLS } from './merge-tables';
import { scaleNotice, scaleOf } from './reflectance-scale';
import { IF_RIGHT, sheetProblem } from './sheet-problem';
import { FIELDS, type Field, type RefusedRow, type Sheet, type SheetColumn, type SheetRow } from './types';

/** A range of 90,000 finishes with spectra and tags. */
const MOST_ELEMENTS = 1_000_000;
/** Tags of other names than these are for others. */
const MOST_OTHERS = 100;

type Read = { readonly object: CxfObject } | { readonly refused: Omit<RefusedRow, 'row'> };

/**
 * Reads a CxF3 file (ISO 17972-1) as a sheet: one row for each object, whatever the prefix of its namespace. Of several measurements
 * of an object one is taken, and said. An object without a measured color of a surface, or with a reference that points nowhere,
 * is refused alone. Fails with what is wrong with the XML, 'cxf-version', 'not-cxf', 'no-objects', 'too-many-rows'.
 */
export function readCxf(text: string, file: string): Result<Sheet> {
  const xml = readXml(text, file, MOST_ELEMENTS);
  if (!xml.ok) return xml;
  const wrong = wrongRoot(xml.value, file);
  if (wrong) return failure(wrong);
  const resources = childOf(xml.value, 'Resources');
  const objects = (resources ? childrenOf(resources, 'ObjectCollection') : []).flatMap((one) =>
    childrenOf(one, 'Object'),
  );
  if (!resources || objects.length === 0) return failure(noObjects(xml.value, file));
  if (objects.length > MOST_ROWS) return failure(tooMany(`${MOST_ROWS} objects`, objects[MOST_ROWS]!.line, file));
  const specifications = cxfSpecifications(resources);
  const read = objects.map((element): Read => {
    const object = readCxfObject(element, specifications, file);
    if (!('code' in object)) return { object };
    const [code, name] = ['Id', 'Name'].map((one) => element.attributes.get(one)?.trim() || null);
    return { refused: { code: code!, name: name!, problem: object } };
  });
  return sheetOf(read, file);
}

function sheetOf(read: readonly Read[], file: string): Result<Sheet> {
  const objects = read.flatMap((one) => ('object' in one ? [one.object] : []));
  const fields = FIELDS.filter((field) => objects.some(({ cells }) => cells.get(field)));
  const others = [...new Set(objects.flatMap((one) => [...one.others.keys()]))].slice(0, MOST_OTHERS);
  const { wavelengths, placesOf } = wavelengthsOf(objects);
  if (wavelengths.length * read.length > MOST_CELLS) return failure(tooMany('16 million values', null, file));
  const columns: readonly SheetColumn[] = [
    ...fields.map((field) => ({ heading: HEADINGS[field] ?? field, field })),
    ...others.map((heading) => ({ heading, field: null })),
    ...wavelengths.map((nm) => ({ heading: `${nm} nm`, field: `nm:${nm}` as const })),
  ];
  const rows: SheetRow[] = [];
  const refused: RefusedRow[] = [];
  for (const [i, one] of read.entries()) {
    if ('refused' in one) {
      refused.push({ row: i + 1, ...one.refused });
      continue;
    }
    const { object } = one;
    const spectrum = Array<string>(wavelengths.length).fill('');
    const places = object.spectrum ? placesOf(object.spectrum) : [];
    for (const [k, place] of places.entries()) spectrum[place] = object.spectrum!.values[k]!;
    const known = fields.map((field) => object.cells.get(field) ?? '');
    const unknown = others.map((name) => object.others.get(name) ?? '');
    rows.push({ row: i + 1, line: object.line, cells: [...known, ...unknown, ...spectrum] });
  }
  const greatest = objects.flatMap(({ spectrum }) => (spectrum ? [spectrum.greatest] : []));
  const scale = scaleOf(greatest, 'factor');
  const hasComma = objects.some(({ spectrum, cells }) =>
    hasDecimalComma([...(spectrum?.values ?? []), cells.get('lab_l') ?? '']),
  );
  return success({
    format: 'cxf',
    file,
    columns,
    rows,
    said: scale ? { scale } : {},
    ...(hasComma && { decimalComma: true }),
    refused,
    notices: [
      ...dialectNotices(objects, file),
      ...conditionNotices(objects, file),
      ...chosenNotices(objects, file),
      ...glossNotices(objects, file),
      // The schema wants factors, so that only percent deserves a word.
      ...(scale === 'percent' ? [scaleNotice(scale, greatest, 'factor', file)] : []),
      ...(hasComma
        ? [sheetProblem('decimal-comma', 'Commas in numbers were read as decimal marks.', IF_RIGHT, file)]
        : []),
    ],
  });
}

const HEADINGS: Readonly<Partial<Record<Field, string>>> = { code: 'Id', name: 'Name' };

const hasDecimalComma = (values: readonly string[]): boolean => values.some((value) => value.includes(','));

/** All wavelengths of the spectra in order, and where those of one of them stand among them. */
function wavelengthsOf(objects: readonly CxfObject[]) {
  const keyOf = ({ start_nm, step_nm, values }: CxfSpectrum) => `${start_nm}/${step_nm}/${values.length}`;
  const ranges = new Map<string, readonly number[]>();
  for (const { spectrum } of objects) {
    if (!spectrum || ranges.has(keyOf(spectrum))) continue;
    const { start_nm, step_nm, values } = spectrum;
    ranges.set(
      keyOf(spectrum),
      values.map((_, i) => Number((start_nm + i * step_nm).toFixed(3))),
    );
  }
  const wavelengths = [...new Set([...ranges.values()].flat())].sort((a, b) => a - b);
  const at = new Map(wavelengths.map((nm, i) => [nm, i]));
  const places = new Map([...ranges].map(([key, range]) => [key, range.map((nm) => at.get(nm)!)]));
  return { wavelengths, placesOf: (spectrum: CxfSpectrum): readonly number[] => places.get(keyOf(spectrum))! };
}

function wrongRoot({ name, uri, line }: XmlElement, file: string): Problem | null {
  if (name === 'CxF' && uri === CXF3) return null;
  const at = placeIn(file, line);
  if (name !== 'CxF') {
    const text = `Line ${line}: this is no CxF file: its outermost element is ${name.slice(0, 60)}.`;
    return { code: 'not-cxf', text, at, remedy: 'Choose a CxF3 file, a CGATS file or a table (CSV).' };
  }
  const version = /\/v2\b|CxF2/i.test(uri)
    ? 'version 2'
    : uri === ''
      ? 'no known version'
      : `an unknown version (${uri.slice(0, 80)})`;
  const text = `Line ${line}: the file is CxF of ${version}; version 3 is read.`;
  return { code: 'cxf-version', text, at, remedy: 'Export it again as CxF3 (ISO 17972).' };
}

const noObjects = ({ line }: XmlElement, file: string): Problem =>
  sheetProblem('no-objects', 'The file has no objects with colors.', 'Export it again with its samples.', file, line);

const tooMany = (what: string, line: number | null, file: string): Problem =>
  sheetProblem('too-many-rows', `The file has more than ${what}.`, 'Split it into several files.', file, line ?? 1);
