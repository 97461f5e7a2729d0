import { hueDegOf, yFromLightness } from '../color/lab';
import type { Lab } from '../color/types';
import type { ComponentRole, FinishClass, LaidFinish, Provenance } from '../finish/types';
import { munsellFromLabD65 } from '../naming/munsell';
import { neutralLimit, undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';

/**
 * One color component as a sample (D65, 2 degree): what decides which rules apply to it.
 * `munsellChroma` and `strength` look up the Munsell renotation on first use.
 */
export interface SampleColor {
  /** Same finish (for grout: whichever tile), same component, same color: same key, on whichever surface. */
  readonly key: string;
  readonly finish: string;
  readonly role: ComponentRole;
  /** Area share in its surface, 0-1. */
  readonly share: number;
  readonly lab: Lab<'D65-2'>;
  /** False for wood, wood prints, metals and fittings: they never enter the rules for whites. */
  readonly mayBeWhite: boolean;
  /**
   * False for metals and fittings: what one sees of them is mostly what they mirror, and they are chosen as accents. False for
   * wood that is as brown as wood is: beside gray or blue it is a contrast of materials.
   */
  readonly mayLean: boolean;
  /** Of a material that is made in any color one likes. */
  readonly isAnyColor: boolean;
  /** Greatest Munsell chroma at which it still counts as a white. */
  readonly whiteChromaMax: number;
  readonly provenance: Provenance;
  /** Root mean square of the whole difference, CIEDE2000 units. */
  readonly uncertaintyDe00: number;
  /** The part of lightness in that, where it is known apart. */
  readonly lightnessDe00: number | undefined;
  readonly munsellChroma: () => number;
  /** Undertone strength U: Munsell chroma over the ISCC-NBS neutral limit. */
  readonly strength: () => number;
}

/** Fittings are judged for balance, not for whiteness. */
const FITTINGS: ReadonlySet<SurfaceId> = new Set(['sink', 'tap', 'appliance', 'hardware']);

/** Sink, faucet, appliance, hardware. Painted trim is no fitting: it is held against wall and tile. */
export const isFitting = (surface: SurfaceId): boolean => FITTINGS.has(surface);

/** What of a finish decides whether it may count as a white. */
export interface FinishMatter {
  readonly class: FinishClass;
  readonly components: readonly { readonly role: ComponentRole | 'average' }[];
}

/** Stone carries `grain` too, of crystals; on any other class the word means wood or its print. */
export const isWoodOrPrint = (finish: FinishMatter): boolean =>
  finish.class === 'wood' ||
  (finish.class !== 'stone' &&
    finish.class !== 'engineered' &&
    finish.class !== 'solid surface' &&
    finish.components.some((c) => c.role === 'grain'));

/**
 * Hues of woods as they grow, degrees: cherry 58 to birch 80, limed and dark-stained ones to either side (common practice). Wood
 * washed gray, or a print of it, leans as paint does.
 */
const WOOD_HUES = { from: 40, to: 90 } as const;

const isWoodBrown = (finish: LaidFinish, lab: Lab<'D65-2'>): boolean => {
  const hue = hueDegOf(lab);
  return isWoodOrPrint(finish) && hue >= WOOD_HUES.from && hue <= WOOD_HUES.to;
};

const NEAR_WHITE_CHROMA = 1.5;
const PLAIN_WHITE_CHROMA = 2;
const PLAIN_SHARE = 0.9;

/** Paint, glaze, painted glass and plain stone show a larger chroma before they stop being seen as a white. Our judgment. */
function whiteChromaMax(kind: FinishClass, share: number): number {
  if (kind === 'paint' || kind === 'glazed' || kind === 'glass') return PLAIN_WHITE_CHROMA;
  if ((kind === 'stone' || kind === 'engineered') && share >= PLAIN_SHARE) return PLAIN_WHITE_CHROMA;
  return NEAR_WHITE_CHROMA;
}

/** The whole of a finish, as the rules for whites take it. */
export const wholeAsWhite = (
  surface: SurfaceId,
  finish: FinishMatter,
): Pick<SampleColor, 'mayBeWhite' | 'whiteChromaMax'> => ({
  mayBeWhite: !isFitting(surface) && finish.class !== 'metal' && !isWoodOrPrint(finish),
  whiteChromaMax: whiteChromaMax(finish.class, 1),
});

/** Component `index` of a finish laid on `surface`, as the rules see it. */
export function sampleColor(surface: SurfaceId, finish: LaidFinish, index: number): SampleColor {
  const component = finish.components[index]!;
  const { l, a, b } = component.labD65;
  // Grout is a finish of its own, whatever it joins: the same grout between two tiles is one color.
  const isGrout = component.role === 'grout';
  const isAccent = isFitting(surface) || (!isGrout && finish.class === 'metal');
  const mayLean = !isAccent && (isGrout || !isWoodBrown(finish, component.labD65));
  const mayBeWhite = !isAccent && (isGrout || !isWoodOrPrint(finish));
  const sample = {
    key: `${isGrout ? '' : finish.id}#${component.role}:${l},${a},${b}${mayBeWhite ? '' : mayLean ? '!' : '!!'}`,
    finish: finish.id,
    role: component.role,
    share: component.share,
    lab: component.labD65,
    mayBeWhite,
    mayLean,
    isAnyColor: !isGrout && (finish.class === 'paint' || finish.class === 'laminate'),
    whiteChromaMax: whiteChromaMax(isGrout ? 'grout' : finish.class, component.share),
    provenance: component.provenance,
    uncertaintyDe00: component.uncertaintyDe00,
    lightnessDe00: component.lightnessDe00,
  };
  return withLookUp(sample, () => {
    const undertone = undertoneOf(component.labD65);
    return { chroma: undertone.munsell.chroma, strength: undertone.strength };
  });
}

/** The same component had its color been measured as `lab`. */
export const recolored = (color: SampleColor, lab: Lab<'D65-2'>): SampleColor =>
  withLookUp({ ...color, lab }, () => {
    const munsell = munsellFromLabD65(lab);
    return { chroma: munsell.chroma, strength: munsell.chroma / neutralLimit(munsell) };
  });

/** Luminance factor Y, 0-100. */
export const luminanceOf = (color: SampleColor): number => yFromLightness(color.lab.l);

/** A white or near-white by its own numbers, wherever it lies. */
export const isNearWhite = (color: SampleColor): boolean =>
  color.lab.l >= 80 && color.munsellChroma() <= color.whiteChromaMax;

/**
 * Beige: between L* 65 and 87, hue from yellowish pink to yellow (CIELAB, degrees), Munsell chroma up to 3. The trade takes it for a neutral
 * though its strength is over that of a color. Kelly and Judd's dictionary has beige in blocks 33, 79, 89 and 90; the limits are our judgment.
 */
const BEIGE = { darkest: 65, lightest: 87, chromaMax: 3, from: 40, to: 100 } as const;

export const isBeige = (color: SampleColor): boolean => {
  const hue = hueDegOf(color.lab);
  return (
    color.lab.l >= BEIGE.darkest &&
    color.lab.l <= BEIGE.lightest &&
    hue >= BEIGE.from &&
    hue <= BEIGE.to &&
    color.munsellChroma() <= BEIGE.chromaMax
  );
};

interface LookedUp {
  readonly chroma: number;
  readonly strength: number;
}

function withLookUp(color: Omit<SampleColor, 'munsellChroma' | 'strength'>, lookUp: () => LookedUp): SampleColor {
  let known: LookedUp | undefined;
  const once = (): LookedUp => {
    known ??= lookUp();
    return known;
  };
  return { ...color, munsellChroma: () => once().chroma, strength: () => once().strength };
}
