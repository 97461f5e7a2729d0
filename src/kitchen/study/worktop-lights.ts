import { cctDuv } from '../../engine/color/correlated-temperature';
import { whiteOf } from '../../engine/color/xyz';
import { type Result, success } from '../../engine/result';
import { emissionSpd, GRID_COUNT } from '../../engine/spectrum/grid';
import { lightById } from '../../engine/spectrum/lights';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import type { Project } from '../../model/project';
import type { RoomBasis } from './room-study';
import { type SettingLight, settingLight } from './setting-light';
import { worktopLightUnder } from './worktop-light';

/** One light to look at a finish under: a setting's mix on the worktop, or a standard light as one may meet it elsewhere. */
export interface WorktopLight {
  readonly kind: 'setting' | 'reference';
  readonly id: string;
  readonly name: string;
  readonly spd: EmissionSpd;
  readonly cct_k: number | null;
  readonly duv: number | null;
}

/** Daylight, and the lamps of other rooms, shops and showrooms. */
const REFERENCES: readonly (readonly [id: string, name: string])[] = [
  ['D65', 'Daylight, D65'],
  ['A', 'Filament lamp, A'],
  ['LED-B2', 'LED lamp, LED-B2'],
  ['FL11', 'Fluorescent tube, FL11'],
];

/**
 * Every setting of a project as its lights mix on the worktop, to which eyes adapt (`adoptedWhite`), then the
 * standard lights. A setting that leaves the worktop dark is left out.
 */
export function worktopLights(
  project: Pick<Project, 'lamps' | 'settings' | 'kitchen'>,
  basis: Pick<RoomBasis, 'room' | 'transport' | 'nodes'>,
): Result<readonly WorktopLight[]> {
  const lights: WorktopLight[] = [];
  for (const setting of project.settings) {
    const light = settingLight(project, setting);
    if (!light.ok) return light;
    const spd = mixOf(light.value, worktopLightUnder(basis, light.value.daylight));
    if (spd) lights.push({ kind: 'setting', id: setting.id, name: setting.name, spd, ...temperatureOf(spd) });
  }
  for (const [id, name] of REFERENCES) {
    const spd = lightById(id)!;
    lights.push({ kind: 'reference', id, name, spd, ...temperatureOf(spd) });
  }
  return success(lights);
}

function mixOf({ spectra, levels }: SettingLight, worktopLight: ArrayLike<number>): EmissionSpd | null {
  const mix = new Float64Array(GRID_COUNT);
  let lit = 0;
  spectra.forEach((spd, group) => {
    const lx = levels[group]! * worktopLight[group]!;
    lit += lx;
    for (let i = 0; i < GRID_COUNT; i++) mix[i] = mix[i]! + lx * spd[i]!;
  });
  return lit > 0 ? emissionSpd(mix) : null;
}

function temperatureOf(spd: EmissionSpd): Pick<WorktopLight, 'cct_k' | 'duv'> {
  const found = cctDuv(whiteOf(spd, observer2));
  return { cct_k: found?.cct_k ?? null, duv: found?.duv ?? null };
}
