import { lightById } from '../spectrum/lights';
import { reflectanceOnGrid } from '../spectrum/resample';
import type { ReflectanceSpd } from '../spectrum/types';
import { luminousReflectance } from './luminous-reflectance';
import { BRICK, GRAY, GREENERY, LIGHT_RENDER, PAVING, SNOW, SOIL } from './outdoor-materials.data';
import type { OutdoorMaterial } from './types';

interface Outdoor {
  readonly shape: readonly number[];
  /** Luminous reflectance under D65, 0-1. */
  readonly luminous: number;
}

// Levels are our judgment within what is published. [S]: W. Smith, Modern Optical Engineering, figure 12.9. [I]: IES Lighting
// Handbook, reflectances of outside surfaces, from memory.
const OUTDOOR: Readonly<Record<OutdoorMaterial, Outdoor>> = {
  // What daylight is reckoned with where nobody said (common practice, no source).
  unknown: { shape: GRAY, luminous: 0.2 },
  // Concrete 0.40 [S, I], asphalt 0.05 [S], 0.07 [I], macadam 0.18 [I]: slabs that have weathered.
  paving: { shape: PAVING, luminous: 0.28 },
  // Dark green grass 0.06 [I], trees and grass 0.20 [S], mean of vegetation 0.25 [I]: a lawn's spectrum gives 0.07-0.10.
  greenery: { shape: GREENERY, luminous: 0.09 },
  // Red brick 0.35 [S], dark red 0.30 [I], with joints; old town brick is darker.
  brick: { shape: BRICK, luminous: 0.25 },
  // New 0.74, old 0.64 [I]; 0.85 [S].
  snow: { shape: SNOW, luminous: 0.78 },
  // Moist, tilled 0.07 [I]; bare soil as an albedo, near infrared included, 0.17 (common practice).
  soil: { shape: SOIL, luminous: 0.11 },
  // White paint, new 0.75, old 0.55 [I].
  'light-render': { shape: LIGHT_RENDER, luminous: 0.65 },
};

const made = new Map<OutdoorMaterial, ReflectanceSpd>();

/** Spectral reflectance of what lies outside. The array is shared: do not write to it. */
export function outdoorReflectance(material: OutdoorMaterial): ReflectanceSpd {
  const known = made.get(material);
  if (known) return known;
  const { shape, luminous } = OUTDOOR[material];
  const curve = reflectanceOnGrid({ start_nm: 380, step_nm: 20, reflectance: shape });
  if (!curve.ok) throw new Error(`the table of ${material} is broken: ${curve.problem.text}`);
  const scale = luminous / luminousReflectance(curve.value, lightById('D65')!);
  const scaled = curve.value.map((value) => value * scale) as ReflectanceSpd;
  made.set(material, scaled);
  return scaled;
}
