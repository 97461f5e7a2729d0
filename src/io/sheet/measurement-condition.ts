import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';

/** Measurement conditions of ISO 13655: what the light of the instrument was like. */
export type MeasurementCondition = 'M0' | 'M1' | 'M2' | 'M3';

/**
 * Which to take where a sample has several, best first. M1 is defined as light like D50 with its ultraviolet, and so shows a
 * finish with brighteners as daylight does. M0 is a filament's light with ultraviolet that is not fixed; M2 has none, as in
 * rooms that see no daylight; M3 is polarized as well and takes away the reflection of the surface, which an eye does see.
 */
export const CONDITIONS_BEST_FIRST: readonly MeasurementCondition[] = ['M1', 'M0', 'M2', 'M3'];

const MEANING: { readonly [C in MeasurementCondition]: string } = {
  M0: 'a light like that of filament lamps',
  M1: 'a light like D50, with its ultraviolet',
  M2: 'a light without ultraviolet',
  M3: 'polarized light without ultraviolet',
};

const REMEDY: { readonly [C in MeasurementCondition]: string } = {
  M0: 'Nothing to do; a finish with brighteners may look bluer by daylight.',
  M1: 'Nothing to do: this is how daylight shows it.',
  M2: 'Nothing to do; a finish with brighteners may look bluer by daylight.',
  M3: 'Measure without polarizers if you can: they take away the reflection that one sees.',
};

/** The condition that a text names, as in "MeasurementCondition=M1" or the name of a spectrum. */
export function conditionIn(text: string): MeasurementCondition | null {
  const named = /(?:^|[^A-Z0-9])M([0-3])(?![A-Z0-9])/i.exec(text)?.[1];
  return named === undefined ? null : (`M${named}` as MeasurementCondition);
}

/**
 * The condition that words for a filter mean (ISO 13655, 4.2): polarizers are M3; no ultraviolet is M2; ultraviolet included and no filter
 * are M0, for M1 wants a light that matches D50 and is said by its name. "UV" alone, where a filter is named, is one against it. Null for
 * other words.
 */
export function conditionOfFilter(words: string): MeasurementCondition | null {
  const named = conditionIn(words);
  if (named) return named;
  if (/pol/i.test(words) && !/unpol|no\W*pol|without\W*pol|non\W*pol/i.test(words)) return 'M3';
  if (/uv\W*(?:cut|excl|block|less|free)|(?:no|non|without|cut|excl\w*|minus)\W*uv|420\s*nm/i.test(words)) return 'M2';
  if (/uv\W*incl|incl\w*\W*uv|with\W*uv|^\W*(?:no|none|off|n\/?a|no filter)\W*$/i.test(words)) return 'M0';
  return /^\W*uv(?:\W*filter)?\W*$/i.test(words) ? 'M2' : null;
}

/** Says under which condition a file was measured. */
export const conditionNotice = (condition: MeasurementCondition, file: string, line?: number): Problem => ({
  code: 'measurement-condition',
  text: `Measured under condition ${condition} of ISO 13655: ${MEANING[condition]}.`,
  at: placeIn(file, line),
  remedy: REMEDY[condition],
});
