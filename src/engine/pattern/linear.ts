import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise, hashTexel } from './noise';
import type { Sheet } from './sheet';

/** Tones of layers, repeating over the sheet. */
const LEAST_LAYERS = 8;

/**
 * Stone cut along fine parallel layers (as travertine and silver-gray marbles cut across their bed): layers about `size_mm`
 * thick run on for metres, thinning, swelling and waving a little. Layers go along s turned by `direction_deg`, which is
 * rounded so that the sheet closes.
 */
export function linearSheet(frame: Frame, size_mm: number, direction_deg: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const [p, q] = [frame.width_mm, frame.height_mm];
  // Whole numbers of layers over both periods: the layers' normal is (a / p, b / q).
  const angle = (direction_deg * Math.PI) / 180;
  const bundle = 9 * size_mm;
  let a = Math.round((-Math.sin(angle) * p) / bundle);
  let b = Math.round((Math.cos(angle) * q) / bundle);
  if (a === 0 && b === 0) b = 1;
  if (b === 0) a = a || 1;
  const per = Math.max(LEAST_LAYERS, 9);
  const wave = fractalNoise(width, height, p / 1300, q / 420, 3, seed + 15, 0.4);
  const swell = fractalNoise(width, height, p / 700, q / (8 * size_mm), 2, seed + 16, 0.5);
  const fine = fractalNoise(width, height, p / 1000, q / (0.5 * size_mm), 2, seed + 18, 0.6);
  const patch = fractalNoise(width, height, p / 1500, q / 120, 3, seed + 19, 0.6);
  const pit = fractalNoise(width, height, p / 11, q / 3.4, 2, seed + 20, 0.5);
  const random = mulberry32(seed ^ 0x11ea);
  // Tones of the layers over the larger period: a broad rhythm with a sharp layer here and there.
  const bundles = Math.max(1, gcd(Math.abs(a), Math.abs(b)));
  const count = Math.max(LEAST_LAYERS, bundles * per);
  const tone = new Float32Array(count);
  for (let k = 0; k < count; k++) tone[k] = random() + random() - 1 + (random() < 0.12 ? 1.1 : 0);
  const field = new Float32Array(width * height);
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const t = ((y + 0.5) * dt) / q;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const s = ((x + 0.5) * ds) / p;
      const turns = (a * s + b * t) / bundles + (0.24 * wave[i]!) / bundles + (0.05 * swell[i]!) / bundles;
      const at = (turns - Math.floor(turns)) * count;
      const k = Math.floor(at);
      const f = at - k;
      const next = tone[(k + 1) % count]!;
      const e = f * f * (3 - 2 * f);
      const layer = tone[k % count]! + e * (next - tone[k % count]!);
      field[i] = 0.85 * layer + 0.5 * fine[i]! + 0.3 * patch[i]!;
      gain[i] = 1 + 0.022 * layer + 0.012 * fine[i]! + 0.012 * patch[i]! + 0.02 * (hashTexel(x, y, seed) - 0.5);
      // Small pits, filled and honed, lie in the darker layers.
      const deep = pit[i]! + 0.5 * layer - 2.1;
      if (deep > 0) gain[i]! -= Math.min(0.12, 0.16 * deep);
    }
  }
  const presence: Float32Array[] = [field];
  for (let k = 1; k < own; k++) {
    presence.push(fractalNoise(width, height, p / 600, q / (1.4 * size_mm), 3, seed + 500 + k, 0.6));
  }
  return { presence, edge: 1.5, gain };
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
