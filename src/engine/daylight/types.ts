import type { Vec3 } from '../light/types';
import type { EmissionSpd } from '../spectrum/types';

/** Where the sun stands: azimuth clockwise from north, elevation of its centre above the horizon without refraction. */
export interface SunPosition {
  readonly azimuth_deg: number;
  readonly elevation_deg: number;
}

/** A place on earth and its clock. Longitude east and offset of the clock from UTC positive eastward. */
export interface Site {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly utc_offset_h: number;
}

/** A moment by the site's clock; the year matters by less than half a degree of the sun's place. */
export interface Moment {
  readonly month: number;
  readonly day: number;
  /** 0-24, decimal. */
  readonly hour: number;
}

export type SkyKind = 'overcast' | 'clear';

/**
 * Luminance of the sky by ISO 15469: L = zenith f(chi) phi(Z) / (f(Zs) phi(0)), chi the angle to the sun, Z to the zenith.
 * phi(Z) = 1 + a exp(b / cos Z); f(chi) = 1 + c (exp(d chi) - exp(d pi/2)) + e cos^2 chi.
 */
export interface SkyLuminance {
  readonly zenith_cdm2: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  /** The traditional overcast sky: phi(Z) = (1 + 2 cos Z) / 3, whatever a and b are. */
  readonly traditional?: true;
  /** Unit vector; of no consequence where c = e = 0. */
  readonly towardsSun: Vec3;
}

/** The sun as a beam: illuminance of a plane that faces it, lx. */
export interface SunBeam {
  readonly towards: Vec3;
  readonly normal_lx: number;
}

/** All that sends light in from outside. In the axes of the room, or x east, y north, z up before it is turned there. */
export interface Outdoors {
  readonly sky: SkyLuminance;
  /** Null where there is no beam: an overcast sky, or the sun below the horizon. */
  readonly sun: SunBeam | null;
  /** Luminance of the level, diffuse ground, cd/m2. */
  readonly ground_cdm2: number;
  /** Luminous reflectance of a wall across the way, 0-1; it counts where a window has one. */
  readonly facing_reflectance: number;
  /** What that wall is made of, for who draws it. */
  readonly facing?: OutdoorMaterial;
}

/** Spectra of the light from outside, relative. Each is that of one light group. */
export interface DaylightSpectra {
  readonly sky: EmissionSpd;
  readonly sun: EmissionSpd;
  readonly ground: EmissionSpd;
  readonly facing: EmissionSpd;
}

/** What lies outside a window, by what it is; `unknown` is gray and sends back a fifth. */
export type OutdoorMaterial = 'unknown' | 'paving' | 'greenery' | 'brick' | 'snow' | 'soil' | 'light-render';
