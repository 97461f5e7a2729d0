import { labD65FromXyzD65 } from '../../engine/color/lab';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { InstalledReading, JudgedSurface, JudgeInput, LightSource } from '../../engine/judge/input';
import { BAND_COUNT, bandColorMatrix } from '../../engine/light/bands';
import { leastLux, nodeLux } from '../../engine/light/least-light';
import { areOneSpectrum } from '../../engine/light/light-mix';
import type { SurfaceLight } from '../../engine/light/types';
import { plausibleCurves } from '../../engine/plausible/curves';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import { isEmpty } from '../../model/empty-surface';
import { DAYLIGHT_GROUPS, GROUPS, type GroupId, LAMP_GROUPS, type Project } from '../../model/project';
import { presentSurfaces } from '../present-surfaces';
import { meetingsOf } from './meetings';
import { placeColors } from './place-colors';
import { counterLight, type RoomStudy, shareKey } from './room-study';
import { adoptedWhite, type SettingLight, settingTemperature } from './setting-light';
import type { SolvedScheme } from './solved-scheme';
import { surfaceIrradiance } from './surface-irradiance';
import { lightWhitesOf, type TintFrom } from './tints';

/** Lamps all turned down to this or less are meant to be dim (our judgment). */
const MOST_DIMMED = 0.7;

const NO_TEMPERATURE = { cct_k: null, duv: null };

/** Below this no reading is taken: it is dark. */
const DARK_LX = 0.01;

/**
 * Readings of every surface the room has and something is chosen for as plain data for the judge. `tints` by surface-light index, once worked out: readings are then
 * complete, and say what every plausible curve of a color would read, too.
 */
export function judgeInput(
  project: Project,
  study: RoomStudy,
  solved: SolvedScheme,
  setting: SettingLight,
  tints: readonly TintFrom[] | null = null,
): JudgeInput {
  const white = adoptedWhite(setting, study.worktopLight);
  const light = surfaceIrradiance(study, solved, setting);
  const worktopLx = light[study.surfaceLights.indexOf(counterLight(study))]!.lux;
  const lightWhites = lightWhitesOf(study, solved, setting);
  const sent = patchLux(study, solved, setting);
  const bounced = nodeLux(study.nodes, sent);
  const bySurface = new Map<number, InstalledReading[]>();
  const present: readonly string[] = presentSurfaces(study.room);
  const empty = solved.scheme.surfaces.flatMap(({ surface, placement }) =>
    surface !== 'stand' && present.includes(surface) && isEmpty(placement) ? [surface] : [],
  );
  study.surfaceLights.forEach((place, index) => {
    const laid = solved.scheme.surfaces[place.surface];
    if (!laid || isEmpty(laid.placement)) return;
    const { irradiance, lux } = light[index]!;
    if (lux < DARK_LX) return;
    const read = placeColors(irradiance, white);
    const { components, class: finishClass } = laid.finish;
    const variants = () =>
      components.map((component) => plausibleCurves(component, finishClass).map((curve) => read(curve)));
    const list = bySurface.get(place.surface) ?? [];
    list.push({
      facing: place.facing,
      illuminanceLx: lux,
      luxMin: leastLux(study.room.light, study.nodes, place, setting.levels, bounced),
      lightFrom: sourcesOf(place, study, setting, sent),
      lightnessInRoom: lightnessInRoom(irradiance, laid.average, worktopLx),
      placeWhite: read(null),
      lightWhite: lightWhites[index]!,
      components: components.map((component) => read(component.spectrum)),
      average: read(laid.average),
      ...(tints ? { variants: variants() } : {}),
      tintFrom: tints?.[index]?.filter(({ surface }) => !empty.includes(surface)) ?? null,
      viewShares: study.shares.map((shares) => shares.get(shareKey(place.surface, place.facing)) ?? 0),
    });
    bySurface.set(place.surface, list);
  });

  const meetings = meetingsOf(study);
  const surfaces = solved.scheme.surfaces.flatMap(({ surface, finish, placement }, index): JudgedSurface[] =>
    surface === 'stand' || !present.includes(surface) || isEmpty(placement)
      ? []
      : [
          {
            surface,
            finish,
            state: placement.state,
            installed: bySurface.get(index) ?? [],
            meets: meetings.get(surface) ?? {},
          },
        ],
  );
  const isDark = light.every(({ lux }) => lux < DARK_LX);
  return {
    project: project.id,
    option: solved.scheme.option,
    setting: { id: setting.id, ...(isDark ? NO_TEMPERATURE : settingTemperature(white)) },
    surfaces,
    lights: mixOf(setting, study),
    burning: burningOf(setting, study),
    overviews: study.overviews.map(({ id }) => id),
    ...(empty.length > 0 && { empty }),
    ...(project.users?.includes('low-vision') && { lowVision: true }),
  };
}

