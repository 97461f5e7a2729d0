import { labD65FromXyzD65 } from '../../engine/color/lab';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { InstalledReading, JudgedSurface, JudgeInput } from '../../engine/judge/input';
import { areOneSpectrum } from '../../engine/light/light-mix';
import { plausibleCurves } from '../../engine/plausible/curves';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import { DAYLIGHT_GROUPS, GROUPS, type GroupId, LAMP_GROUPS, type Project } from '../../model/project';
import { placeColors } from './place-colors';
import { placeIrradiance } from './place-irradiance';
import { counterLight, type RoomStudy, shareKey } from './room-study';
import { adoptedWhite, type SettingLight, settingTemperature } from './setting-light';
import type { SolvedScheme } from './solved-scheme';
import { lightWhitesOf, type TintFrom } from './tints';

/** Below this no reading is taken: it is dark. */
const DARK_LX = 0.01;

/**
 * Readings of every surface as plain data for the judge. `tints` by surface-light index, once worked out: readings are then
 * complete, and say what every plausible curve of a color would read, too.
 */
export function judgeInput(
  project: Project,
  study: RoomStudy,
  solved: SolvedScheme,
  setting: SettingLight,
  tints: readonly TintFrom[] | null = null,
): JudgeInput {
  const white = adoptedWhite(setting, study.worktopDirect);
  const worktopLx = placeIrradiance(counterLight(study), solved, setting).lux;
  const lightWhites = lightWhitesOf(study, solved, setting);
  const bySurface = new Map<number, InstalledReading[]>();
  study.surfaceLights.forEach((light, index) => {
    const laid = solved.scheme.surfaces[light.surface];
    if (!laid) return;
    const { irradiance, lux } = placeIrradiance(light, solved, setting);
    if (lux < DARK_LX) return;
    const read = placeColors(irradiance, white);
    const { components, class: finishClass } = laid.finish;
    const variants = () =>
      components.map((component) => plausibleCurves(component, finishClass).map((curve) => read(curve)));
    const list = bySurface.get(light.surface) ?? [];
    list.push({
      facing: light.facing,
      illuminanceLx: lux,
      lightnessInRoom: lightnessInRoom(irradiance, laid.average, worktopLx),
      placeWhite: read(null),
      lightWhite: lightWhites[index]!,
      components: components.map((component) => read(component.spectrum)),
      average: read(laid.average),
      ...(tints ? { variants: variants() } : {}),
      tintFrom: tints?.[index] ?? null,
      viewShares: study.shares.map((shares) => shares.get(shareKey(light.surface, light.facing)) ?? 0),
    });
    bySurface.set(light.surface, list);
  });

  const surfaces: JudgedSurface[] = solved.scheme.surfaces.map(({ surface, finish, placement }, index) => ({
    surface,
    finish,
    state: placement.state,
    installed: bySurface.get(index) ?? [],
  }));
  return {
    project: project.id,
    option: solved.scheme.option,
    setting: { id: setting.id, ...settingTemperature(white) },
    surfaces,
    lights: mixOf(setting),
    overviews: study.overviews.map(({ id }) => id),
  };
}

/** Whether the setting burns lights of different spectra, and whether daylight is one of them. */
function mixOf({ spectra, levels }: SettingLight): JudgeInput['lights'] {
  if (areOneSpectrum(spectra, levels)) return 'one';
  const isOn = (group: GroupId) => levels[GROUPS.indexOf(group)]! > 0;
  if (!DAYLIGHT_GROUPS.some(isOn)) return 'lamps';
  return LAMP_GROUPS.some(isOn) ? 'daylight-and-lamps' : 'daylight';
}

/** CIELAB L* of a surface in place, white = a perfect white on the worktop at its mean illuminance. */
function lightnessInRoom(irradiance: EmissionSpd, rho: ReflectanceSpd, worktopLx: number): number {
  const reflected = Float64Array.from(irradiance, (value, i) => value * rho[i]!) as EmissionSpd;
  const y = (100 * xyzFromEmission(reflected, observer2).y) / worktopLx;
  const gray: Xyz<'D65-2'> = { x: (D65_2.x * y) / 100, y, z: (D65_2.z * y) / 100 };
  return labD65FromXyzD65(gray).l;
}
