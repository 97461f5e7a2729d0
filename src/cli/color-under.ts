import { shiftUnder } from '../engine/change/shift-under';
import { cctDuv } from '../engine/color/correlated-temperature';
import { whiteOf } from '../engine/color/xyz';
import type { FinishClass, FinishComponent } from '../engine/finish/types';
import type { LabTriple } from '../engine/judge/assessment';
import { labTriple } from '../engine/judge/component-record';
import { type Undertone, undertoneOf } from '../engine/naming/undertone';
import { observer2 } from '../engine/spectrum/observers';
import { estimatesOf } from '../engine/uncertainty/estimates';
import { uncertaintyUnder } from '../engine/uncertainty/through-light';
import type { NamedLight } from './light-option';

/** A color under another light, as known to an eye that is used to that light. */
export interface ColorUnderLight {
  readonly light: string;
  readonly cct_k: number | null;
  readonly duv: number | null;
  /** Adapted to D65 by CAT16 with D = 1. */
  readonly lab_d65: LabTriple;
  readonly name: string;
  readonly undertone: Pick<Undertone, 'word' | 'strength' | 'level'>;
  /** Root mean square error of the undertone's strength. */
  readonly strength_uncertainty: number;
  /** CIEDE2000 from the same color under D65. */
  readonly shift_de00: number;
  /** The same at the 5th and 95th percentile of all curves the color may have; equal where the spectrum was measured. */
  readonly shift_from_to_de00: readonly [p05: number, p95: number];
  /** How far the color there is known: error of the sample and the spectra it may have together, root mean square. */
  readonly uncertainty_de00: number;
}

/** The color of a component under a light, completely adapted; what is left is what the lamp does to this color alone. */
export function colorUnder(
  component: FinishComponent,
  finishClass: FinishClass,
  { name, spd }: NamedLight,
): ColorUnderLight {
  const temperature = cctDuv(whiteOf(spd, observer2));
  const { lab, de00, shifts } = shiftUnder(component, finishClass, spd);
  const { uncertaintyDe00 } = uncertaintyUnder(component, finishClass, spd);
  const { name: colorName, word, strength, level } = undertoneOf(lab);
  return {
    light: name,
    cct_k: temperature?.cct_k ?? null,
    duv: temperature?.duv ?? null,
    lab_d65: labTriple(lab),
    name: colorName,
    undertone: { word, strength, level },
    strength_uncertainty: estimatesOf({ labD65: lab, spectrum: component.spectrum, uncertaintyDe00 }).strength.sigma,
    shift_de00: de00,
    shift_from_to_de00: [shifts.p05, shifts.p95],
    uncertainty_de00: uncertaintyDe00,
  };
}
