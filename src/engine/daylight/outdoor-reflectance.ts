import { lightById } from '../spectrum/lights';
import { reflectanceOnGrid } from '../spectrum/resample';
import type { ReflectanceSpd } from '../spectrum/types';
import { luminousReflectance } from './luminous-reflectance';
import { BRICK, GREENERY, LIGHT_RENDER, PAVING, SNOW, SOIL } from './outdoor-materials.data';
import type { OutdoorMaterial } from './types';

interface Outdoor {
  readonly shape: readonly number[];
  /** Luminous reflectance under D65, 0-1. */
  readonly luminous: number;
}

const OUTDOOR: Readonly<Record<OutdoorMaterial, Outdoor>> = {
  paving: { shape: PAVING, luminous: 0.28 },
  greenery: { shape: GREENERY, luminous: 0.08 },
  brick: { shape: BRICK, luminous: 0.17 },
  snow: { shape: SNOW, luminous: 0.8 },
  soil: { shape: SOIL, luminous: 0.11 },
  'light-render': { shape: LIGHT_RENDER, luminous: 0.66 },
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
