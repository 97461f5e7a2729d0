import type { Vec3 } from '../light/types';
import type { SkyLuminance } from './types';

type Shape = Pick<SkyLuminance, 'a' | 'b' | 'c' | 'd' | 'e' | 'traditional'>;

/** Standard skies by their number in ISO 15469:2004 (CIE S 011), table 1. */
const SHAPES = {
  /** The traditional overcast sky, number 16: (1 + 2 sin elevation) / 3 (Moon and Spencer, 1942). Daylight factors rest on it. */
  traditional: { a: 0, b: -1, c: 0, d: -1, e: 0, traditional: true },
  /** Type 1: CIE standard overcast sky. */
  overcast: { a: 4, b: -0.7, c: 0, d: -1, e: 0 },
  /** Type 5: sky of uniform luminance. */
  uniform: { a: 0, b: -1, c: 0, d: -1, e: 0 },
  /** Type 12: CIE standard clear sky, low turbidity. */
  clear: { a: -1, b: -0.32, c: 10, d: -3, e: 0.45 },
} as const satisfies Record<string, Shape>;

/**
 * A standard sky of ISO 15469 with a given luminance at its zenith, cd/m2. `towardsSun` is a unit vector and matters to
 * the clear sky alone.
 */
export function skyLuminance(kind: keyof typeof SHAPES, towardsSun: Vec3, zenith_cdm2: number): SkyLuminance {
  return { zenith_cdm2, ...SHAPES[kind], towardsSun };
}
