import type { Chromaticity } from '../color/types';
import type { Vec3 } from '../light/types';

/** Preetham's turbidity of the clear sky: low, as that of ISO type 12. Our judgment. */
const TURBIDITY = 2.5;

/**
 * A lower sun counts as at this height. With the sun on the horizon the model turns the whole sky to 5200 K, measured
 * twilights turn bluer (R. Lee, J. Hernandez-Andres, Applied Optics 42 (2003) 445). Where to stop is our judgment.
 */
const LOWEST_SUN_DEG = 5;

/** Coefficients of Perez' five-term formula, each as slope and offset in turbidity; zenith value as a cubic in the sun's. */
interface Channel {
  readonly perez: readonly (readonly [number, number])[];
  readonly zenith: readonly (readonly [number, number, number, number])[];
}

// A. Preetham, P. Shirley, B. Smits, A practical analytic model for daylight, SIGGRAPH 1999, appendix A.2.
const X: Channel = {
  perez: [
    [-0.0193, -0.2592],
    [-0.0665, 0.0008],
    [-0.0004, 0.2125],
    [-0.0641, -0.8989],
    [-0.0033, 0.0452],
  ],
  zenith: [
    [0.00166, -0.00375, 0.00209, 0],
    [-0.02903, 0.06377, -0.03202, 0.00394],
    [0.11693, -0.21196, 0.06052, 0.25886],
  ],
};
const Y: Channel = {
  perez: [
    [-0.0167, -0.2608],
    [-0.095, 0.0092],
    [-0.0079, 0.2102],
    [-0.0441, -1.6537],
    [-0.0109, 0.0529],
  ],
  zenith: [
    [0.00275, -0.0061, 0.00317, 0],
    [-0.04214, 0.0897, -0.04153, 0.00516],
    [0.15346, -0.26756, 0.0667, 0.26688],
  ],
};

/**
 * Chromaticity of a clear sky as a function of direction (unit vector, at or above the horizon), for the sun towards a unit
 * vector: Preetham, Shirley, Smits 1999; 2 degree observer.
 */
export function clearSkyChromaticity(towardsSun: Vec3): (direction: Vec3) => Chromaticity {
  const [sx, sy, sz] = liftSun(towardsSun);
  const sunZenith = Math.acos(Math.min(1, sz));
  const x = channelOf(X, sunZenith);
  const y = channelOf(Y, sunZenith);
  return ([dx, dy, dz]) => {
    const gamma = Math.acos(Math.min(1, Math.max(-1, dx * sx + dy * sy + dz * sz)));
    return { x: x(dz, gamma), y: y(dz, gamma) };
  };
}

function liftSun([x, y, z]: Vec3): Vec3 {
  const lowest = Math.sin((LOWEST_SUN_DEG * Math.PI) / 180);
  if (z >= lowest) return [x, y, z];
  const level = Math.hypot(x, y);
  if (level === 0) return [0, 0, 1];
  const stretch = Math.sqrt(1 - lowest * lowest) / level;
  return [x * stretch, y * stretch, lowest];
}

function channelOf({ perez, zenith }: Channel, sunZenith: number): (cosZ: number, gamma: number) => number {
  const [a, b, c, d, e] = perez.map(([slope, offset]) => slope * TURBIDITY + offset) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const value = (cosZ: number, gamma: number) =>
    (1 + a * Math.exp(b / Math.max(cosZ, 1e-3))) * (1 + c * Math.exp(d * gamma) + e * Math.cos(gamma) ** 2);
  const cubic = zenith.map(([p3, p2, p1, p0]) => p0 + sunZenith * (p1 + sunZenith * (p2 + sunZenith * p3)));
  const atZenith = (cubic[0]! * TURBIDITY + cubic[1]!) * TURBIDITY + cubic[2]!;
  const scale = atZenith / value(1, sunZenith);
  return (cosZ, gamma) => scale * value(cosZ, gamma);
}
