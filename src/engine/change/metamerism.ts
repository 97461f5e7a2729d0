import { differenceCiede2000 } from '../color/difference';
import { labFromXyz } from '../color/lab';
import type { Lab, White } from '../color/types';
import { whiteOf, xyzFromReflectance } from '../color/xyz';
import { lightById } from '../spectrum/lights';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

/** Formula of a metamerism index: CIE 15 has dE*ab; CIEDE2000 weighs near-neutrals as they are seen. */
export type MetamerismFormula = 'de00' | 'deab';

/**
 * Special metamerism index, change in illuminant (CIE 15:2018, clause 9; ISO 18314-4), 2 degree observer: how far two
 * samples that match under `reference` come apart under `testLight`, each light with its own white. A small rest of
 * difference under the reference is taken off first by the multiplicative correction: X, Y and Z of the second sample times
 * the ratio there, so which sample is second matters a little. It says nothing of samples that do not match to begin with.
 * 0 for samples of one spectrum (or a multiple); null where the second sample has no X, Y or Z to multiply (black).
 * State light and formula with it, e.g. "M(A) = 2.1 CIEDE2000".
 */
export function metamerismIndex(
  rhoA: ReflectanceSpd,
  rhoB: ReflectanceSpd,
  testLight: EmissionSpd,
  reference: EmissionSpd = lightById('D65')!,
  formula: MetamerismFormula = 'de00',
): number | null {
  const referenceA = xyzFromReflectance(rhoA, reference, observer2);
  const referenceB = xyzFromReflectance(rhoB, reference, observer2);
  if (!(referenceB.x > 0 && referenceB.y > 0 && referenceB.z > 0)) return null;
  const testA = xyzFromReflectance(rhoA, testLight, observer2);
  const testB = xyzFromReflectance(rhoB, testLight, observer2);
  const matchedB = {
    x: (testB.x * referenceA.x) / referenceB.x,
    y: (testB.y * referenceA.y) / referenceB.y,
    z: (testB.z * referenceA.z) / referenceB.z,
  };
  const white = whiteOf(testLight, observer2);
  const labA = labFromXyz(testA, white);
  const labB = labFromXyz(matchedB, white);
  return formula === 'de00' ? differenceCiede2000(labA, labB) : differenceCielab(labA, labB);
}

const differenceCielab = <W extends White>(one: Lab<W>, other: Lab<W>): number =>
  Math.hypot(one.l - other.l, one.a - other.a, one.b - other.b);
