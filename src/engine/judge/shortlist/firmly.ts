import { chromaOf } from '../../color/lab';
import type { Lab } from '../../color/types';
import { wid } from '../../color/wid';
import { type LabCovariance, labCovariance } from '../../uncertainty/lab-error';
import { PAIR, type PairJudgment, type PairSide } from '../pair';
import type { SampleColor } from '../sample-color';
import { WHITES } from '../whites';

/**
 * A lower bound of the share of plausible errors (0-1) under which a pair still shows some fault: every limit the verdict rests
 * on is taken as a normal margin of first order, and the chances to cross one are added up (Boole's inequality). Never above
 * what drawing errors gives but for what first order leaves out, and falls with every uncertainty. 0 without a fault.
 */
export function faultHoldsAtLeast(judgment: PairJudgment, a: PairSide, b: PairSide): number {
  switch (judgment.verdict) {
    case 'looks-dirty':
    case 'too-yellow':
      return Math.max(0, 1 - beyondMatch(judgment, a, b) - whitesCross(judgment, a, b));
    case 'pulls-apart':
      return Math.max(0, 1 - beyondMatch(judgment, a, b) - apartCross(judgment, a, b));
    default:
      return 0;
  }
}

/** Share of plausible errors (0-1) under which the whiteness of two whites parts further than people accept. */
export function whitesPart(a: PairSide, b: PairSide): number {
  const apart = Math.abs(wid(a.lab) - wid(b.lab));
  const deviation = spread(a, b, WID_SLOPE);
  return (
    crossing(WHITES.whitenessLimit - apart, deviation) +
    (deviation > 0 ? upperTail((WHITES.whitenessLimit + apart) / deviation) : 0)
  );
}

/** Share of plausible errors (0-1) under which the hues of two colors stand opposed, and both are a lean, no color: 0 where not. */
export function huesOppose(apartDeg: number, a: PairSide, b: PairSide): number {
  const leans = [a, b].every(
    ({ color }) => color.mayLean && color.strength() >= PAIR.namedStrength && color.strength() < PAIR.colorStrength,
  );
  return leans ? crossing(PAIR.opposedHueMin - apartDeg, Math.hypot(hueSpreadDeg(a), hueSpreadDeg(b))) : 0;
}

/** Slope of the whiteness index WID (see `wid`), of lightness, a*, b* and of relative warmth (see `warmth`). */
const WID_SLOPE: Lab<'D65-2'> = { l: 0.511, a: -2.324, b: -1.1 };
const L_SLOPE: Lab<'D65-2'> = { l: 1, a: 0, b: 0 };
const A_SLOPE: Lab<'D65-2'> = { l: 0, a: 1, b: 0 };
const B_SLOPE: Lab<'D65-2'> = { l: 0, a: 0, b: 1 };
const WARMTH_SLOPE: Lab<'D65-2'> = { l: 0, a: Math.cos((50 * Math.PI) / 180), b: Math.sin((50 * Math.PI) / 180) };

/** Errors may make the pair a match. */
const beyondMatch = ({ de00 }: PairJudgment, a: PairSide, b: PairSide): number =>
  crossing(de00 - PAIR.acceptable, Math.hypot(a.color.uncertaintyDe00, b.color.uncertaintyDe00));

function whitesCross({ numbers: n }: PairJudgment, a: PairSide, b: PairSide): number {
  const past = (margin: number, slope: Lab<'D65-2'>) => crossing(margin, spread(a, b, slope));
  const dWid = n['d_wid']!;
  const whole = Math.hypot(a.color.uncertaintyDe00, b.color.uncertaintyDe00);
  const asDirty =
    dWid < 0
      ? 1
      : past(n['d_l']! - WHITES.dirtyLightnessMin, L_SLOPE) +
        past(WHITES.dirtyWarmthMax - n['d_w']!, WARMTH_SLOPE) +
        crossing(n['lightness_part']! - n['chroma_part']!, whole);
  // The yellower side is the less white one.
  const sign = dWid < 0 ? 1 : -1;
  const asYellow =
    past(sign * n['d_w']!, WARMTH_SLOPE) +
    crossing(sign * n['d_b']! - Math.abs(n['d_a']!), spread(a, b, A_SLOPE) + spread(a, b, B_SLOPE));
  return (
    past(Math.abs(dWid) - WHITES.whitenessLimit, WID_SLOPE) +
    Math.min(1, asDirty, asYellow) +
    past(WHITES.redGreenMax - Math.abs(a.color.lab.a - b.color.lab.a), A_SLOPE) +
    leavesWhites(a) +
    leavesWhites(b)
  );
}

