import { anchoredLightness } from '../color/anchored-lightness';
import { differenceParts } from '../color/difference';
import { hueApartDeg } from '../color/hue-apart';
import { yFromLightness } from '../color/lab';
import type { Lab } from '../color/types';
import { wid } from '../color/wid';
import { warmth } from '../naming/warmth';
import type { PairVerdict, Severity } from './assessment';
import { isBeige, type SampleColor } from './sample-color';
import { atMost } from './severity';
import { inDomainOfWhites, isPlainGray, judgeWhites, WHITES } from './whites';

/** Limits of the pair rules outside the whites. */
export const PAIR = {
  /** CIEDE2000, 50:50 perceptible and acceptable: published (Paravina et al. 2015, 175 observers). */
  perceptible: 0.8,
  acceptable: 1.8,
  /** Hue similarity is the best supported factor of harmony (Schloss & Palmer 2011); the degrees are our judgment. */
  echoHueMax: 30,
  echoChromaPartMax: 3.6,
  opposedHueMin: 90,
  /** L* difference from which a lightness step is clear: the center of a published harmony term (Ou and Luo 2006). */
  clearStep: 10,
  /** Below this there is no step at all: the foot of the same term. */
  noStep: 5,
  /** Undertone strength from which a lean has a name (ISCC-NBS), and from which it is a color meant as such. */
  namedStrength: 1,
  colorStrength: 4,
  /** Two colors that are both darker than this in L* hardly show their hue. Our judgment. */
  hueSeenFrom: 30,
} as const;

/** One side of a pair: its sample decides which rules apply, its reading on the basis decides the verdict. */
export interface PairSide {
  readonly color: SampleColor;
  readonly lab: Lab<'D65-2'>;
}

export interface PairContext {
  /** Y (0-100) of the lightest near-white in view in the same light; the lighter of the pair where unknown. */
  readonly anchorY: number | null;
}

export interface PairJudgment {
  readonly verdict: PairVerdict;
  readonly severity: Severity | null;
  /** Which side suffers, for the verdicts on whites. */
  readonly faulty: 'a' | 'b' | null;
  readonly de00: number;
  /** The numbers behind the verdict; differences are lighter minus darker. */
  readonly numbers: Readonly<Record<string, number>>;
}

/**
 * Judges two color components held side by side. First match wins; the order of the two never matters.
 * A lightness step without any other relation is `none`, its size is `numbers.d_l`.
 */
export function judgePair(a: PairSide, b: PairSide, context: PairContext): PairJudgment {
  const aIsLighter = isLighter(a.lab, b.lab);
  const light = aIsLighter ? a : b;
  const dark = aIsLighter ? b : a;
  const parts = differenceParts(light.lab, dark.lab);
  const dL = light.lab.l - dark.lab.l;
  const dA = light.lab.a - dark.lab.a;
  const dB = light.lab.b - dark.lab.b;
  const numbers: Record<string, number> = {
    de00: parts.de00,
    lightness_part: parts.lightness,
    chroma_part: parts.chroma,
    d_l: dL,
    d_a: dA,
    d_b: dB,
  };
  const found = (verdict: PairVerdict, severity: Severity | null = null, faulty: 'a' | 'b' | null = null) => ({
    verdict,
    severity,
    faulty,
    de00: parts.de00,
    numbers,
  });

  if (parts.de00 <= PAIR.perceptible) return found('same');
  if (parts.de00 <= PAIR.acceptable) return found('match');

  if (inDomainOfWhites(a.color, b.color)) {
    const dWid = wid(light.lab) - wid(dark.lab);
    const dW = warmth(light.lab).w50 - warmth(dark.lab).w50;
    const yLight = yFromLightness(light.lab.l);
    const lRel = anchoredLightness(yFromLightness(dark.lab.l), Math.max(yLight, context.anchorY ?? 0));
    Object.assign(numbers, { d_wid: dWid, d_w: dW, l_rel: lRel });
    const whites = judgeWhites({
      dL,
      dA,
      dB,
      dWid,
      dW,
      lightnessPart: parts.lightness,
      chromaPart: parts.chroma,
      lRel,
    });
    if (whites) {
      const faulty = whites.faulty === null ? null : (whites.faulty === 'lighter') === aIsLighter ? 'a' : 'b';
      const suffering = faulty === 'a' ? a.color : b.color;
      return found(whites.verdict, whites.severity && atMost(gravestFor(suffering), whites.severity), faulty);
    }
  }

  const hueApart = hueApartDeg(light.lab, dark.lab);
  const mayEcho = hueApart <= PAIR.echoHueMax && parts.chroma <= PAIR.echoChromaPartMax;
  const mayOppose = hueApart >= PAIR.opposedHueMin;
  // The look-up of the undertone is the slow step: only where the hues could matter.
  if (mayEcho || mayOppose) {
    const weaker = Math.min(a.color.strength(), b.color.strength());
    const stronger = Math.max(a.color.strength(), b.color.strength());
    Object.assign(numbers, { hue_apart_deg: hueApart, strength_weaker: weaker, strength_stronger: stronger });
    if (weaker >= PAIR.namedStrength) {
      if (mayEcho) return found('relates');
      if ([a, b].every(({ color }) => isLean(color)) && a.color.mayLean && b.color.mayLean) {
        return found('pulls-apart', light.lab.l < PAIR.hueSeenFrom ? 'note' : 'visible');
      }
    }
  }
  return found('none');
}

/** A lean, not a color meant as such: below that strength, or beige. */
export const isLean = (color: SampleColor): boolean => color.strength() < PAIR.colorStrength || isBeige(color);

/** A gray beside a white is meant as one, the more so where it comes in any color. */
function gravestFor(suffering: SampleColor): Severity {
  if (isPlainGray(suffering)) return 'note';
  return suffering.isAnyColor && suffering.lab.l < WHITES.grayBelow ? 'visible' : 'grave';
}

/** A total order by lightness, so that swapping the two sides swaps nothing else. */
function isLighter(a: Lab<'D65-2'>, b: Lab<'D65-2'>): boolean {
  if (a.l !== b.l) return a.l > b.l;
  if (a.b !== b.b) return a.b < b.b;
  return a.a <= b.a;
}
