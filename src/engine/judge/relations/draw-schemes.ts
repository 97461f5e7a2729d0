import { plausibleDraws } from '../plausible-draws';
import { recoloredScheme, type SeenScheme } from './seen-scheme';

/** As many as the findings are tried with. */
export const DRAWS = 200;

export interface DrawOptions {
  readonly draws?: number;
  /** Same seed, same answer. */
  readonly seed?: number;
}

/** The scheme under seeded plausible errors of its colors; what one reading covers errs together (see `plausibleDraws`). */
export function drawnSchemes(scheme: SeenScheme, { draws = DRAWS, seed = 1 }: DrawOptions = {}): readonly SeenScheme[] {
  const list: SeenScheme[] = [];
  for (const { samples } of plausibleDraws(scheme.placed, draws, seed)) list.push(recoloredScheme(scheme, samples));
  return list;
}

/** Share of the schemes for which something is so. */
export const shareWhere = <T>(list: readonly T[], isSo: (one: T) => boolean): number =>
  list.reduce((sum, one) => sum + (isSo(one) ? 1 : 0), 0) / Math.max(1, list.length);
