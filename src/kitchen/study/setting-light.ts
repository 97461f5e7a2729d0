import { cctDuv } from '../../engine/color/correlated-temperature';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import { failure, type Result, success } from '../../engine/result';
import { lightById, perLux } from '../../engine/spectrum/lights';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import { dimmedLight } from '../../model/dim-to-warm';
import { DAYLIGHT_GROUPS, LAMP_GROUPS, type Project, type Setting } from '../../model/project';
import { lightOfProject } from '../../model/project-lights';
import { type DaylightState, daylightOf } from './daylight-of';

/** A setting turned into numbers: per light group its level and its spectrum per lux, in the order of GROUPS. */
export interface SettingLight {
  readonly id: string;
  readonly levels: readonly number[];
  readonly spectra: readonly EmissionSpd[];
  /** Null by night. */
  readonly daylight: DaylightState | null;
}

/** The lights of a setting of the project; a light that is not known is refused with its place. */
export function settingLight(project: Pick<Project, 'lamps' | 'kitchen'>, setting: Setting): Result<SettingLight> {
  const daylight = daylightOf(project.kitchen, setting.daylight);
  const given = setting.daylight?.light;
  const sky = given === undefined ? null : lightOfProject(project, given);
  if (sky && !sky.ok) return failure({ ...sky.problem, at: { path: `settings.${setting.id}.daylight.light` } });
  const spectra = DAYLIGHT_GROUPS.map((group) => {
    if (!daylight) return NONE;
    if (group === 'sky' && sky) return perLux(sky.value);
    return perLux(daylight.spectra[group]);
  });
  const levels = DAYLIGHT_GROUPS.map(() => setting.daylight?.blind ?? 0);
  for (const group of LAMP_GROUPS) {
    const { level, light, dims } = setting.lamps[group];
    const found = lightOfProject(project, light);
    if (!found.ok) return failure({ ...found.problem, at: { path: `settings.${setting.id}.lamps.${group}.light` } });
    spectra.push(perLux(dims === 'warm' ? dimmedLight(found.value, level) : found.value));
    levels.push(level);
  }
  return success({ id: setting.id, levels, spectra, daylight });
}

/** Stands where there is no daylight; its level is 0. */
const NONE = perLux(lightById('D65')!);

/**
 * The adopted white: a perfect white in the light of the worktop as a gray room has it, Y = 100.
 * `worktopLight`: lx per group at level 1. Where no light falls, D65.
 */
export function adoptedWhite(light: SettingLight, worktopLight: ArrayLike<number>): Xyz<'setting-2'> {
  let x = 0;
  let y = 0;
  let z = 0;
  light.spectra.forEach((spd, group) => {
    const lx = light.levels[group]! * worktopLight[group]!;
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
