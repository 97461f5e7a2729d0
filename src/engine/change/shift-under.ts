import { differenceCiede2000 } from '../color/difference';
import type { Lab } from '../color/types';
import type { FinishClass, FinishComponent } from '../finish/types';
import { plausibleCurves } from '../plausible/curves';
import type { EmissionSpd } from '../spectrum/types';
import { labUnder } from './lab-under';
import { ACCEPTABLE_DE00 } from './limits';
import { type Quantiles, quantilesOf } from './quantiles';

/** What of a component its colour under a light depends on. */
export type ChangingComponent = Pick<FinishComponent, 'labD65' | 'spectrum' | 'spectrumSource' | 'finishClass'>;

/** 'holds' and 'shifts' hold for nine tenths of the plausible curves at least; otherwise one cannot tell. */
export type ShiftVerdict = 'holds' | 'shifts' | 'cannot-tell';

/** Colour of a component under a light, and how sure that is with only its daylight colour known. */
export interface LightChange {
  /** Under the light, of the curve computed with; fully adapted, see `labUnder`. */
  readonly lab: Lab<'D65-2'>;
  /** From its colour under D65, of the curve computed with. CIEDE2000. */
  readonly de00: number;
  /** Of every plausible curve, the one computed with first; a single one where the spectrum was measured. */
  readonly members: readonly Lab<'D65-2'>[];
  /** Of the members from the colour under D65. CIEDE2000. */
  readonly shifts: Quantiles;
  /** Root mean square of the members about their mean. CIEDE2000; 0 for a measured spectrum and under D65. */
  readonly spreadDe00: number;
  readonly verdict: ShiftVerdict;
}

/**
 * Change of a component's colour from D65 to a light, over all curves that it may have. The verdict is against
 * `limitDe00` (CIEDE2000), by default the acceptable difference: 'holds' when nine tenths of the curves stay below it,
 * 'shifts' when nine tenths reach it. Counts the unknown curve only, neither the error of the colour nor incomplete adaptation.
 */
export function shiftUnder(
  component: ChangingComponent,
  finishClass: FinishClass,
  spd: EmissionSpd,
  limitDe00: number = ACCEPTABLE_DE00,
): LightChange {
  const members = plausibleCurves(component, finishClass).map((rho) => labUnder(rho, spd));
  return changeOf(component.labD65, members, limitDe00);
}

/** The same from the colours that the curves of a surface show under the light, that of the curve computed with first. */
export function changeOf(
  labD65: Lab<'D65-2'>,
  members: readonly Lab<'D65-2'>[],
  limitDe00: number = ACCEPTABLE_DE00,
): LightChange {
  const shifts = members.map((member) => differenceCiede2000(labD65, member));
  const quantiles = quantilesOf(shifts);
  return {
    lab: members[0]!,
    de00: shifts[0]!,
    members,
    shifts: quantiles,
    spreadDe00: spreadAboutMean(members),
    verdict: shiftVerdict(quantiles, limitDe00),
  };
}

function shiftVerdict({ p05, p95 }: Quantiles, limitDe00: number): ShiftVerdict {
  if (p95 < limitDe00) return 'holds';
  return p05 >= limitDe00 ? 'shifts' : 'cannot-tell';
}

function spreadAboutMean(members: readonly Lab<'D65-2'>[]): number {
  const mean = { l: 0, a: 0, b: 0 };
  for (const { l, a, b } of members) {
    mean.l += l / members.length;
    mean.a += a / members.length;
    mean.b += b / members.length;
  }
  const squares = members.reduce((sum, member) => sum + differenceCiede2000(mean, member) ** 2, 0);
  return Math.sqrt(squares / members.length);
}
