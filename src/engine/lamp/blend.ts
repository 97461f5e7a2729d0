import { failure, type Result, success } from '../result';
import { emissionSpd, GRID_COUNT } from '../spectrum/grid';
import { perLux } from '../spectrum/per-lux';
import type { EmissionSpd } from '../spectrum/types';

/**
 * Light of several lamps on one place. `level` is each lamp's share of the illuminance in relative lux, 0 or more:
 * every spectrum is brought to one lux first, so dimming a lamp to 40 % means 0.4 times its level. The result has as
 * many lux as the levels add up to.
 * Refused: no lamp, a level below 0 or that is not a finite number, all levels 0. A spectrum without visible power is
 * a bug in the caller and throws (`perLux`).
 */
export function blendLights(
  parts: readonly { readonly spd: EmissionSpd; readonly level: number }[],
): Result<EmissionSpd> {
  const broken = parts.findIndex(({ level }) => !(level >= 0 && level < Number.POSITIVE_INFINITY));
  if (broken >= 0) {
    const level = parts[broken]!.level;
    return failure({
      code: level < 0 ? 'level-negative' : 'level-not-a-number',
      text: level < 0 ? `A light has the level ${level}.` : `The level of light ${broken + 1} is not a number.`,
      at: { path: `[${broken}].level` },
      remedy: 'Give each light its share of the brightness: 0 is off, 0.6 is 60 percent of a lux.',
    });
  }
  if (!parts.some(({ level }) => level > 0)) {
    return failure({
      code: 'all-lights-off',
      text: parts.length ? 'All lights of the blend are off.' : 'The blend has no light.',
      remedy: 'Give at least one light a level above 0.',
    });
  }
  const sum = new Float64Array(GRID_COUNT);
  for (const { spd, level } of parts) {
    const unit = perLux(spd);
    for (let i = 0; i < GRID_COUNT; i++) sum[i] = sum[i]! + level * unit[i]!;
  }
  return success(emissionSpd(sum));
}
