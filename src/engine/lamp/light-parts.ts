import { failure, type Problem, type Result, success } from '../result';
import { LIGHT_IDS } from '../spectrum/lights';

/** One light as its words describe it. */
export type LightKind =
  | { readonly kind: 'cie'; readonly id: string }
  | { readonly kind: 'planck' | 'daylight'; readonly cct_k: number }
  | { readonly kind: 'led'; readonly cct_k: number; readonly ra: number };

/** A light of a blend with its share in relative lux. */
export interface LightPart {
  readonly level: number;
  readonly light: LightKind;
}

/** Ra of an LED whose words do not say it: what lamps mostly have (common practice, no source). */
const USUAL_RA = 80;

const FORMS = 'D65 (a CIE light), led:2700,90, daylight:5600, planck:2856 or a blend: 0.6 led:2700,90 + 0.4 FL11';

const bare = (words: string): string => words.toLowerCase().replace(/[\s-]/g, '');
const IDS: ReadonlyMap<string, string> = new Map(LIGHT_IDS.map((id) => [bare(id), id]));

/**
 * The parts of a light given in words: `D65`, `led:2700,90`, `daylight:5600`, `planck:2856`, joined by `+`, each with a
 * factor before it or none (then 1). Case, spaces and the hyphen of CIE names do not matter. Numbers are read, not judged.
 */
export function lightParts(words: string): Result<readonly LightPart[]> {
  const parts: LightPart[] = [];
  for (const piece of words.split('+')) {
    const [, number, percent, rest] = piece.trim().match(/^(?:(-?(?:\d+\.?\d*|\.\d+))\s*(%?)\s*\*?)?\s*(.*)$/s)!;
    const light = oneLight(rest!.trim(), piece.trim());
    if (!light.ok) return light;
    const factor = number === undefined ? 1 : Number(number);
    parts.push({ level: percent ? factor / 100 : factor, light: light.value });
  }
  return success(parts);
}

function oneLight(words: string, given: string): Result<LightKind> {
  if (words === '') return failure(nothingProblem);
  const formed = words.match(/^(planck|daylight|led)\s*:(.*)$/i);
  if (!formed) {
    // 'CIE F11' and 'F11' are common names for FL11.
    const plain = bare(words).replace(/^cie/, '');
    const id = IDS.get(plain) ?? IDS.get(plain.replace(/^f(?=\d)/, 'fl'));
    return id ? success({ kind: 'cie', id }) : failure(unknownProblem(given));
  }
  const kind = formed[1]!.toLowerCase() as 'planck' | 'daylight' | 'led';
  const [temperature, ra, ...more] = formed[2]!.split(',').map(readNumber);
  const unread = temperature === null || ra === null || more.length > 0 || (kind !== 'led' && ra !== undefined);
  if (unread || temperature === undefined) return failure(formProblem(kind, given));
  return success(kind === 'led' ? { kind, cct_k: temperature, ra: ra ?? USUAL_RA } : { kind, cct_k: temperature });
}

/** A number with its unit or name, as people write it: `2700`, `2700 K`, `Ra 90`. */
function readNumber(text: string): number | null {
  const read = text.trim().match(/^(?:ra\s*)?(\d+(?:\.\d+)?)\s*k?$/i);
  return read ? Number(read[1]) : null;
}

const nothingProblem: Problem = {
  code: 'no-light',
  text: 'A light is missing.',
  remedy: `Write ${FORMS}.`,
};

const unknownProblem = (words: string): Problem => ({
  code: 'unknown-light',
  text: `There is no light "${words}".`,
  remedy: `Write ${FORMS}. CIE lights: ${LIGHT_IDS.join(', ')}.`,
});

function formProblem(kind: 'planck' | 'daylight' | 'led', words: string): Problem {
  const remedies = {
    planck: 'Write the temperature in K after it: planck:2856.',
    daylight: 'Write the color temperature in K after it: daylight:5600.',
    led: 'Write the color temperature in K and Ra after it: led:2700,90. Without Ra, 80 is taken.',
  };
  return { code: 'light-words', text: `"${words}" cannot be read.`, remedy: remedies[kind] };
}
