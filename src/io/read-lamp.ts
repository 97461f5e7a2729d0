import type { Problem } from '../engine/result';
import { placeIn } from './place-problem';

/** The spectrum of one lamp as its file gives it: rising wavelengths in nm, relative power. The engine judges range and step. */
export interface ReadLamp {
  readonly name: string;
  readonly nm: readonly number[];
  readonly power: readonly number[];
}

/** One sample of a spectrum with the line it stands on. */
interface LampRow {
  readonly line: number;
  readonly nm: number;
}

/** Wavelengths a spectrum may have, nm: outside, another unit is meant (our judgment). */
const NM_FROM = 100;
const NM_TO = 5000;

/** Even at 0.1 nm from 200 to 1100 nm a lamp has fewer samples. */
const MOST_SAMPLES = 10_000;

/** The name of a file without folder and ending: what a lamp is called that has no other name. */
export const fileStem = (file?: string): string =>
  file
    ?.replace(/^.*[\\/]/, '')
    .replace(/\.[^.]*$/, '')
    .trim() || 'lamp';

/** What is wrong with the wavelengths of a spectrum: too few, another unit, not rising. Null when they can be used. */
export function wavelengthProblem(rows: readonly LampRow[], file?: string): Problem | null {
  if (rows.length < 2) {
    return {
      code: 'no-spectrum',
      text: 'The file has no table of wavelengths and powers.',
      at: placeIn(file, rows[0]?.line),
      remedy: 'Give one line for each wavelength: nm, then the power of the lamp.',
    };
  }
  if (rows.length > MOST_SAMPLES) {
    return {
      code: 'too-many-samples',
      text: `The spectrum has ${rows.length} wavelengths; ${MOST_SAMPLES} are read at most.`,
      at: placeIn(file, rows[0]?.line),
      remedy: 'Save it in coarser steps: 1 nm is fine enough for any lamp.',
    };
  }
  const outside = rows.find(({ nm }) => !(nm >= NM_FROM && nm <= NM_TO));
  if (outside) {
    return {
      code: 'wavelength-range',
      text: `Line ${outside.line}: ${outside.nm} is no wavelength in nm.`,
      at: placeIn(file, outside.line),
      remedy: 'Give wavelengths in nanometers: green is about 550.',
    };
  }
  const at = rows.findIndex((row, i) => i > 0 && !(row.nm > rows[i - 1]!.nm));
  if (at < 0) return null;
  const row = rows[at]!;
  return {
    code: 'wavelength-order',
    text: `Line ${row.line}: ${row.nm} nm does not come after ${rows[at - 1]!.nm} nm.`,
    at: placeIn(file, row.line),
    remedy: 'Give each wavelength once, from short to long.',
  };
}
