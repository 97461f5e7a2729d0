import { failure, type Result, success } from '../result';
import { GRID_COUNT, wavelengthNm } from './grid';
import type { EmissionSpd } from './types';

/** A lamp's spectrum as a file gives it: rising wavelengths in nm and relative power. */
export interface SampledEmission {
  readonly nm: readonly number[];
  readonly power: readonly number[];
}

/** A lamp's spectrum on the project's grid, linear between its samples and 0 beyond them. */
export function emissionOnGrid({ nm, power }: SampledEmission): Result<EmissionSpd> {
  const negative = power.findIndex((value) => !(value >= 0));
  if (negative >= 0 || !power.some((value) => value > 0)) {
    const where = negative >= 0 ? `is ${power[negative]} at ${nm[negative]} nm` : 'is 0 everywhere';
    return failure({
      code: 'emission-power',
      text: `The power ${where}.`,
      remedy: 'Give powers that are not below 0.',
    });
  }
  const spd = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const at = wavelengthNm(i);
    const next = nm.findIndex((one) => one >= at);
    if (next < 0 || (next === 0 && nm[0] !== at)) continue;
    const from = Math.max(0, next - 1);
    const share = next === from ? 0 : (at - nm[from]!) / (nm[next]! - nm[from]!);
    spd[i] = power[from]! + share * (power[next]! - power[from]!);
  }
  return success(spd as EmissionSpd);
}