/** Errors may take a color out of the domain of whites. */
const leavesWhites = ({ color }: PairSide): number =>
  crossing(color.lab.l - WHITES.lightnessMin, along(color, L_SLOPE)) +
  crossing(
    color.whiteChromaMax - color.munsellChroma(),
    chromaSpread(color) * perChroma(color.munsellChroma(), color.lab),
  );

function apartCross({ numbers: n }: PairJudgment, a: PairSide, b: PairSide): number {
  const hue = Math.hypot(hueSpreadDeg(a), hueSpreadDeg(b));
  const strengths = [a, b].map(({ color }) => {
    const s = chromaSpread(color) * perChroma(color.strength(), color.lab);
    return crossing(color.strength() - PAIR.namedStrength, s) + crossing(PAIR.colorStrength - color.strength(), s);
  });
  return crossing(n['hue_apart_deg']! - PAIR.opposedHueMin, hue) + strengths[0]! + strengths[1]! + entersWhites(a, b);
}

/** Errors may make whites of both, which have rules of their own; where they are whites already, nothing is sure. */
function entersWhites(a: PairSide, b: PairSide): number {
  if (!a.color.mayBeWhite || !b.color.mayBeWhite) return 0;
  const entries = [a, b].map(({ color }) =>
    Math.min(
      crossing(WHITES.lightnessMin - color.lab.l, along(color, L_SLOPE)),
      crossing(
        color.munsellChroma() - color.whiteChromaMax,
        chromaSpread(color) * perChroma(color.munsellChroma(), color.lab),
      ),
    ),
  );
  const redGreen = crossing(Math.abs(a.color.lab.a - b.color.lab.a) - WHITES.redGreenMax, spread(a, b, A_SLOPE));
  return Math.min(entries[0]!, entries[1]!, redGreen);
}

/** Chance that a normal error of that standard deviation uses up a margin; certain where there is none. */
function crossing(margin: number, deviation: number): number {
  if (margin <= 0) return 1;
  return deviation > 0 ? upperTail(margin / deviation) : 0;
}

/** Of the standard normal distribution, x >= 0: Abramowitz and Stegun 26.2.17, within 7.5e-8. */
function upperTail(x: number): number {
  const t = 1 / (1 + 0.2316419 * x);
  const poly = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return (poly * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}

const covariances = new WeakMap<SampleColor, LabCovariance>();

function covarianceOf(color: SampleColor): LabCovariance {
  const before = covariances.get(color);
  if (before) return before;
  const made = labCovariance(color.lab, color.uncertaintyDe00, color.lightnessDe00);
  covariances.set(color, made);
  return made;
}

/** Standard deviation of the error of a color along `slope`. */
function along(color: SampleColor, { l, a, b }: Lab<'D65-2'>): number {
  const [ll, la, lb, , aa, ab, , , bb] = covarianceOf(color);
  return Math.sqrt(l * l * ll + a * a * aa + b * b * bb + 2 * (l * a * la + l * b * lb + a * b * ab));
}

const spread = (a: PairSide, b: PairSide, slope: Lab<'D65-2'>): number =>
  Math.hypot(along(a.color, slope), along(b.color, slope));

/** Standard deviation of chroma, C*ab. */
function chromaSpread(color: SampleColor): number {
  const chroma = chromaOf(color.lab);
  return along(color, chroma === 0 ? B_SLOPE : { l: 0, a: color.lab.a / chroma, b: color.lab.b / chroma });
}

/** How much of a number that grows with chroma there is to one C*ab. */
const perChroma = (value: number, lab: Lab<'D65-2'>): number => {
  const chroma = chromaOf(lab);
  return chroma === 0 ? 0 : value / chroma;
};

/** Standard deviation of the hue angle in degrees; a neutral has none that one could know. */
function hueSpreadDeg({ color, lab }: PairSide): number {
  const chroma = chromaOf(lab);
  if (chroma === 0) return Number.POSITIVE_INFINITY;
  return (along(color, { l: 0, a: -lab.b / chroma, b: lab.a / chroma }) / chroma) * (180 / Math.PI);
}
