import { adaptXyz } from '../engine/color/adapt';
import { cctDuv } from '../engine/color/correlated-temperature';
import { differenceCiede2000 } from '../engine/color/difference';
import { labD65FromXyzD65 } from '../engine/color/lab';
import { D65_2 } from '../engine/color/whites';
import { whiteOf, xyzFromReflectance } from '../engine/color/xyz';
import type { FinishComponent } from '../engine/finish/types';
import type { LabTriple } from '../engine/judge/assessment';
import { labTriple } from '../engine/judge/component-record';
import { undertoneOf } from '../engine/naming/undertone';
import { observer2 } from '../engine/spectrum/observers';
import type { EmissionSpd } from '../engine/spectrum/types';

/** A color under another light, as known to an eye that is used to that light. */
export interface ColorUnderLight {
  readonly light: string;
  readonly cct_k: number | null;
  readonly duv: number | null;
  /** Adapted to D65 by CAT16 with D = 1. */
  readonly lab_d65: LabTriple;
  readonly name: string;
  /** CIEDE2000 from the same color under D65. */
  readonly shift_de00: number;
}

/** The color of a component under a light, completely adapted; what is left is what the lamp does to this color alone. */
export function colorUnder(component: FinishComponent, light: string, spd: EmissionSpd): ColorUnderLight {
  const white = whiteOf(spd, observer2);
  const seen = adaptXyz(xyzFromReflectance(component.spectrum, spd, observer2), white, D65_2);
  const lab = labD65FromXyzD65(seen);
  const temperature = cctDuv(white);
  return {
    light,
    cct_k: temperature?.cct_k ?? null,
    duv: temperature?.duv ?? null,
    lab_d65: labTriple(lab),
    name: undertoneOf(lab).name,
    shift_de00: differenceCiede2000(component.labD65, lab),
  };
}
