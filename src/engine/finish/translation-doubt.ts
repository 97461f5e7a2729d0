import { differenceCiede2000 } from '../color/difference';
import { labFromXyz } from '../color/lab';
import type { Lab, White } from '../color/types';
import { plausibleCurves } from '../plausible/curves';
import { GRID_COUNT } from '../spectrum/grid';
import type { TristimulusWeights } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';
import { D65_AT_2, sameConditions, weightsUnder } from './conditions';
import type { GivenColor } from './given-color';
import type { GivenCurve } from './given-curve';
import type { FinishClass } from './types';

/**
 * How far the colour under D65, 2 degrees is open because numbers were given for another light or observer and the curve
 * between is a guess: root mean square, CIEDE2000, over the curves it may have. They keep the D65 colour, so what is taken is
 * how they spread under the conditions given, which is as much the other way round. 0 for D65, 2 degrees and for spectra.
 * On the 24 chart patches for D50 2 and 10 degrees, D65 10, C 2 and A 10 the true errors are 0.5 to 1.0 of it for neutrals,
 * 1.1 to 1.3 of it for colours.
 */
export function translationDoubtDe00(color: GivenColor, curve: GivenCurve, finishClass: FinishClass): number {
  // Munsell notations are under C, 2 degrees: 0.15 and less, next to what its rounding leaves open.
  if (!('illuminant' in color) || sameConditions(color, D65_AT_2)) return 0;
  const weights = weightsUnder(color);
  if (!weights.ok) return 0;
  const { rho, labD65, source } = curve;
  const labUnder = labsUnder(weights.value);
  const said = labUnder(rho);
  const [, ...others] = plausibleCurves({ spectrum: rho, labD65, spectrumSource: source, finishClass }, finishClass);
  if (others.length === 0) return 0;
  const squares = others.reduce((sum, other) => sum + differenceCiede2000(said, labUnder(other)) ** 2, 0);
  return Math.sqrt(squares / others.length);
}

function labsUnder({ rows, white: [x, y, z] }: TristimulusWeights): (rho: ReflectanceSpd) => Lab<White> {
  const white = { x: x!, y: y!, z: z! };
  return (rho) => {
    const sums: [number, number, number] = [0, 0, 0];
    for (let i = 0; i < GRID_COUNT; i++) {
      for (const r of [0, 1, 2] as const) sums[r] += rows[3 * i + r]! * rho[i]!;
    }
    return labFromXyz<White>({ x: sums[0], y: sums[1], z: sums[2] }, white);
  };
}
