import { undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';
import type { PairVerdict } from './assessment';
import type { DrawnFault } from './claims';
import { PAIR, type PairJudgment } from './pair';
import type { SampleColor } from './sample-color';
import { componentPhrase, joined, type Phrase, sentenceCase } from './surface-words';
import { isPlainGray } from './whites';

/** One plain sentence for a fault between two components; `may` softens it. */
export function faultSentence(
  judgment: PairJudgment,
  aColor: SampleColor,
  aSurfaces: readonly SurfaceId[],
  bColor: SampleColor,
  bSurfaces: readonly SurfaceId[],
  may: boolean,
): string {
  const a = componentPhrase(aColor.role, aSurfaces);
  const b = componentPhrase(bColor.role, bSurfaces);
  if (judgment.verdict === 'pulls-apart') {
    const opposite = judgment.numbers['hue_apart_deg']! >= OPPOSITE_DEG;
    return opposedLeans(a, leanOf(aColor), b, leanOf(bColor), { may, opposite });
  }
  const [suffering, other] = judgment.faulty === 'a' ? [a, b] : [b, a];
  const look = may ? 'may look' : suffering.plural ? 'look' : 'looks';
  const color = judgment.faulty === 'a' ? aColor : bColor;
  const dirty = isPlainGray(color) ? 'gray beside the white of' : 'dirty beside the cleaner white of';
  const how = judgment.verdict === 'looks-dirty' ? dirty : 'yellow beside';
  return `${sentenceCase(suffering.text)} ${look} ${how} ${other.text}.`;
}

/**
 * One plain sentence where some fault stands but not its name: "may look dirty or yellow beside".
 * @param faults those that occur under plausible errors; the judgment's own always counts
 */
export function someFaultSentence(
  faults: readonly DrawnFault[],
  judgment: PairJudgment,
  aColor: SampleColor,
  aSurfaces: readonly SurfaceId[],
  bColor: SampleColor,
  bSurfaces: readonly SurfaceId[],
): string {
  const a = componentPhrase(aColor.role, aSurfaces);
  const b = componentPhrase(bColor.role, bSurfaces);
  const own = judgment.faulty === null ? null : judgment.faulty === 'a' ? aColor.key : bColor.key;
  const all = [{ verdict: judgment.verdict, faulty: own }, ...faults];
  const looks = LOOKS.filter(([verdict]) => all.some((f) => f.verdict === verdict)).map(([, look]) => look);
  const opposed = all.some((f) => f.verdict === 'pulls-apart');
  if (looks.length === 0) return faultSentence(judgment, aColor, aSurfaces, bColor, bSurfaces, true);
  const sufferers = new Set(all.flatMap((f) => (f.faulty === null ? [] : [f.faulty])));
  const how = `may look ${looks.join(' or ')} beside`;
  const text =
    sufferers.size > 1
      ? `One of ${a.text} and ${b.text} ${how} the other`
      : sufferers.has(aColor.key)
        ? `${sentenceCase(a.text)} ${how} ${b.text}`
        : `${sentenceCase(b.text)} ${how} ${a.text}`;
  return `${text}${opposed ? ', or lean another way' : ''}.`;
}

/** One plain sentence for what is no fault: two that look alike, go together, echo each other, or leave each other alone. */
export function fineSentence({ verdict, numbers }: PairJudgment, a: Phrase, b: Phrase): string {
  const both = sentenceCase(joined([a.text, b.text]));
  switch (verdict) {
    case 'same':
      return `${both} look the same.`;
    case 'match':
      return `${both} match closely.`;
    case 'agree':
      return `The whites of ${joined([a.text, b.text])} agree.`;
    case 'relates':
      return `${both} echo each other.`;
    default: {
      const step = numbers['d_l'] ?? 0;
      const how =
        step >= PAIR.clearStep
          ? 'a clear step in lightness apart'
          : step < PAIR.noStep
            ? 'nearly as light as each other'
            : 'a small step in lightness apart';
      return `${both} leave each other’s undertone alone, ${how}.`;
    }
  }
}

const LOOKS: readonly (readonly [verdict: PairVerdict, look: string])[] = [
  ['looks-dirty', 'dirty'],
  ['too-yellow', 'yellow'],
];

const leanOf = (color: SampleColor): string => undertoneOf(color.lab).word;

/** From here on hues are called opposite, below different. Our judgment. */
const OPPOSITE_DEG = 150;

function opposedLeans(
  a: Phrase,
  aLean: string,
  b: Phrase,
  bLean: string,
  { may, opposite }: { readonly may: boolean; readonly opposite: boolean },
): string {
  const lean = may ? 'may lean' : a.plural ? 'lean' : 'leans';
  const ways = opposite ? 'opposite ways' : 'different ways';
  return `${sentenceCase(a.text)} ${lean} toward ${hueNoun(aLean)}, ${b.text} toward ${hueNoun(bLean)}: ${ways}.`;
}

const HUES: Readonly<Record<string, string>> = {
  pinkish: 'pink',
  reddish: 'red',
  brownish: 'brown',
  yellowish: 'yellow',
  olive: 'olive',
  greenish: 'green',
  bluish: 'blue',
  purplish: 'purple',
};

/** "yellowish" as a direction: "yellow". Level 2 color names stay as they are. */
export const hueNoun = (word: string): string => HUES[word] ?? word;
