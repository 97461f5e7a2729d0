import { SHARE_IN_RECEPTOR } from './gloss-alpha.data';

/**
 * Width alpha of the lobe, 0-1, that sends a share of what it mirrors (0-1) into the receptor of a glossmeter at 60 degrees: the
 * inverse of `glossMeterReading` to 1 %. A share of 1 or more is a smooth surface; 0 and less the roughest.
 */
export function alphaOfShare(share: number): number {
  if (!(share > 0)) return 1;
  if (share >= 1) return 0;
  const table = SHARE_IN_RECEPTOR;
  // What misses over what reaches goes nearly with a power of alpha, so the line is straight in logarithms, ends included.
  const missed = Math.log((1 - share) / share);
  let k = 1;
  while (k < table.length - 1 && missedOf(k) < missed) k++;
  const low = missedOf(k - 1);
  const part = (missed - low) / (missedOf(k) - low);
  const logLow = Math.log(table[k - 1]![0]);
  return Math.min(1, Math.exp(logLow + part * (Math.log(table[k]![0]) - logLow)));
}

const missedOf = (k: number): number => {
  const share = SHARE_IN_RECEPTOR[k]![1];
  return Math.log((1 - share) / share);
};
