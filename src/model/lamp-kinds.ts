import { lightParts } from '../engine/lamp/light-parts';

/** A color of white lamps as one buys them: the number on the box. */
export interface LampColor {
  /** Nominal color temperature, K. */
  readonly nominal_k: number;
  readonly words: string;
}

/** The usual colors of white LED lamps, warm to cool. */
export const LAMP_COLORS: readonly LampColor[] = [
  { nominal_k: 2700, words: 'Warm, yellowish (2700 K)' },
  { nominal_k: 3000, words: 'Warm white (3000 K)' },
  { nominal_k: 4000, words: 'Neutral white (4000 K)' },
  { nominal_k: 5000, words: 'Cool white (5000 K)' },
  { nominal_k: 6500, words: 'Bluish, daylight (6500 K)' },
];

/** General color rendering index Ra, as LED lamps are sold in classes: usual, good, best (common practice, no source). */
export type RenderingClass = 80 | 90 | 97;
export const RENDERING_CLASSES: readonly RenderingClass[] = [80, 90, 97];

/** What the box of an LED lamp says. */
export interface LedLamp {
  readonly nominal_k: number;
  readonly ra: RenderingClass;
}

/**
 * Of the usual class the CIE illuminants nearest in color: phosphor-converted blue LEDs LED-B1 to LED-B5 (CIE 15:2018; Ra 77 to 85).
 * Of the better ones the engine's model of such a lamp. Real lamps of the same numbers differ.
 */
const CIE_LEDS: Readonly<Record<number, string>> = {
  2700: 'LED-B1',
  3000: 'LED-B2',
  4000: 'LED-B3',
  5000: 'LED-B4',
  6500: 'LED-B5',
};

/** Words for the light of an LED lamp, as settings name it. */
export const ledLight = ({ nominal_k, ra }: LedLamp): string =>
  (ra === 80 ? CIE_LEDS[nominal_k] : undefined) ?? `led:${nominal_k},${ra}`;

const LEDS: ReadonlyMap<string, LedLamp> = new Map(
  LAMP_COLORS.flatMap(({ nominal_k }) =>
    RENDERING_CLASSES.map((ra) => [ledLight({ nominal_k, ra }), { nominal_k, ra }] as const),
  ),
);

/** The LED lamp a light stands for, or null when it is none of the list (daylight, a filament, a lamp of one's own). */
export const ledOfLight = (light: string): LedLamp | null => LEDS.get(plainWords(light)) ?? null;

/** The same light in other words: `led b1`, `LED:3000`, `led:2700, 90`. */
function plainWords(light: string): string {
  const parts = lightParts(light);
  const only = parts.ok && parts.value.length === 1 ? parts.value[0]!.light : null;
  if (only?.kind === 'cie') return only.id;
  return only?.kind === 'led' ? ledLight({ nominal_k: only.cct_k, ra: only.ra } as LedLamp) : light;
}

/** Lamps of another kind than LED that a kitchen may have, by the light that stands for them. */
export const OTHER_LAMPS: readonly { readonly light: string; readonly words: string }[] = [
  { light: 'A', words: 'Filament (2856 K)' },
  { light: 'FL12', words: 'Fluorescent tube (3000 K)' },
  { light: 'FL11', words: 'Fluorescent tube (4000 K)' },
];

/** The color of LED lamps nearest to a color temperature; as the eye counts, in reciprocal kelvin. */
export const lampColorNear = (cct_k: number): LampColor =>
  LAMP_COLORS.reduce((best, one) =>
    Math.abs(1 / one.nominal_k - 1 / cct_k) < Math.abs(1 / best.nominal_k - 1 / cct_k) ? one : best,
  );
