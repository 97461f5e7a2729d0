import type { Vec3 } from '../light/types';
import { gaussLegendre } from './gauss-legendre';
import { luminanceOfSky } from './sky-luminance';
import type { SkyLuminance } from './types';

/** Nodes a segment; the tests hold the sums against brute force. */
const RULE = gaussLegendre(20);

/** What one direction of the sky adds: its unit vector, and solid angle times cosine on the plane that is lit. */
export type SkyVisit = (direction: Vec3, weight: number) => void;

/** Illuminance of the open horizontal by the sky alone, lx. */
export const skyHorizontalLx = (sky: SkyLuminance): number => skyLx(sky, [0, 0, 1]);

/** Illuminance by the sky alone of an unobstructed plane with this unit normal, lx; any tilt. To 1e-4. */
export function skyLx(sky: SkyLuminance, normal: Vec3): number {
  let sum = 0;
  visitSky(sky.towardsSun, normal, (direction, weight) => {
    sum += weight * luminanceOfSky(sky, direction);
  });
  return sum;
}

/**
 * Walks the part of the sky that a plane sees, in directions and weights of a quadrature. Elevation and azimuth are cut at
 * the sun, where the luminance of a clear sky has a sharp peak, and at the edge of what the plane sees, so that every
 * piece is smooth.
 */
export function visitSky(towardsSun: Vec3, normal: Vec3, visit: SkyVisit): void {
  const [sx, sy, sz] = towardsSun;
  const [nx, ny, nz] = normal;
  const tilt = Math.hypot(nx, ny);
  const facing = tilt > 0 ? Math.atan2(ny, nx) : 0;
  const sunElevation = Math.asin(Math.min(1, Math.max(0, sz)));
  // Above this elevation, or below it for a plane that looks up or down, the plane sees all round or nothing.
  const edgeElevation = Math.atan2(tilt, Math.abs(nz));
  const elevations = cuts(0, Math.PI / 2, [sunElevation, edgeElevation]);
  const sunTurn = wrapPi(Math.atan2(sy, sx) - facing);
  overSegments(elevations, (elevation, elevationWeight) => {
    const height = Math.sin(elevation);
    const level = Math.cos(elevation);
    const reach = halfReach(nz * height, tilt * level);
    if (reach === 0) return;
    overSegments(cuts(-reach, reach, [sunTurn, 0]), (turn, turnWeight) => {
      const cosine = nz * height + tilt * level * Math.cos(turn);
      const direction: Vec3 = [level * Math.cos(facing + turn), level * Math.sin(facing + turn), height];
      visit(direction, cosine * level * elevationWeight * turnWeight);
    });
  });
}

/** Greatest turn off the plane's facing at which `upright + across cos(turn)` is still above zero. */
function halfReach(upright: number, across: number): number {
  if (across <= Math.abs(upright)) return upright > 0 ? Math.PI : 0;
  return Math.acos(-upright / across);
}

function cuts(from: number, to: number, at: readonly number[]): readonly number[] {
  const inside = at.filter((cut) => cut > from && cut < to).sort((a, b) => a - b);
  return [from, ...inside, to];
}

function overSegments(ends: readonly number[], visit: (at: number, weight: number) => void): void {
  for (let k = 1; k < ends.length; k++) {
    const half = (ends[k]! - ends[k - 1]!) / 2;
    if (half <= 0) continue;
    const middle = (ends[k]! + ends[k - 1]!) / 2;
    for (let i = 0; i < RULE.nodes.length; i++) visit(middle + half * RULE.nodes[i]!, half * RULE.weights[i]!);
  }
}

const wrapPi = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
