import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import type { LaidFinish, Provenance } from '../finish/types';
import { labCovariance } from '../uncertainty/lab-error';
import { isAlike } from './claims';
import { PAIR, type PairJudgment, type PairSide } from './pair';
import type { SampleColor } from './sample-color';
import { WHITES } from './whites';

/** Ways of knowing a color that leave its undertone open. */
const LOOSE: ReadonlySet<Provenance> = new Set<Provenance>(['photo-with-card', 'photo', 'by-eye', 'screen']);

/** True for a color known in one of the ways that leave its undertone open. */
export const isLoose = ({ provenance }: Pick<SampleColor, 'provenance'>): boolean => LOOSE.has(provenance);

/** The same of a finish: any of its components. */
export const isLooseFinish = (finish: LaidFinish): boolean => finish.components.some(isLoose);

/** How far two colors known independently may be off together, root mean square, CIEDE2000 units. */
export const combinedUncertainty = (
  a: Pick<SampleColor, 'uncertaintyDe00'>,
  b: Pick<SampleColor, 'uncertaintyDe00'>,
): number => Math.hypot(a.uncertaintyDe00, b.uncertaintyDe00);

/** True when no verdict may be given: the answer is to compare samples. */
export const isWithheld = (judgment: PairJudgment, a: PairSide, b: PairSide): boolean =>
  isWithinErrors(judgment, a, b) || ((isLoose(a.color) || isLoose(b.color)) && isBeyondProvenance(judgment, a, b));

/**
 * The trade's rule: whether two finishes that differ by less than their combined uncertainty look alike cannot be told from
 * numbers. Where that uncertainty is below what people perceive, the rule has nothing to hide.
 */
function isWithinErrors({ verdict, de00 }: PairJudgment, a: PairSide, b: PairSide): boolean {
  const combined = combinedUncertainty(a.color, b.color);
  return isAlike(verdict) && combined >= PAIR.perceptible && de00 < combined;
}

/** True when the colors err further, in the root mean square, than the verdict can bear. */
function isBeyondProvenance(judgment: PairJudgment, a: PairSide, b: PairSide): boolean {
  const n = judgment.numbers;
  switch (judgment.verdict) {
    case 'same':
    case 'match':
      return combinedUncertainty(a.color, b.color) > PAIR.acceptable - judgment.de00;
    case 'agree':
    case 'looks-dirty':
    case 'too-yellow':
      return Math.hypot(whitenessError(a), whitenessError(b)) > Math.abs(Math.abs(n['d_wid']!) - WHITES.whitenessLimit);
    case 'relates':
    case 'pulls-apart': {
      const limit = judgment.verdict === 'relates' ? PAIR.echoHueMax : PAIR.opposedHueMin;
      return Math.hypot(hueErrorDeg(a), hueErrorDeg(b)) > Math.abs(n['hue_apart_deg']! - limit);
    }
    default:
      return false;
  }
}

/** Slope of the whiteness index WID (see `wid`). */
const WID_SLOPE: Lab<'D65-2'> = { l: 0.511, a: -2.324, b: -1.1 };

/** Standard deviation of a color's whiteness index WID. */
const whitenessError = (side: PairSide): number => errorAlong(side, WID_SLOPE);

/** Standard deviation of a color's hue angle, degrees; a neutral has none that one could know. */
function hueErrorDeg(side: PairSide): number {
  const { a, b } = side.lab;
  const chroma = chromaOf(side.lab);
  if (chroma === 0) return Number.POSITIVE_INFINITY;
  const across = errorAlong(side, { l: 0, a: -b / chroma, b: a / chroma });
  return (across / chroma) * (180 / Math.PI);
}

/** Standard deviation of the error of a color along `slope`, in units of the reading whose slope it is. */
function errorAlong({ color }: PairSide, { l, a, b }: Lab<'D65-2'>): number {
  const [ll, la, lb, , aa, ab, , , bb] = labCovariance(color.lab, color.uncertaintyDe00, color.lightnessDe00);
  return Math.sqrt(l * l * ll + a * a * aa + b * b * bb + 2 * (l * a * la + l * b * lb + a * b * ab));
}

const PROVENANCE_WORDS: Readonly<Record<Provenance, string>> = {
  measured: 'measured',
  declared: 'declared by a supplier',
  'photo-with-card': 'taken from a photo with a card',
  photo: 'taken from a photo',
  'by-eye': 'judged by eye',
  screen: 'picked on a screen',
};

/** "judged by eye": how a color came to be known. */
export const looseWords = ({ provenance }: SampleColor): string => PROVENANCE_WORDS[provenance];

/** "both colors are taken from a photo", "one color is judged by eye": why a verdict is withheld. */
export function provenanceReason(colors: readonly SampleColor[]): string {
  const kinds = new Set(colors.map((c) => c.provenance));
  if (kinds.size === 1) {
    const count = colors.length === 2 ? 'both colors are' : 'the colors are';
    return `${count} ${PROVENANCE_WORDS[colors[0]!.provenance]}`;
  }
  const loosest = colors.reduce((worst, c) => (c.uncertaintyDe00 > worst.uncertaintyDe00 ? c : worst));
  const alike = new Set(colors.filter((c) => c.provenance === loosest.provenance).map((c) => c.finish));
  return `${alike.size > 1 ? 'some of the colors are' : 'one of the colors is'} ${PROVENANCE_WORDS[loosest.provenance]}`;
}
