import { differenceCiede2000 } from '../color/difference';
import { yFromLightness } from '../color/lab';
import { lrvPerY } from '../color/lrv';
import { wid } from '../color/wid';
import type { FinishComponent } from '../finish/types';
import { munsellFromLabD65 } from '../naming/munsell';
import { neutralLimit } from '../naming/undertone';
import { warmth } from '../naming/warmth';
import { type PropagateOptions, propagate, type Spread, type UncertainLab } from './propagate';

/** A number computed from colours that may err. */
export interface Estimate {
  /** Of the colours as said. */
  readonly value: number;
  /** Root mean square of the difference between the number said and what it is. */
  readonly sigma: number;
}

/** What a colour is said to be in other terms, each with its own uncertainty. */
export interface ColorEstimates {
  /** Light reflectance value, 0-100. */
  readonly lrv: Estimate;
  /** On the circle of 100; a sigma towards 29, that of any hue whatever, says that the colour has none one could know. */
  readonly munsellHue100: Estimate;
  readonly munsellValue: Estimate;
  readonly munsellChroma: Estimate;
  /** Undertone strength U. */
  readonly strength: Estimate;
  /** Whiteness index WID. */
  readonly wid: Estimate;
  /** Relative warmth along the axis at 50 degrees. */
  readonly w50: Estimate;
}

/** Numbers of one colour with their uncertainty, by seeded draws of its error. */
export function estimatesOf(
  component: Pick<FinishComponent, 'labD65' | 'spectrum' | 'uncertaintyDe00' | 'lightnessDe00'>,
  options?: PropagateOptions,
): ColorEstimates {
  const { labD65, spectrum, uncertaintyDe00, lightnessDe00 } = component;
  // The curve of a drawn colour moves with its Y: how the observers of 10 and of 2 degrees differ in it stays as it is.
  const perY = lrvPerY(spectrum);
  const said = munsellFromLabD65(labD65);
  const spreads = propagate(
    [{ lab: labD65, u: uncertaintyDe00, lightness: lightnessDe00, source: '' }],
    ([lab]) => {
      const munsell = munsellFromLabD65(lab!);
      return [
        perY * yFromLightness(lab!.l),
        said.hue100 + hueStep(munsell.hue100 - said.hue100),
        munsell.value,
        munsell.chroma,
        munsell.chroma / neutralLimit(munsell),
        wid(lab!),
        warmth(lab!).w50,
      ];
    },
    options,
  );
  const [lrv, munsellHue100, munsellValue, munsellChroma, strength, whiteness, w50] = spreads.map(estimate);
  return {
    lrv: lrv!,
    munsellHue100: munsellHue100!,
    munsellValue: munsellValue!,
    munsellChroma: munsellChroma!,
    strength: strength!,
    wid: whiteness!,
    w50: w50!,
  };
}

/** How two colours differ, first minus second where there is a sign. */
export interface DifferenceEstimates {
  readonly de00: Estimate;
  readonly wid: Estimate;
  readonly w50: Estimate;
}

/** Differences of two colours with their uncertainty; colours of one source err together. */
export function estimatesBetween(
  first: UncertainLab,
  second: UncertainLab,
  options?: PropagateOptions,
): DifferenceEstimates {
  const spreads = propagate(
    [first, second],
    ([a, b]) => [differenceCiede2000(a!, b!), wid(a!) - wid(b!), warmth(a!).w50 - warmth(b!).w50],
    options,
  );
  const [de00, whiteness, w50] = spreads.map(estimate);
  return { de00: de00!, wid: whiteness!, w50: w50! };
}

const estimate = ({ nominal, rms }: Spread): Estimate => ({ value: nominal, sigma: rms });

/** The short way round the circle of 100. */
const hueStep = (difference: number): number => difference - 100 * Math.round(difference / 100);
