import { chromaOf } from '../color/lab';
import type { Provenance } from '../finish/types';
import { PAIR, type PairJudgement, type PairSide } from './pair';
import type { SampleColor } from './sample-color';
import { WHITES } from './whites';

/** Ways of knowing a color that leave its undertone open. */
const LOOSE: ReadonlySet<Provenance> = new Set<Provenance>(['photo-with-card', 'photo', 'by-eye', 'screen']);

const isLoose = (color: SampleColor): boolean => LOOSE.has(color.provenance);

/** Standard deviation of the difference of two colors, CIEDE2000 units. */
const combinedUncertainty = (a: SampleColor, b: SampleColor): number =>
  Math.hypot(a.uncertaintyDe00, b.uncertaintyDe00);

/** Errors in a* and b* against those in L*: our judgment. */
export const AB_OF_L = 0.7;

/** WID units per CIEDE2000 unit of uncertainty, with sigma(L*) = u and sigma(a*) = sigma(b*) = 0.7 u. */
const WID_PER_DE00 = Math.hypot(0.511, AB_OF_L * 2.324, AB_OF_L * 1.1);

/** How far the colors may err, CIEDE2000 units, before the verdict turns into another one. */
function marginDe00(judgement: PairJudgement, a: PairSide, b: PairSide): number {
  const n = judgement.numbers;
  switch (judgement.verdict) {
    case 'same':
    case 'match':
      return PAIR.acceptable - judgement.de00;
    case 'agree':
    case 'looks-dirty':
    case 'too-yellow':
      return Math.abs(Math.abs(n['d_wid']!) - WHITES.whitenessLimit) / WID_PER_DE00;
    case 'relates':
    case 'pulls-apart': {
      const limit = judgement.verdict === 'relates' ? PAIR.echoHueMax : PAIR.opposedHueMin;
      const toLimit = Math.min(90, Math.abs(n['hue_apart_deg']! - limit));
      return Math.min(chromaOf(a.lab), chromaOf(b.lab)) * Math.sin((toLimit * Math.PI) / 180);
    }
    default:
      return Number.POSITIVE_INFINITY;
  }
}

/** True when a color known only from a photo, a screen or by eye errs further than the verdict can bear. */
export const isBeyondProvenance = (judgement: PairJudgement, a: PairSide, b: PairSide): boolean =>
  (isLoose(a.color) || isLoose(b.color)) && combinedUncertainty(a.color, b.color) > marginDe00(judgement, a, b);

const PROVENANCE_WORDS: Readonly<Record<Provenance, string>> = {
  measured: 'measured',
  declared: 'declared by a supplier',
  'photo-with-card': 'taken from a photo with a card',
  photo: 'taken from a photo',
  'by-eye': 'judged by eye',
  screen: 'picked on a screen',
};

/** "both colors are taken from a photo", "one color is judged by eye": why a verdict is withheld. */
export function provenanceReason(colors: readonly SampleColor[]): string {
  const kinds = new Set(colors.map((c) => c.provenance));
  if (kinds.size === 1) {
    const count = colors.length === 2 ? 'both colors are' : 'the colors are';
    return `${count} ${PROVENANCE_WORDS[colors[0]!.provenance]}`;
  }
  const loosest = colors.reduce((worst, c) => (c.uncertaintyDe00 > worst.uncertaintyDe00 ? c : worst));
  return `one of the colors is ${PROVENANCE_WORDS[loosest.provenance]}`;
}
