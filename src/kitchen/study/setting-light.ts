import { cctDuv } from '../../engine/color/correlated-temperature';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import { failure, type Result, success } from '../../engine/result';
import { lightById, perLux } from '../../engine/spectrum/lights';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import { GROUPS, type Setting } from '../../model/project';

/** A setting turned into numbers: per light group its level and its spectrum per lux, in the order of GROUPS. */
export interface SettingLight {
  readonly id: string;
  readonly levels: readonly number[];
  readonly spectra: readonly EmissionSpd[];
}

export function settingLight(setting: Setting): Result<SettingLight> {
  const spectra: EmissionSpd[] = [];
  for (const group of GROUPS) {
    const id = setting.groups[group].light;
    const spd = lightById(id);
    if (!spd) {
      return failure({
        code: 'unknown-light',
        text: `The light ${id} of setting ${setting.id} is not known.`,
        at: { path: `settings.${setting.id}.groups.${group}.light` },
        remedy: 'Use the id of a CIE light, such as D65, A, LED-B2 or FL11.',
      });
    }
    spectra.push(perLux(spd));
  }
  return success({ id: setting.id, levels: GROUPS.map((group) => setting.groups[group].level), spectra });
}

/**
 * The adopted white: a perfect white under the mean direct light of the worktop, Y = 100.
 * `worktopDirect`: lx per group at level 1. Where no direct light falls, D65.
 */
export function adoptedWhite(light: SettingLight, worktopDirect: ArrayLike<number>): Xyz<'setting-2'> {
  let x = 0;
  let y = 0;
  let z = 0;
  light.spectra.forEach((spd, group) => {
    const lx = light.levels[group]! * worktopDirect[group]!;
    if (lx <= 0) return;
    const unit = xyzFromEmission(spd, observer2);
    x += lx * unit.x;
    y += lx * unit.y;
    z += lx * unit.z;
  });
  return y > 0 ? { x: (100 * x) / y, y: 100, z: (100 * z) / y } : { x: D65_2.x, y: D65_2.y, z: D65_2.z };
}

/** Correlated colour temperature of the adopted white, rounded for the assessment; null where it has none. */
export function settingTemperature(white: Xyz<'setting-2'>): { cct_k: number | null; duv: number | null } {
  const found = cctDuv(white);
  return found
    ? { cct_k: Math.round(found.cct_k), duv: Math.round(found.duv * 1e5) / 1e5 }
    : { cct_k: null, duv: null };
}
