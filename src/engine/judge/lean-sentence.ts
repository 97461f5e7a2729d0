import { INDUCED_AT_MOST, type Lean } from './lean';
import { oneDecimal, timesAcceptable } from './number-words';
import { PAIR } from './pair';
import { sentenceCase } from './surface-words';
import { WHITES } from './whites';

/**
 * How a color leans beside another, in plain words.
 * @param own what leans, as within a sentence: "the counter"; `plural` for its verb
 * @param beside "neutral white", "the wall"
 * @param compare how to settle it by eye: a whole sentence
 */
export function leanSentence(
  lean: Lean,
  { own, beside, plural, compare }: { own: string; beside: string; plural: boolean; compare: string },
): string {
  const may = lean.firmness === 'may';
  const verb = (one: string, many: string) => (may ? `may ${many}` : plural ? many : one);
  const who = sentenceCase(own);
  switch (lean.kind) {
    case 'too-close':
      return `Too close to call how ${own} ${plural ? 'lean' : 'leans'} beside ${beside}: what is known of the colors does not reach that far. ${compare}`;
    case 'same':
      return `${who} and ${beside} look the same side by side.`;
    case 'level':
      return `${who} ${verb('leans', 'lean')} no way beside ${beside}; ${plural ? 'they are' : 'it is'} only ${lean.dL > 0 ? 'lighter' : 'darker'}.`;
    case 'leans': {
      const far = lean.size === 'little' ? ' a little' : lean.size === 'strong' ? ' strongly' : '';
      return `${who} ${verb('leans', 'lean')}${far} toward ${lean.hue} beside ${beside}${lightnessPhrase(lean, plural)}.${whitenessPhrase(lean)}`;
    }
  }
}

const lightnessPhrase = ({ lightnessPart, dL }: Lean, plural: boolean): string =>
  lightnessPart < PAIR.perceptible ? '' : ` and ${plural ? 'are' : 'is'} ${dL > 0 ? 'lighter' : 'darker'}`;

function whitenessPhrase({ dWid }: Lean): string {
  if (dWid === null) return '';
  if (Math.abs(dWid) < WHITES.whitenessLimit) return ' As whites the two agree.';
  return ` As a white it is ${dWid < 0 ? 'less' : 'more'} white, by ${timesAcceptable(dWid, WHITES.whitenessLimit)}.`;
}

/** What eyes may add, as a range without a published value; null where it is nothing. */
export function inducedSentence({ induced }: Lean, beside: string): string | null {
  if (!induced) return null;
  const { a, b } = induced.lab;
  return (
    `Beside ${beside} it may look up to a* ${signed(a)}, b* ${signed(b)} (${induced.name}): eyes push neighbors apart, by 0 to ` +
    `${INDUCED_AT_MOST} of the neighbor's tint; no value is published for kitchens.`
  );
}

const signed = (value: number): string => `${value < 0 ? '-' : ''}${oneDecimal(value)}`;
