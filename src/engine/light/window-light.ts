import { prepareSky, readSky, type SkyTable } from '../daylight/prepare-sky';
import type { Outdoors, SunBeam } from '../daylight/types';
import { facingLuminance } from '../daylight/upright-lx';
import { type FaceSamples, faceSamples } from './face-samples';
import { glassTable, readGlass } from './glass';
import { rectNormal } from './rect-bvh';
import type { Rect, Vec3, WindowAperture } from './types';

/** What is seen through a window in one direction: exactly one of the three. */
export const SKY = 0;
const GROUND = 1;
const FACING = 2;
export const PARTS = 3;

/** A window ready to light points under one state of the outdoors. Its normal looks into the room; sample points lie a little inside the glass. */
export interface WindowLight extends FaceSamples {
  readonly rect: Rect;
  readonly area: number;
  /** Light group of sky, ground and facing wall, and that of the sun. */
  readonly groups: readonly [sky: number, ground: number, facing: number];
  readonly sunGroup: number;
  readonly sky: SkyTable;
  /** cd/m2. */
  readonly ground: number;
  readonly facing: number;
  /** Level unit vector outward and tangent of the wall's elevation straight on; 0: no wall. */
  readonly outX: number;
  readonly outY: number;
  readonly wallTangent: number;
  /** The sky is bright round the sun: smaller cells follow it. */
  readonly isUneven: boolean;
  /** Transmittance over the cosine of incidence. */
  readonly glass: Float64Array;
  /** The sun if it shines on the outside of this window. */
  readonly sun: SunBeam | null;
  /** Lux just inside an unobstructed window by what is seen, and by the sun: luminous flux per m2. */
  readonly exitance: Float64Array;
  readonly sunExitance: number;
}

const WINDOW_SAMPLES = 64;
const LARGE_WINDOW_M2 = 0.8;

/** Windows of a room under one state of the outdoors, in the room's order. */
export const prepareWindows = (windows: readonly WindowAperture[], outdoors: Outdoors): WindowLight[] => {
  const sky = prepareSky(outdoors.sky);
  return windows.map((window) => windowLight(window, outdoors, sky));
};

function windowLight(window: WindowAperture, outdoors: Outdoors, sky: SkyTable): WindowLight {
  const { rect, groups, panes } = window;
  const { axis, sign } = rectNormal(rect);
  const area = Math.hypot(...rect.u) * Math.hypot(...rect.v);
  const face = faceSamples(rect, area > LARGE_WINDOW_M2 ? 2 * WINDOW_SAMPLES : WINDOW_SAMPLES);
  const { normal } = face;
  const outward: Vec3 = [-normal[0]!, -normal[1]!, -normal[2]!];
  const wall = axis !== 2 && window.facing_deg > 0;
  const light = {
    rect,
    ...face,
    area,
    groups: [groups.sky, groups.ground, groups.facing] as const,
    sunGroup: groups.sun,
    sky,
    ground: outdoors.ground_cdm2,
    facing: wall ? facingLuminance(outdoors, outward) : 0,
    outX: axis === 0 ? -sign : 0,
    outY: axis === 1 ? -sign : 0,
    wallTangent: wall ? Math.tan((window.facing_deg * Math.PI) / 180) : 0,
    isUneven: outdoors.sky.c !== 0,
    glass: glassTable(panes),
  };
  const sun = outdoors.sun && sunReaches(light, outdoors.sun) ? outdoors.sun : null;
  const cosine = sun ? sun.towards[0] * outward[0] + sun.towards[1] * outward[1] + sun.towards[2] * outward[2] : 0;
  return {
    ...light,
    sun,
    exitance: partExitances(light),
    sunExitance: sun ? sun.normal_lx * cosine * readGlass(light.glass, cosine) : 0,
  };
}

type View = Pick<WindowLight, 'outX' | 'outY' | 'wallTangent'>;

/** What stands in a direction outward (unit vector): sky, ground, or the wall across the way. */
export function partTowards({ outX, outY, wallTangent }: View, dx: number, dy: number, dz: number): number {
  if (dz <= 0) return GROUND;
  // The wall runs on to both sides: straight on it is as high as given, aside it sinks with the cosine of the azimuth.
  return wallTangent > 0 && dz < wallTangent * (dx * outX + dy * outY) ? FACING : SKY;
}

/** Luminance of what stands in a direction, cd/m2, without the glass. */
export function luminanceOutside(
  light: Pick<WindowLight, 'sky' | 'ground' | 'facing'>,
  part: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  if (part === SKY) return readSky(light.sky, dx, dy, dz);
  return part === GROUND ? light.ground : light.facing;
}

/** Whether the sun stands on the outer side of the window and clear of the wall across the way. */
function sunReaches(light: View & Pick<WindowLight, 'normal'>, { towards: [x, y, z] }: SunBeam): boolean {
  const outward = -(x * light.normal[0]! + y * light.normal[1]! + z * light.normal[2]!);
  return outward > 1e-6 && z > 0 && partTowards(light, x, y, z) === SKY;
}

const RINGS = 64;
const SECTORS = 256;

/** Illuminance just inside the glass of an unobstructed window by each part, lx: midpoints over the cosine-weighted hemisphere. */
function partExitances(light: Omit<WindowLight, 'sun' | 'exitance' | 'sunExitance'>): Float64Array {
  const { normal } = light;
  const out = new Float64Array(PARTS);
  const n = [-normal[0]!, -normal[1]!, -normal[2]!];
  const axis = n.findIndex((value) => value !== 0);
  const b = (axis + 1) % 3;
  const c = (axis + 2) % 3;
  const d = [0, 0, 0];
  for (let i = 0; i < RINGS; i++) {
    const sine2 = (i + 0.5) / RINGS;
    const cosine = Math.sqrt(1 - sine2);
    const sine = Math.sqrt(sine2);
    const through = readGlass(light.glass, cosine);
    for (let j = 0; j < SECTORS; j++) {
      const phi = (2 * Math.PI * (j + 0.5)) / SECTORS;
      d[axis] = n[axis]! * cosine;
      d[b] = sine * Math.cos(phi);
      d[c] = sine * Math.sin(phi);
      const part = partTowards(light, d[0]!, d[1]!, d[2]!);
      out[part]! += through * luminanceOutside(light, part, d[0]!, d[1]!, d[2]!);
    }
  }
  return out.map((sum) => (Math.PI * sum) / (RINGS * SECTORS));
}
