import { failure, type Problem, type Result, success } from '../engine/result';
import { placeIn } from './place-problem';
import { fileStem, type ReadLamp, wavelengthProblem } from './read-lamp';
import { cellNumber } from './table-cells';
import { elementsNamed, readXml, type XmlElement } from './xml-reader';

/** Quantities of IES TM-27 that a surface or a filter has and no lamp. */
const NOT_OF_LAMPS = /^(reflectance|transmittance|absorptance|r-factor|t-factor)$/i;

/**
 * Reads the spectra of an IES TM-27 document: each SpectralDistribution with its SpectralData, whatever the prefix and the
 * edition. The name is the description in the header, else the catalog number, else that of the file.
 */
export function readLampTm27(text: string, file?: string): Result<readonly ReadLamp[]> {
  const xml = readXml(text, file);
  if (!xml.ok) return xml;
  const root = xml.value;
  const distributions = elementsNamed(root, 'SpectralDistribution');
  if (distributions.length === 0) {
    return failure(wrong('no-spectrum', root, `${root.name} has no SpectralDistribution.`, file));
  }
  const header = elementsNamed(root, 'Header')[0];
  const name = textOf(header, 'Description') || textOf(header, 'CatalogNumber') || fileStem(file);
  const lamps: ReadLamp[] = [];
  for (const distribution of distributions) {
    const lamp = readDistribution(distribution, name, file);
    if (!lamp.ok) return lamp;
    lamps.push(lamp.value);
  }
  return success(lamps);
}

function readDistribution(distribution: XmlElement, name: string, file?: string): Result<ReadLamp> {
  const quantity = textOf(distribution, 'SpectralQuantity');
  if (NOT_OF_LAMPS.test(quantity)) {
    return failure({
      code: 'not-a-lamp',
      text: `Line ${distribution.line}: the spectrum is a ${quantity}, not the power of a lamp.`,
      at: placeIn(file, distribution.line),
      remedy: 'Choose the file of a lamp: flux, intensity, irradiance, radiance or relative power.',
    });
  }
  const rows = elementsNamed(distribution, 'SpectralData').map((element) => ({
    element,
    line: element.line,
    nm: cellNumber(element.attributes.get('wavelength')?.trim() ?? ''),
    power: cellNumber(element.text),
  }));
  const bad = rows.find(({ nm, power }) => Number.isNaN(nm) || Number.isNaN(power));
  if (bad) return failure(wrong('bad-row', bad.element, 'SpectralData needs a wavelength="nm" and a number.', file));
  if (rows.length > 1 && rows[0]!.nm > rows.at(-1)!.nm) rows.reverse();
  const problem = wavelengthProblem(rows, file);
  if (problem) return failure(problem);
  return success({ name, nm: rows.map(({ nm }) => nm), power: rows.map(({ power }) => power) });
}

const textOf = (within: XmlElement | undefined, name: string): string =>
  within ? (elementsNamed(within, name)[0]?.text.replace(/\s+/g, ' ') ?? '') : '';

const wrong = (code: string, { line }: XmlElement, text: string, file?: string): Problem => ({
  code,
  text: `Line ${line}: ${text}`,
  at: placeIn(file, line),
  remedy: 'Give an IES TM-27 document: SpectralDistribution with one SpectralData for each wavelength.',
});
