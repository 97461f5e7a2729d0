import { ACCEPTABLE_DE00 } from '../../engine/change/limits';
import type { MatchVerdict } from '../../engine/change/pair-under';
import { PAIR } from '../../engine/judge/pair';
import { joined } from '../../engine/judge/surface-words';
import type { WorktopLight } from './worktop-lights';

/** Whether two colors match by day: by their numbers, and as far as those are known. */
export type DaylightMatch = 'match' | 'apart' | 'cannot-tell';

/**
 * The trade's rule first: a difference below its own uncertainty tells nothing, unless both are below what people perceive.
 * A match that errors could undo, and a difference that they could, are open too: less than that uncertainty from the limit.
 * @param de00 under D65
 * @param uncertainty of the two together, root mean square
 */
export function daylightMatch(de00: number, uncertainty: number): DaylightMatch {
  if (uncertainty >= PAIR.perceptible && de00 < uncertainty) return 'cannot-tell';
  if (Math.abs(de00 - ACCEPTABLE_DE00) < uncertainty) return 'cannot-tell';
  return de00 < ACCEPTABLE_DE00 ? 'match' : 'apart';
}

/** Further apart than this by day, nobody asks whether lamps part them. Our judgment. */
const NEAR_TWINS_DE00 = 5;

interface LightVerdict extends Pick<WorktopLight, 'kind' | 'name'> {
  readonly verdict: MatchVerdict;
}

interface DaylightPair {
  readonly match: DaylightMatch;
  readonly de00: number;
  readonly uncertainty: number;
  /** Both spectra. */
  readonly measured: boolean;
}

/** One answer over all settings of the project; without any, over the standard lights. */
export function pairSentence(
  { match, de00, uncertainty, measured }: DaylightPair,
  lights: readonly LightVerdict[],
): string {
  const settings = lights.filter(({ kind }) => kind === 'setting');
  const asked = settings.length > 0 ? settings : lights;
  const named = (verdict: MatchVerdict) =>
    asked.filter((light) => light.verdict === verdict).map(({ name }) => `“${name}”`);
  const [splits, open] = [named('splits'), named('cannot-tell')];
  const nor = `for ${joined(open)} numbers cannot tell: look at both samples in that light`;
  switch (match) {
    case 'apart':
      return de00 > NEAR_TWINS_DE00
        ? `Two different colors (${de00.toFixed(1)} CIEDE2000 apart by day); this question is for near-twins.`
        : `Close but not the same by day (${de00.toFixed(1)} CIEDE2000 apart). They may still go together: see the findings.`;
    case 'match':
      if (splits.length === 0 && open.length === 0) {
        return measured
          ? 'They match by day and in every light asked for.'
          : 'They match by day, and likely in every light asked for; their spectra are guessed, so hold both under the lamp.';
      }
      if (open.length === 0) return `They match by day but not in ${joined(splits)}.`;
      return `They match by day${splits.length > 0 ? ` but not in ${joined(splits)}` : ''}; ${nor}.`;
    case 'cannot-tell': {
      const start =
        `Cannot tell from here whether they match by day: they differ by ${de00.toFixed(1)} CIEDE2000, and together ` +
        `they may be off by about ${uncertainty.toFixed(1)}. Compare the samples.`;
      return start;
    }
  }
}
