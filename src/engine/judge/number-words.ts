/** The size of a number for a sentence, one decimal. */
export const oneDecimal = (value: number): string => Math.abs(value).toFixed(1);

/** "37%" of a share 0-1. */
export const percent = (share: number): string => `${Math.round(100 * share)}%`;

/** A share 0-1 in everyday words. */
export function aboutShare(share: number): string {
  if (share >= 0.9) return 'nearly all';
  if (share >= 0.7) return 'about three quarters';
  if (share >= 0.58) return 'about two thirds';
  if (share >= 0.42) return 'about half';
  if (share >= 0.29) return 'about a third';
  if (share >= 0.2) return 'about a quarter';
  if (share >= 0.1) return 'a small part';
  return 'very little';
}

/** "about 2.5 times what most people let pass as the same": a difference against its acceptable limit. */
export function timesAcceptable(value: number, limit: number): string {
  const times = Math.abs(value) / limit;
  if (times < 1.15) return 'a little more than what most people let pass as the same';
  return `about ${times.toFixed(1)} times what most people let pass as the same`;
}

/** The conditions under which colors were compared, as a reason ends. */
export const AS_SAMPLE = 'as a sample, D65, 2 degree';
export const AS_INSTALLED = 'as installed, white of the counter light adapted to D65, 2 degree';
