import type { Vec3 } from '../light/types';

const RADIANS = Math.PI / 180;

/**
 * Unit vector towards a point of the sky in the axes of a room: x to the right along the back wall, y towards the back
 * wall, z up. `azimuth_deg` clockwise from north; `bearing_deg` is the compass bearing that +y faces.
 * With bearing 0 it is x east, y north, z up.
 */
export function inRoom(azimuth_deg: number, elevation_deg: number, bearing_deg: number): Vec3 {
  const turned = (azimuth_deg - bearing_deg) * RADIANS;
  const level = Math.cos(elevation_deg * RADIANS);
  return [level * Math.sin(turned), level * Math.cos(turned), Math.sin(elevation_deg * RADIANS)];
}
