import { differenceParts } from '../color/difference';
import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import { wid } from '../color/wid';
import { munsellFromLabD65 } from '../naming/munsell';
import { undertoneOf } from '../naming/undertone';
import { warmth } from '../naming/warmth';
import { drawLab } from '../uncertainty/lab-error';
import { combinedUncertainty } from './cannot-tell';
import { type Firmness, firmnessOf } from './firmness';
import { PAIR } from './pair';
import { hueNoun } from './pair-sentences';
import type { SampleColor } from './sample-color';
import { sourceDraws } from './source-draws';
import { inDomainOfWhites } from './whites';

/** One of two colors held side by side, CIELAB D65, 2 degree, as samples or both as installed. */
export interface LeanSide extends Pick<SampleColor, 'mayBeWhite' | 'whiteChromaMax' | 'uncertaintyDe00'> {
  readonly lab: Lab<'D65-2'>;
  /** The color of its sample, which decides whether it counts as a white; `lab` where absent. */
  readonly sample?: Lab<'D65-2'>;
}

/** What neighbors do to each other, as a share of the neighbor's a* and b*. No value is published for kitchens: our judgment. */
export const INDUCED_AT_MOST = 0.3;

/** How one color leans beside another; differences are own minus other. */
export interface Lean {
  /** `same`: nobody tells them apart. `level`: lighter or darker, but no lean people see. */
  readonly kind: 'same' | 'level' | 'leans' | 'too-close';
  /** Toward which hue, an ISCC-NBS word as a direction ("pink"); null without a lean. */
  readonly hue: string | null;
  /** Hue angle of the difference, degrees; null where there is none. */
  readonly hueDeg: number | null;
  readonly size: 'little' | 'clear' | 'strong';
  readonly de00: number;
  readonly chromaPart: number;
  readonly lightnessPart: number;
  readonly dL: number;
  /** Difference of relative warmth along 50 degrees. */
  readonly dW: number;
  /** Difference of the whiteness index WID; null outside the domain of whites. */
  readonly dWid: number | null;
  /** How far both are known together, root mean square CIEDE2000. */
  readonly combinedDe00: number;
  /** Share of plausible errors under which it leans that way: within 45 degrees of hue, and seen. Null without a lean. */
  readonly holdsIn: number | null;
  readonly firmness: Firmness;
  /** What the other may make of it, at most; null where that is less than people see. */
  readonly induced: { readonly lab: Lab<'D65-2'>; readonly name: string } | null;
}

/** Chroma parts of CIEDE2000: acceptable, and twice that. Published limits of a whole difference; as grades our judgment. */
const SIZES = { clear: PAIR.acceptable, strong: 2 * PAIR.acceptable } as const;
const DRAWS = 200;

/**
 * How a color leans beside another: how far, to which hue, and whether that can be told. Too close to call is what lies within
 * the combined uncertainty, or turns under plausible errors.
 */
export function leanBeside(own: LeanSide, other: LeanSide): Lean {
  const parts = differenceParts(own.lab, other.lab);
  const da = own.lab.a - other.lab.a;
  const db = own.lab.b - other.lab.b;
  const chroma = Math.hypot(da, db);
  const combinedDe00 = combinedUncertainty(own, other);
  const seen = parts.chroma >= PAIR.perceptible;
  const holdsIn = seen ? sharesLean(own, other, { da, db }) : null;
  const firmness = firmnessOf(holdsIn);
  const tooClose = combinedDe00 >= PAIR.perceptible && (seen ? parts.chroma : parts.de00) < combinedDe00;
  const kind = tooClose || firmness === 'open' ? 'too-close' : seen ? 'leans' : alikeKind(parts.de00);
  return {
    kind,
    hue: kind === 'leans' ? hueToward(own.lab.l, da, db) : null,
    hueDeg: chroma > 0 ? ((Math.atan2(db, da) * 180) / Math.PI + 360) % 360 : null,
    size: parts.chroma >= SIZES.strong ? 'strong' : parts.chroma >= SIZES.clear ? 'clear' : 'little',
    de00: parts.de00,
    chromaPart: parts.chroma,
    lightnessPart: parts.lightness,
    dL: own.lab.l - other.lab.l,
    dW: warmth(own.lab).w50 - warmth(other.lab).w50,
    dWid: inDomainOfWhites(asWhite(own), asWhite(other)) ? wid(own.lab) - wid(other.lab) : null,
    combinedDe00,
    holdsIn,
    firmness,
    induced: inducedBy(own.lab, other.lab),
  };
}

const alikeKind = (de00: number) => (de00 < PAIR.perceptible ? 'same' : 'level');

const asWhite = ({ lab, sample = lab, mayBeWhite, whiteChromaMax }: LeanSide) => ({
  lab: sample,
  mayBeWhite,
  whiteChromaMax,
  munsellChroma: () => munsellFromLabD65(sample).chroma,
});

/** Chromas at which a tint has a word: blues, purples and pinks soon, yellows late. The first that has one counts. */
const WORD_CHROMAS = [2.2, 6] as const;
/** Lightness at which words are fullest. */
const WORD_LIGHTNESS = { least: 55, most: 90 } as const;

/** The ISCC-NBS word of a tint in that direction, as a direction: "pink". */
function hueToward(l: number, da: number, db: number): string {
  const lightness = Math.min(WORD_LIGHTNESS.most, Math.max(WORD_LIGHTNESS.least, l));
  const words = WORD_CHROMAS.map((chroma) => {
    const scale = chroma / Math.hypot(da, db);
    return undertoneOf({ l: lightness, a: scale * da, b: scale * db });
  });
  return hueNoun((words.find(({ level }) => level !== 'none') ?? words[1]!).word);
}

/** Share of seeded plausible errors under which the lean is seen and stays within 45 degrees of its hue. */
function sharesLean(own: LeanSide, other: LeanSide, { da, db }: { da: number; db: number }): number {
  const draws = [own, other].map((_, i) => sourceDraws(`lean ${i}`, DRAWS, 1).normals);
  const lab = (side: LeanSide, normals: Float64Array, d: number) =>
    drawLab(side.lab, side.uncertaintyDe00, [normals[3 * d]!, normals[3 * d + 1]!, normals[3 * d + 2]!]);
  let held = 0;
  for (let d = 0; d < DRAWS; d++) {
    const one = lab(own, draws[0]!, d);
    const two = lab(other, draws[1]!, d);
    const [a, b] = [one.a - two.a, one.b - two.b];
    const along = (a * da + b * db) / (Math.hypot(a, b) * Math.hypot(da, db));
    if (along >= Math.SQRT1_2 && differenceParts(one, two).chroma >= PAIR.perceptible) held++;
  }
  return held / DRAWS;
}

/** Near-neutrals push each other away along a* and b* (Hunt's model near the neutral axis); strong colors more roughly so. */
function inducedBy(own: Lab<'D65-2'>, other: Lab<'D65-2'>): Lean['induced'] {
  const lab = { l: own.l, a: own.a - INDUCED_AT_MOST * other.a, b: own.b - INDUCED_AT_MOST * other.b };
  if (chromaOf(other) === 0 || differenceParts(own, lab).chroma < PAIR.perceptible) return null;
  return { lab, name: undertoneOf(lab).name };
}
