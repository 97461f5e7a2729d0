import type { GivenColor } from '../../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { spectrumProblem } from '../../engine/spectrum/resample';
import { evenSteps, stepOf } from '../even-steps';
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
  /** Why none of them can be read; null where they can. */
  readonly problem: Problem | null;
}

/** A step this much longer than the others means that a column is missing. Our judgment. */
const GAP = 1.5;

/** The columns of spectra, null where a sheet has none. */
export function spectrumLayout({ bands }: Columns, scale: 1 | 100): SpectrumLayout | null {
  if (bands.length < 2) return null;
  const usual = stepOf(bands.map(({ nm }) => ({ line: 0, nm, value: 0 })));
  const gap = bands.findIndex(({ nm }, i) => i > 0 && nm - bands[i - 1]!.nm > GAP * usual + 1e-6);
  const words = gap > 0 ? `There is no column between ${bands[gap - 1]!.nm} and ${bands[gap]!.nm} nm.` : '';
  const problem = gap > 0 ? sheetProblem('uneven-steps', words, 'Give every wavelength in even steps.') : null;
  return { bands, scale, problem };
}

/** The spectrum of a row; null where all of its cells are blank. Blank cells at the ends are left out, between them refused. */
export function rowSpectrum(
  { bands, scale, problem }: SpectrumLayout,
  columns: Columns,
  { cells, line }: SheetRow,
): Result<(GivenColor & { kind: 'spectrum' }) | null> {
  const isFilled = ({ at }: { at: number }) => !isBlank(cells[at] ?? '');
  const from = bands.findIndex(isFilled);
  if (from < 0) return success(null);
  if (problem) return failure({ ...problem, at: { line } });
  const used = bands.slice(from, bands.findLastIndex(isFilled) + 1);
  const rows: { line: number; nm: number; value: number }[] = [];
  for (const { nm, at } of used) {
    const cell = cells[at] ?? '';
    if (isBlank(cell)) {
      const words = `The value at ${nm} nm is missing.`;
      return failure(sheetProblem('spectrum-gap', words, 'Fill it in, or leave the spectrum out.', undefined, line));
    }
    const value = numberInCell(cell, columns.comma);
    if (Number.isNaN(value)) return failure(notANumber(`${nm} nm`, cell, line, columns.comma));
    rows.push({ line, nm, value: scale === 1 ? value : Number((value / scale).toPrecision(12)) });
  }
  if (rows.length < 2) {
    const words = 'The spectrum has one value.';
    return failure(sheetProblem('spectrum-range', words, 'Give 400 to 700 nm, or L*, a*, b*.', undefined, line));
  }
  const color = { kind: 'spectrum', ...evenSteps(rows).sampled } as const;
  const wrong = spectrumProblem(color);
  return wrong ? failure({ ...wrong, at: { line } }) : success(color);
}
