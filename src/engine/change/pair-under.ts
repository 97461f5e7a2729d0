import { differenceCiede2000 } from '../color/difference';
import type { FinishClass } from '../finish/types';
import { plausibleCurves } from '../plausible/curves';
import type { EmissionSpd } from '../spectrum/types';
import { labUnder } from './lab-under';
import { ACCEPTABLE_DE00 } from './limits';
import { type Quantiles, quantilesOf } from './quantiles';
import type { ChangingComponent } from './shift-under';

/** 'apart': no match under D65 that a light could split. The others as of `shiftUnder`, for nine tenths of the curves. */
export type MatchVerdict = 'apart' | 'stays-matched' | 'splits' | 'cannot-tell';

/** A component and the class of the finish it belongs to. */
export interface PairedComponent {
  readonly component: ChangingComponent;
  readonly finishClass: FinishClass;
}

/** Difference of two components under a light against that under D65; all CIEDE2000. */
export interface PairChange {
  readonly d65De00: number;
  /** Under the light, of the curves computed with. */
  readonly de00: number;
  /** Under the light, over all plausible curves of both. */
  readonly differences: Quantiles;
  readonly verdict: MatchVerdict;
}

/**
 * Whether two components that match under D65 (below `limitDe00`, by default the acceptable difference) still do under a
 * light, over all curves that they may have: the curves of one say nothing of those of the other, even within a class.
 * Only a component with itself keeps its curve.
 */
export function pairUnder(
  a: PairedComponent,
  b: PairedComponent,
  spd: EmissionSpd,
  limitDe00: number = ACCEPTABLE_DE00,
): PairChange {
  const d65De00 = differenceCiede2000(a.component.labD65, b.component.labD65);
  const labsA = plausibleCurves(a.component, a.finishClass).map((rho) => labUnder(rho, spd));
  const labsB = plausibleCurves(b.component, b.finishClass).map((rho) => labUnder(rho, spd));
  const isSame = a.component.spectrum === b.component.spectrum;
  const all = isSame ? [0] : labsA.flatMap((one) => labsB.map((other) => differenceCiede2000(one, other)));
  const differences = quantilesOf(all);
  return { d65De00, de00: all[0]!, differences, verdict: matchVerdict(d65De00, differences, limitDe00) };
}

function matchVerdict(d65De00: number, { p05, p95 }: Quantiles, limitDe00: number): MatchVerdict {
  if (d65De00 >= limitDe00) return 'apart';
  if (p95 < limitDe00) return 'stays-matched';
  return p05 >= limitDe00 ? 'splits' : 'cannot-tell';
}
