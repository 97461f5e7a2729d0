import type { GivenColor } from '../../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { spectrumProblem } from '../../engine/spectrum/resample';
import { evenSteps, type SpectrumRow, stepOf } from '../even-steps';
import { isBlank, numberInCell } from './cell-number';
import type { Columns } from './columns';
import { notANumber } from './row-numbers';
import { sheetProblem } from './sheet-problem';
import type { SheetRow } from './types';

/** How the spectra of a sheet stand in its columns. */
export interface SpectrumLayout {
  readonly bands: Columns['bands'];
  /** What values are divided by. */
  readonly scale: 1 | 100;
  /** They may be percent as well. */
  readonly isOpen: boolean;
}

/** A step this much longer than the others means that a value is missing. Our judgment. */
const GAP = 1.5;

/** The columns of spectra, null where a sheet has none. */
export const spectrumLayout = ({ bands }: Columns, scale: 1 | 100, isOpen: boolean): SpectrumLayout | null =>
  bands.length < 2 ? null : { bands, scale, isOpen };

/** The spectrum of a row; null where all of its cells are blank. Rows may have steps of their own, but no gaps. */
export function rowSpectrum(
  { bands, scale, isOpen }: SpectrumLayout,
  columns: Columns,
  { cells, line }: SheetRow,
): Result<(GivenColor & { kind: 'spectrum' }) | null> {
  const rows: SpectrumRow[] = [];
  for (const { nm, at } of bands) {
    const cell = cells[at] ?? '';
    if (isBlank(cell)) continue;
    const value = numberInCell(cell, columns.comma);
    if (Number.isNaN(value)) return failure(notANumber(`${nm} nm`, cell, line, columns.comma));
    rows.push({ line, nm, value: scale === 1 ? value : Number((value / scale).toPrecision(12)) });
  }
  if (rows.length === 0) return success(null);
  if (rows.length === 1) {
    const words = 'The spectrum has one value.';
    return failure(sheetProblem('spectrum-range', words, 'Give 400 to 700 nm, or L*, a*, b*.', undefined, line));
  }
  const usual_nm = stepOf(rows);
  const gap = rows.findIndex(({ nm }, i) => i > 0 && nm - rows[i - 1]!.nm > GAP * usual_nm + 1e-6);
  if (gap > 0) {
    const words = `The spectrum has no value between ${rows[gap - 1]!.nm} and ${rows[gap]!.nm} nm.`;
    return failure(sheetProblem('spectrum-gap', words, 'Fill it in, or leave the spectrum out.', undefined, line));
  }
  const color = { kind: 'spectrum', ...evenSteps(rows).sampled } as const;
  const wrong = spectrumProblem(color);
  if (!wrong) return success(color);
  return failure({
    ...(isOpen && (wrong.code === GLOWING || wrong.code === 'spectrum-percent')
      ? openScale(color.reflectance, wrong)
      : wrong),
    at: { line },
  });
}

/** Code of a spectrum that sends back more than falls on it: it fluoresces. */
export const GLOWING = 'spectrum-above-one';

/** Above this a dark color in percent is likelier than one that glows. Our judgment. */
const MOST_GLOWING = 1.6;

function openScale(reflectance: readonly number[], wrong: Problem): Problem {
  const greatest = Math.max(...reflectance);
  const remedy = 'If they are percent (a dark color), say so as the scale of the file.';
  if (wrong.code !== GLOWING) return { ...wrong, remedy };
  if (greatest < MOST_GLOWING) return { ...wrong, remedy: `${wrong.remedy} ${remedy}` };
  const text = `The greatest reflectance is ${greatest}: as a factor that of a color that glows, as percent that of a dark one.`;
  return { ...wrong, text, remedy };
}
