import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { SHADE_HEIGHT, SHADE_RIM } from '../../model/layout/measures';
import type { Plan } from '../plan/types';
import { append, emptyMesh, toProp } from './mesh';
import { tube } from './tube';

/** Share of a shade's height up to which it is straight; its neck over its radius; how far its bottom lies above the lamp's face, m. */
const STRAIGHT = 0.4;
const NECK = 0.16;
const ABOVE_FACE = 0.001;
const CURVE_STEPS = 8;
const SIDES = 40;
const CABLE = 0.003;
const ROSE = { radius: 0.05, height: 0.02 };

/** Shades and cables of the pendants: a short cylinder that closes to a dome, on a cable from a rose. None without pendants. */
export function pendantProps(plan: Plan): PropMesh[] {
  const shades = emptyMesh();
  const cables = emptyMesh();
  for (const { fixture, face, z } of plan.lamps) {
    if (fixture.kind !== 'pendant') continue;
    const x = (face.x0 + face.x1) / 2;
    const y = (face.y0 + face.y1) / 2;
    const diameter = fixture.diameter / 1000;
    const at = (height: number): Vec3 => [x, y, height];
    const { heights, radii } = profile(diameter);
    append(
      shades,
      tube(
        heights.map((h) => at(z + h)),
        radii,
        SIDES,
      ),
    );
    const top = plan.height - 0.001;
    append(cables, tube([at(z + SHADE_HEIGHT * diameter), at(top - ROSE.height)], [CABLE, CABLE], 8));
    append(cables, tube([at(top - ROSE.height), at(top)], [ROSE.radius, ROSE.radius], 20));
  }
  if (shades.indices.length === 0) return [];
  return [
    toProp(shades, SURFACES.indexOf('frame'), 'pendant shades'),
    toProp(cables, SURFACES.indexOf('hardware'), 'pendant cables'),
  ];
}

/** Radii over heights above the lower edge, m. */
function profile(diameter: number): { readonly heights: number[]; readonly radii: number[] } {
  const radius = diameter / 2;
  const straight = STRAIGHT * SHADE_HEIGHT * diameter;
  const dome = SHADE_HEIGHT * diameter - straight;
  const heights = [ABOVE_FACE, ABOVE_FACE + 0.002, straight * 0.5];
  const radii = [SHADE_RIM * radius, radius, radius];
  for (let i = 0; i <= CURVE_STEPS; i++) {
    const angle = (Math.PI / 2) * (i / CURVE_STEPS);
    heights.push(straight + dome * Math.sin(angle));
    radii.push(radius * (NECK + (1 - NECK) * Math.cos(angle)));
  }
  return { heights, radii };
}
