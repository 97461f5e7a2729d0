import { glassTable, readGlass } from '../light/glass';
import type { Vec3 } from '../light/types';
import { visitSky } from './sky-illuminance';
import { luminanceOfSky } from './sky-luminance';
import type { Outdoors } from './types';
import { facingLuminance } from './upright-lx';

/** Light of each kind, lx. */
export interface PaneLx {
  readonly sky: number;
  readonly sun: number;
  readonly ground: number;
  readonly facing: number;
}

/**
 * What falls on a plane right behind a window's glass: of the sky and the sun over a wall across the way of elevation `facing_deg`, of
 * that wall and of the level ground. `outward` is the unit normal of the glass, level.
 */
export function paneLx(outdoors: Outdoors, outward: Vec3, panes: number, facing_deg: number): PaneLx {
  const glass = glassTable(panes);
  const wall = Math.tan((facing_deg * Math.PI) / 180);
  const cosineOf = (d: Vec3) => d[0] * outward[0] + d[1] * outward[1] + d[2] * outward[2];
  const isOpen = (d: Vec3) => wall <= 0 || d[2] > wall * cosineOf(d);
  let sky = 0;
  visitSky(outdoors.sky.towardsSun, outward, (direction, weight) => {
    if (isOpen(direction))
      sky += weight * luminanceOfSky(outdoors.sky, direction) * readGlass(glass, cosineOf(direction));
  });
  const { sun } = outdoors;
  const sunCosine = sun ? Math.max(0, cosineOf(sun.towards)) : 0;
  const bySun = sun && isOpen(sun.towards) ? sun.normal_lx * sunCosine * readGlass(glass, sunCosine) : 0;
  const evenly = Math.PI * diffuseTransmittance(glass);
  // Half of what the glass sees is ground; a wall without end takes the sine of its elevation of the other half.
  return {
    sky,
    sun: bySun,
    ground: (evenly * outdoors.ground_cdm2) / 2,
    facing: facing_deg > 0 ? (evenly * facingLuminance(outdoors, outward) * Math.sin(Math.atan(wall))) / 2 : 0,
  };
}

/** Of light from all sides. */
function diffuseTransmittance(glass: Float64Array): number {
  const steps = 64;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const cosine = (i + 0.5) / steps;
    sum += (2 * cosine * readGlass(glass, cosine)) / steps;
  }
  return sum;
}
