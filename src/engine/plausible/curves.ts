import type { FinishClass, FinishComponent } from '../finish/types';
import { GRID_COUNT } from '../spectrum/grid';
import { lhtssReflectance, zFromReflectance } from '../spectrum/lhtss';
import { WEIGHTS_D65_2 } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';
import { departuresFrom } from './departures';
import { CLASS_SPREAD } from './spread.data';

const remembered = new WeakMap<ReflectanceSpd, Map<FinishClass, readonly ReflectanceSpd[]>>();

/**
 * Curves that a component of this colour and class may have, the one computed with first: all of exactly its colour
 * under D65, 2 degrees. Deterministic; remembered per spectrum. A measured spectrum stands alone.
 * `finishClass` counts where the component says none of its own.
 */
export function plausibleCurves(
  component: Pick<FinishComponent, 'labD65' | 'spectrum' | 'spectrumSource' | 'finishClass'>,
  finishClass: FinishClass,
): readonly ReflectanceSpd[] {
  const { spectrum, spectrumSource } = component;
  if (spectrumSource === 'measured') return [spectrum];
  const material = component.finishClass ?? finishClass;
  const byClass = remembered.get(spectrum) ?? new Map<FinishClass, readonly ReflectanceSpd[]>();
  const known = byClass.get(material);
  if (known) return known;
  const curves = [spectrum, ...membersAround(component, material)];
  remembered.set(spectrum, byClass.set(material, curves));
  return curves;
}

function membersAround(
  { spectrum, labD65 }: Pick<FinishComponent, 'labD65' | 'spectrum'>,
  finishClass: FinishClass,
): ReflectanceSpd[] {
  const target = tristimulusOf(spectrum);
  const z = zFromReflectance(spectrum);
  const departures = departuresFrom(z, labD65, CLASS_SPREAD[finishClass]);
  return departures.map((departure) => memberOf(target, z, departure) ?? spectrum);
}

/** At the edge of what surfaces can be, a whole departure may leave no curve of the colour; then half of it, and so on. */
function memberOf(target: Float64Array, z: Float64Array, departure: Float64Array): ReflectanceSpd | null {
  for (let part = 1; part > 0.1; part /= 2) {
    const shape = z.map((value, i) => value + part * departure[i]!);
    const rho = lhtssReflectance(target, WEIGHTS_D65_2, shape);
    if (rho?.every((value) => value > 0 && value < 1)) return rho;
  }
  return null;
}

function tristimulusOf(rho: ReflectanceSpd): Float64Array {
  const sums = new Float64Array(3);
  for (let i = 0; i < GRID_COUNT; i++) {
    for (let r = 0; r < 3; r++) sums[r] = sums[r]! + WEIGHTS_D65_2.rows[3 * i + r]! * rho[i]!;
  }
  return sums;
}