/** Whether the setting burns lights of different spectra, and whether daylight is one of them. */
function mixOf(setting: SettingLight, study: RoomStudy): JudgeInput['lights'] {
  if (areOneSpectrum(setting.spectra, setting.levels)) return 'one';
  const { daylight, lamps } = burningOf(setting, study);
  if (!daylight) return 'lamps';
  return lamps ? 'daylight-and-lamps' : 'daylight';
}

function burningOf({ levels, daylight }: SettingLight, { room }: RoomStudy): JudgeInput['burning'] {
  const levelOf = (group: GroupId) => levels[GROUPS.indexOf(group)]!;
  const lit = LAMP_GROUPS.filter((group) => levelOf(group) > 0);
  const there = lit.filter((group) => room.light.lamps.some((lamp) => lamp.group === GROUPS.indexOf(group)));
  const isDay = daylight !== null && DAYLIGHT_GROUPS.some((group) => levelOf(group) > 0);
  const isNight = isDay && daylight.sky_lx + daylight.sun_lx === 0;
  return {
    daylight: isDay,
    lamps: lit.length > 0,
    hasSun: isDay && daylight.outdoors.sun !== null,
    isDimmed: there.some((group) => levelOf(group) < 1) && there.every((group) => levelOf(group) <= MOST_DIMMED),
    ...(isDay && room.light.windows.length === 0
      ? { noDaylightFor: 'window' }
      : isNight
        ? { noDaylightFor: 'night' }
        : {}),
    hasLampsOff: lit.length === 0 && room.light.lamps.length > 0,
    hasNoLamp: lit.length > 0 && there.length === 0,
  };
}

/** Luminous exitance of every patch under the setting, lm/m2. */
function patchLux({ transport }: RoomStudy, solved: SolvedScheme, { levels, spectra }: SettingLight): Float64Array {
  const lux = new Float64Array(transport.patches.count);
  levels.forEach((level, group) => {
    const radiosity = solved.radiosity[group];
    if (level === 0 || !radiosity) return;
    const xyz = bandColorMatrix(spectra[group]!, null, observer2);
    for (let patch = 0, at = 0; patch < lux.length; patch++) {
      let y = 0;
      for (let k = 0; k < BAND_COUNT; k++) y += radiosity[at++]! * xyz[3 * k + 1]!;
      lux[patch]! += level * y;
    }
  });
  return lux;
}

/** The shares of `lightParts`, by illuminance alone: `sent` is the luminous exitance of every patch. */
function sourcesOf(
  { direct, gather }: SurfaceLight,
  { transport, room }: RoomStudy,
  { levels }: SettingLight,
  sent: Float64Array,
): LightSource[] {
  const { surface } = transport.patches;
  const bySurface = new Float64Array(room.surfaces.length);
  for (let patch = 0; patch < gather.length; patch++) {
    if (surface[patch]! >= 0) bySurface[surface[patch]!]! += gather[patch]! * sent[patch]!;
  }
  const sources = [
    ...levels.map((level, group) => ({
      source: GROUPS[group]! as string,
      kind: 'direct' as const,
      lux: level * direct[group]!,
    })),
    ...room.surfaces.map((id, k) => ({ source: id as string, kind: 'bounce' as const, lux: bySurface[k]! })),
  ].filter(({ lux }) => lux > 0);
  const whole = sources.reduce((sum, { lux }) => sum + lux, 0);
  return sources
    .map(({ source, kind, lux }) => ({ source, kind, share: lux / whole }))
    .sort((one, other) => other.share - one.share);
}

/** CIELAB L* of a surface in place, white = a perfect white on the worktop at its mean illuminance. */
function lightnessInRoom(irradiance: EmissionSpd, rho: ReflectanceSpd, worktopLx: number): number {
  const reflected = Float64Array.from(irradiance, (value, i) => value * rho[i]!) as EmissionSpd;
  const y = (100 * xyzFromEmission(reflected, observer2).y) / worktopLx;
  const gray: Xyz<'D65-2'> = { x: (D65_2.x * y) / 100, y, z: (D65_2.z * y) / 100 };
  return labD65FromXyzD65(gray).l;
}
