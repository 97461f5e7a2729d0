/** What lies in the middle nine tenths of a family. */
export interface Quantiles {
  readonly p05: number;
  readonly median: number;
  readonly p95: number;
}

/**
 * Quantiles of at least one value at the plotting positions i / (n + 1) (type 6 of Hyndman and Fan 1996), linear between
 * and held at the ends: of one further draw, about a twentieth lies below p05 and as much above p95, also for few values.
 */
export function quantilesOf(values: readonly number[]): Quantiles {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => {
    const place = Math.min(Math.max(share * (sorted.length + 1) - 1, 0), sorted.length - 1);
    const below = sorted[Math.floor(place)]!;
    return below + (place - Math.floor(place)) * (sorted[Math.ceil(place)]! - below);
  };
  return { p05: at(0.05), median: at(0.5), p95: at(0.95) };
}
