import type { GivenComponent } from '../engine/finish/component';
import type { GivenColor, Specular } from '../engine/finish/given-color';
import { specularDoubtDe00 } from '../engine/finish/specular';
import type { FinishClass, FinishComponent } from '../engine/finish/types';
import type { ComponentRecord } from '../engine/judge/assessment';
import { componentRecord } from '../engine/judge/component-record';
import { estimatesOf } from '../engine/uncertainty/estimates';
import { type ColorUnderLight, colorUnder } from './color-under';
import type { NamedLight } from './light-option';
import { type WhitenessRecord, whitenessOf } from './whiteness-record';

/** What `color` gives: a component record, how the color was given, what its spectrum counts, whiteness, other lights. */
export interface ColorRecord extends ComponentRecord {
  readonly given: GivenColor;
  readonly finish_class: FinishClass;
  readonly gloss_gu: number | null;
  /** What the spectrum counts of the mirror-like reflection; null where nobody said: it is taken as included. */
  readonly specular: Specular | null;
  /** CIEDE2000 by which the color were off if it had been excluded unsaid; null where that is no question or no one can tell. */
  readonly specular_doubt_de00: number | null;
  /** LRV printed beside the color. */
  readonly lrv_printed: number | null;
  readonly whiteness: WhitenessRecord;
  readonly spectrum_source: FinishComponent['spectrumSource'];
  /** How far the numbers are known: root mean square error of each, from `uncertainty_de00`. */
  readonly uncertainty: ColorUncertainty;
  /** Under the first light asked for. */
  readonly under?: ColorUnderLight;
  /** Under every light asked for, in that order. */
  readonly lights?: readonly ColorUnderLight[];
}

export interface ColorUncertainty {
  readonly lrv: number;
  /** Steps of the circle of 100; towards 29 there is no hue one could know. */
  readonly munsell_hue: number;
  readonly munsell_value: number;
  readonly munsell_chroma: number;
  /** Undertone strength. */
  readonly strength: number;
  readonly wid: number;
}

function uncertaintyOf(component: FinishComponent): ColorUncertainty {
  const { lrv, munsellHue100, munsellValue, munsellChroma, strength, wid } = estimatesOf(component);
  return {
    lrv: lrv.sigma,
    munsell_hue: munsellHue100.sigma,
    munsell_value: munsellValue.sigma,
    munsell_chroma: munsellChroma.sigma,
    strength: strength.sigma,
    wid: wid.sigma,
  };
}

/** Numbers and spectra come from instruments, which count the mirror-like reflection or trap it. */
export const isMeasuredKind = (color: GivenColor): boolean => color.kind === 'spectrum' || 'illuminant' in color;

export function colorRecord(
  given: GivenComponent,
  component: FinishComponent,
  lights: readonly NamedLight[],
): ColorRecord {
  const { color, finishClass, glossGu, lrv } = given;
  const record = componentRecord(component);
  const [under, ...more] = lights.map((light) => colorUnder(component, finishClass, light));
  return {
    ...record,
    // A notation is the color itself: what adaptation from D65 would make of it is a little off.
    munsell: color.kind === 'munsell' ? color.munsell.toUpperCase() : record.munsell,
    given: color,
    finish_class: finishClass,
    gloss_gu: glossGu ?? null,
    specular: component.specular ?? null,
    specular_doubt_de00:
      glossGu !== undefined && isMeasuredKind(color) ? specularDoubtDe00(component, finishClass, glossGu) : null,
    lrv_printed: lrv ?? null,
    whiteness: whitenessOf(component),
    spectrum_source: component.spectrumSource,
    uncertainty: uncertaintyOf(component),
    ...(under && { under, lights: [under, ...more] }),
  };
}
