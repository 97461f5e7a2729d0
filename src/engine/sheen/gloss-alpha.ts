import { SHARE_IN_RECEPTOR, SHARE_IN_RECEPTOR_BRUSHED } from './gloss-alpha.data';

type ShareTable = readonly (readonly [alpha: number, share: number])[];

/**
 * Width alpha of the lobe, 0-1, that sends a share of what it mirrors (0-1) into the receptor of a glossmeter at 60 degrees: the
 * inverse of `glossMeterReading` to 1 %. A share of 1 or more is a smooth surface; 0 and less the roughest.
 */
export const alphaOfShare = (share: number): number => readBack(SHARE_IN_RECEPTOR, share);

/** The same of a brushed surface, from the mean of a reading along the brush and one across: the geometric mean of its widths. */
export const alphaOfBrushedShare = (share: number): number => readBack(SHARE_IN_RECEPTOR_BRUSHED, share);

function readBack(table: ShareTable, share: number): number {
  if (!(share > 0)) return 1;
  if (share >= 1) return 0;
  // What misses over what reaches goes nearly with a power of alpha, so the line is straight in logarithms, ends included.
  const missedOf = (k: number): number => Math.log((1 - table[k]![1]) / table[k]![1]);
  const missed = Math.log((1 - share) / share);
  let k = 1;
  while (k < table.length - 1 && missedOf(k) < missed) k++;
  const low = missedOf(k - 1);
  const part = (missed - low) / (missedOf(k) - low);
  const logLow = Math.log(table[k - 1]![0]);
  return Math.min(1, Math.exp(logLow + part * (Math.log(table[k]![0]) - logLow)));
}
