import type { Cooktop, Region, Sink } from '../kitchen';

const IN = 25.4;

/** Modules that hold a sink, best first, mm: sink bases of 600-1000 mm, 24-36 in (common practice). */
export function sinkModules(region: Region, bowls: Sink['bowls']): readonly number[] {
  if (region === 'us') return bowls === 2 ? [36 * IN, 33 * IN] : [33 * IN, 30 * IN, 24 * IN];
  return bowls === 2 ? [1000, 900, 800] : [800, 600];
}

/** Modules that hold a dishwasher, best first, mm: 600 or 450, 24 or 18 in (common practice). */
export const dishwasherModules = (region: Region): readonly number[] =>
  region === 'us' ? [24 * IN, 18 * IN] : [600, 450];

/** The module under a cooktop, mm; null for one that is wider than any. */
export function cooktopModule(region: Region, { width }: Pick<Cooktop, 'width'>): number | null {
  const modules = region === 'us' ? [24 * IN, 30 * IN, 36 * IN] : [600, 900];
  return modules.find((module) => module >= width - 1e-6) ?? null;
}

/** Width of tall units, mm. */
export const tallModule = (region: Region): number => (region === 'us' ? 24 * IN : 600);
