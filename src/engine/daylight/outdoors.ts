import type { Vec3 } from '../light/types';
import { lightById } from '../spectrum/lights';
import { perLux } from '../spectrum/per-lux';
import type { EmissionSpd } from '../spectrum/types';
import { skyLevelLx, sunNormalLx } from './daylight-levels';
import { inRoom } from './in-room';
import { dayOfYear } from './julian-day';
import { outdoorReflectance } from './outdoor-reflectance';
import { type LightPart, type ReflectedLight, reflectLight } from './reflected-light';
import { skyHorizontalLx, skyLx } from './sky-illuminance';
import { skyLuminance } from './sky-kinds';
import { clearSkySpectrum } from './sky-spectrum';
import { sunPosition } from './sun-position';
import { sunBeamSpectrum } from './sun-spectrum';
import type {
  DaylightSpectra,
  Moment,
  OutdoorMaterial,
  Outdoors,
  Site,
  SkyKind,
  SkyLuminance,
  SunPosition,
} from './types';
import { facingNormal, groundLx, sunLx } from './upright-lx';

/** Where and when a room stands, and what lies around it. */
export interface OutdoorSetting {
  readonly site: Site;
  readonly moment: Moment;
  readonly sky: SkyKind;
  /** Illuminance of the open horizontal, lx, in place of that of the hour. Counts for an overcast sky only. */
  readonly sky_lx?: number;
  /** Compass bearing that the back wall faces outward (+y of the room), clockwise from north. */
  readonly bearing_deg: number;
  readonly ground: OutdoorMaterial;
  readonly facing: OutdoorMaterial;
  /** Outward unit normals of the windows, in the axes of the room; none = the color of the whole sky. */
  readonly windowNormals: readonly Vec3[];
}

/** The outdoors of a room, in its axes. */
export interface OutdoorLight {
  readonly outdoors: Outdoors;
  /** Each per lux. */
  readonly spectra: DaylightSpectra;
  readonly sun: SunPosition;
  /** Illuminance of the open horizontal by the sky, lx. */
  readonly sky_lx: number;
  /** The same by the sun. */
  readonly sun_lx: number;
}

/**
 * All that sends light in from outside, for a place, a moment, and a sky. At night every amount is 0 and the spectra are
 * still those of some daylight, so that nothing downstream divides by zero.
 */
export function outdoorsAt(setting: OutdoorSetting): OutdoorLight {
  const { moment, sky: kind, windowNormals } = setting;
  const sun = sunPosition(setting.site, moment);
  const towards = inRoom(sun.azimuth_deg, sun.elevation_deg, setting.bearing_deg);
  const given_lx = kind === 'overcast' ? setting.sky_lx : undefined;
  const sky_lx = given_lx ?? skyLevelLx(kind, sun.elevation_deg);
  const normal_lx = kind === 'clear' ? sunNormalLx(sun.elevation_deg, dayOfYear(moment.month, moment.day)) : 0;
  const sun_lx = normal_lx * Math.max(0, towards[2]);
  const sky = skyOfLevel(kind, towards, sky_lx);

  const skyLight = (normals: readonly Vec3[]) =>
    kind === 'clear' ? clearSkySpectrum(sky, normals) : overcastSpectrum();
  const sunSpectrum = perLux(sunBeamSpectrum(sun.elevation_deg));
  const ground = reflectLight(
    [
      { spectrum: skyLight([]), lx: sky_lx },
      { spectrum: sunSpectrum, lx: sun_lx },
    ],
    outdoorReflectance(setting.ground),
  );
  const open: Outdoors = {
    sky,
    sun: normal_lx > 0 ? { towards, normal_lx } : null,
    ground_cdm2: (ground.reflectance * (sky_lx + sun_lx)) / Math.PI,
    facing_reflectance: 0,
  };
  const walls = windowNormals.map(facingNormal).filter((normal) => normal !== null);
  const facing = facingLight(open, walls, setting.facing, [skyLight(walls), sunSpectrum, ground.spectrum]);
  return {
    outdoors: { ...open, facing_reflectance: facing.reflectance, facing: setting.facing },
    spectra: { sky: skyLight(windowNormals), sun: sunSpectrum, ground: ground.spectrum, facing: facing.spectrum },
    sun,
    sky_lx,
    sun_lx,
  };
}

/** A sky scaled to what it gives on the open horizontal. */
function skyOfLevel(kind: SkyKind, towardsSun: Vec3, sky_lx: number): SkyLuminance {
  // Daylight factors, and every figure that kitchens are planned by, rest on the traditional overcast sky.
  const unit = skyLuminance(kind === 'overcast' ? 'traditional' : kind, towardsSun, 1);
  return { ...unit, zenith_cdm2: sky_lx / skyHorizontalLx(unit) };
}

/** Light from the walls that look back at the windows, as one; without windows, the color of a wall under the sky alone. */
function facingLight(
  open: Outdoors,
  walls: readonly Vec3[],
  material: OutdoorMaterial,
  [sky, sun, ground]: readonly [EmissionSpd, EmissionSpd, EmissionSpd],
): ReflectedLight {
  const over = (lxOn: (normal: Vec3) => number) => walls.reduce((sum, normal) => sum + lxOn(normal), 0);
  const parts: [LightPart, ...LightPart[]] = [
    { spectrum: sky, lx: over((normal) => skyLx(open.sky, normal)) },
    { spectrum: sun, lx: over((normal) => sunLx(open, normal)) },
    { spectrum: ground, lx: over((normal) => groundLx(open, normal)) },
  ];
  return reflectLight(parts, outdoorReflectance(material));
}

/** CIE takes D65 for average daylight (ISO/CIE 11664-2); measured overcast skies lie at 6000-7000 K. */
const overcastSpectrum = (): EmissionSpd => perLux(lightById('D65')!);
