import { differenceCiede2000 } from '../color/difference';
import { labD65FromHueValueChroma, parseMunsell } from '../naming/munsell';
import type { GivenColor } from './given-color';

/** Nodes and weights of Gauss and Legendre's rule of three, for the mean over an interval from -1 to 1. */
const NODES: readonly (readonly [at: number, weight: number])[] = [
  [-Math.sqrt(0.6), 5 / 18],
  [0, 8 / 18],
  [Math.sqrt(0.6), 5 / 18],
];

/**
 * How far the colour is open because a Munsell notation is rounded: root mean square CIEDE2000 difference between the notation
 * and what rounds to it, each of hue, value and chroma anywhere within half a step of what is written (see `stepsOf`), as
 * likely here as there. 0 for other kinds of colour; for a neutral the value alone counts.
 */
export function notationDoubtDe00(color: GivenColor): number {
  const read = color.kind === 'munsell' ? parseMunsell(color.munsell) : null;
  if (!read?.ok) return 0;
  const { hue100, value, chroma, written } = read.value;
  const steps = stepsOf(written);
  const said = labD65FromHueValueChroma(hue100, value, chroma);
  const hues = within(hue100, steps.hue, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  const values = within(value, steps.value, 0, 10);
  const chromas = within(chroma, steps.chroma, 0, Number.POSITIVE_INFINITY);
  let squares = 0;
  for (const [h, ofHue] of hues) {
    for (const [v, ofValue] of values) {
      for (const [c, ofChroma] of chromas) {
        squares += ofHue * ofValue * ofChroma * differenceCiede2000(said, labD65FromHueValueChroma(h, v, c)) ** 2;
      }
    }
  }
  return Math.sqrt(squares);
}

/** Places and weights of the rule over what rounds to `middle`, cut off where the scale ends. */
function within(middle: number, step: number, least: number, most: number): readonly (readonly [number, number])[] {
  if (step === 0) return [[middle, 1]];
  const from = Math.max(least, middle - step / 2);
  const to = Math.min(most, middle + step / 2);
  return NODES.map(([at, weight]) => [(from + to) / 2 + ((to - from) / 2) * at, weight]);
}

interface Steps {
  readonly hue: number;
  readonly value: number;
  readonly chroma: number;
}

/**
 * The steps in which a notation is written. Where all its numbers stand on printed chips (hues 2.5 apart, values and chromas
 * whole or half, neutrals in quarters) it counts as one read off the nearest chip: hue to 2.5, value and chroma to 1, or to the
 * fraction that is written. Otherwise, and where a number ends in a written 0 ('10.0YR'), to the last digit of each.
 * Our judgment: notations do not say how they were found.
 */
function stepsOf({ hue, value, chroma }: { hue?: string; value: string; chroma?: string }): Steps {
  if (hue === undefined || chroma === undefined) {
    return { hue: 0, value: isOnChips(value, 0.25) ? fractionStep(value) : digitStep(value), chroma: 0 };
  }
  if (isOnChips(hue, 2.5) && isOnChips(value, 0.5) && isOnChips(chroma, 0.5)) {
    return { hue: 2.5, value: fractionStep(value), chroma: fractionStep(chroma) };
  }
  return { hue: digitStep(hue), value: digitStep(value), chroma: digitStep(chroma) };
}

const isOnChips = (written: string, step: number): boolean =>
  Number.isInteger(Number(written) / step) && !/\.\d*0$/.test(written);

/** 1 for '9', 0.5 for '8.5', 0.25 for '9.25' and '9.75'. */
const fractionStep = (written: string): number => [1, 0.5, 0.25][decimalsOf(written)]!;

const digitStep = (written: string): number => 10 ** -decimalsOf(written);

const decimalsOf = (written: string): number => written.split('.')[1]?.length ?? 0;
