import type { Severity } from './assessment';
import type { SampleColor } from './sample-color';

/**
 * Limits of the rules for whites. "Published" ones carry their source; the rest are our judgment and may move once
 * people have been asked.
 */
export const WHITES = {
  /** L* from which a near-neutral counts as a white. Our judgment. */
  lightnessMin: 80,
  /**
   * Below this L* a color is a gray by name (ISCC-NBS grays end at value 8.5): a plain one is meant as gray, so that it looks so
   * is a note; a tinted one of a material that comes in any color is meant as it is, so visible at most. Our judgment.
   */
  grayBelow: 85,
  /** a* difference visible in whites, published (IADR abstract, 32 observers; another study says about 1). */
  redGreenMax: 3.24,
  /**
   * Acceptable difference in the whiteness index WID, published for tooth-colored ceramics (Perez et al. 2016 and later use
   * of dWID > 2.60; cited from memory). Nobody has tested it on counters, tiles or paint.
   */
  whitenessLimit: 2.6,
  /** Keeps cases of pure tint out of "dirty". Our judgment. */
  dirtyLightnessMin: 3,
  /** The lighter one may be this much warmer and still be the cleaner one. Our judgment. */
  dirtyWarmthMax: 1,
  /** Below this anchored lightness the darker white looks gray. Our judgment. */
  graveAnchoredLightness: 92,
  /** Twice the acceptable CIEDE2000 limit of 1.8 (Paravina et al. 2015). Our judgment. */
  graveChromaPart: 3.6,
} as const;

/** Undertone strength from which a lean has a name (ISCC-NBS). */
const NAMED_STRENGTH = 1;

/** What the rules for whites compare: always lighter minus darker, in CIELAB D65, 2 degree. */
export interface WhiteNumbers {
  readonly dL: number;
  readonly dA: number;
  readonly dB: number;
  readonly dWid: number;
  /** Relative warmth along 50 degrees. */
  readonly dW: number;
  /** Lightness and chroma parts of CIEDE2000. */
  readonly lightnessPart: number;
  readonly chromaPart: number;
  /** Anchored lightness of the darker one. */
  readonly lRel: number;
}

export interface WhitesVerdict {
  readonly verdict: 'looks-dirty' | 'too-yellow' | 'agree';
  readonly severity: Severity | null;
  /** Which one suffers; null when they agree. */
  readonly faulty: 'lighter' | 'darker' | null;
}

type AsWhite = Pick<SampleColor, 'lab' | 'mayBeWhite' | 'munsellChroma' | 'whiteChromaMax'>;

/**
 * Whether two components may be judged as whites: both light and near neutral as samples, none of wood or metal, and
 * their a* close enough that whiteness scales still agree. A pink or green lean is named, never judged. All of it is decided
 * by the samples, on whichever basis the verdict is.
 */
export const inDomainOfWhites = (a: AsWhite, b: AsWhite): boolean =>
  a.mayBeWhite &&
  b.mayBeWhite &&
  a.lab.l >= WHITES.lightnessMin &&
  b.lab.l >= WHITES.lightnessMin &&
  Math.abs(a.lab.a - b.lab.a) <= WHITES.redGreenMax &&
  a.munsellChroma() <= a.whiteChromaMax &&
  b.munsellChroma() <= b.whiteChromaMax;

/** A light gray by name, without an undertone one would name: it is meant as gray. */
export const isPlainGray = ({ lab, strength }: Pick<SampleColor, 'lab' | 'strength'>): boolean =>
  lab.l < WHITES.grayBelow && strength() < NAMED_STRENGTH;

/** Verdict on two whites within the domain; null when they differ in a way no whiteness rule covers. */
export function judgeWhites(n: WhiteNumbers): WhitesVerdict | null {
  const looksDirty =
    n.dWid >= WHITES.whitenessLimit &&
    n.dL >= WHITES.dirtyLightnessMin &&
    n.dW <= WHITES.dirtyWarmthMax &&
    n.lightnessPart >= n.chromaPart;
  if (looksDirty) {
    const severity = n.lRel < WHITES.graveAnchoredLightness ? 'grave' : 'visible';
    return { verdict: 'looks-dirty', severity, faulty: 'darker' };
  }
  if (Math.abs(n.dWid) < WHITES.whitenessLimit) return { verdict: 'agree', severity: null, faulty: null };
  // The yellower one is the less white one; its own excess in warmth and b* must carry the difference.
  const lighterIsYellower = n.dWid < 0;
  const sign = lighterIsYellower ? 1 : -1;
  if (sign * n.dW > 0 && sign * n.dB >= Math.abs(n.dA)) {
    const severity = n.chromaPart >= WHITES.graveChromaPart ? 'grave' : 'visible';
    return { verdict: 'too-yellow', severity, faulty: lighterIsYellower ? 'lighter' : 'darker' };
  }
  return null;
}
