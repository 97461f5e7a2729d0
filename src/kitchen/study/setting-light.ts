import { cctDuv } from '../../engine/color/correlated-temperature';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import { failure, type Result, success } from '../../engine/result';
import { perLux } from '../../engine/spectrum/lights';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import { GROUPS, type Project, type Setting } from '../../model/project';
import { lightOfProject } from '../../model/project-lights';

/** A setting turned into numbers: per light group its level and its spectrum per lux, in the order of GROUPS. */
export interface SettingLight {
  readonly id: string;
  readonly levels: readonly number[];
  readonly spectra: readonly EmissionSpd[];
}

/** The lights of a setting of the project; a light that is not known is refused with its place. */
export function settingLight(project: Pick<Project, 'lamps'>, setting: Setting): Result<SettingLight> {
  const spectra: EmissionSpd[] = [];
  for (const group of GROUPS) {
    const light = lightOfProject(project, setting.groups[group].light);
    if (!light.ok) {
      return failure({ ...light.problem, at: { path: `settings.${setting.id}.groups.${group}.light` } });
    }
    spectra.push(perLux(light.value));
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
