import { INDEX_OF_COATINGS } from '../finish/specular';
import { COAT_ALBEDO, METAL_WHITE, TABLE_COSINES, TABLE_WIDTHS } from './albedo.data';
import { fresnelUnpolarized, schlickWeight } from './fresnel';
import { lobeRays } from './lobe';

/** Steps of the tables: the square root of alpha from 0 to 0.6, and the square root of the cosine from 0 to 1. */
const WIDTH_STEP = 0.05;
const COSINE_STEP = 1 / (TABLE_COSINES - 1);

/** The roughest lobe the tables know. */
export const ROUGHEST = (WIDTH_STEP * (TABLE_WIDTHS - 1)) ** 2;

/** Grazing to the last bit has no lobe; the limit is reached well before. */
const LEAST_COSINE = 1e-4;

/** What of light from all sides (a uniform 1) a lobe sends to the eye, by brute force. */
export interface LobeAlbedo {
  /** Of a coat of index 1.5: directional albedo R, 0-1; one bounce between facets, the rest enters the body. */
  readonly coat: number;
  /** Of a metal: share s of white in its mirror, so that its albedo is F0 + (1 - F0) s. Light caught by facets is given back. */
  readonly metalWhite: number;
}

/** Directional albedo of the lobe from `rays` sampled directions; `cosine` of the eye's angle to the normal, 0-1. */
export function integrateLobe(alpha: number, cosine: number, rays: number): LobeAlbedo {
  const z = Math.max(LEAST_COSINE, cosine);
  let coat = 0;
  let white = 0;
  let all = 0;
  for (const ray of lobeRays([alpha, alpha], [Math.sqrt(1 - z * z), 0, z], rays)) {
    coat += ray.reached * fresnelUnpolarized(INDEX_OF_COATINGS, ray.cosine);
    white += ray.reached * schlickWeight(ray.cosine);
    all += ray.reached;
  }
  return { coat: coat / rays, metalWhite: white / all };
}

/** Directional albedo R of a coat, 0-1, from the table; `cosine` of the eye's angle to the normal. */
export const coatAlbedo = (alpha: number, cosine: number): number => readTable(COAT_ALBEDO, alpha, cosine);

/** Share of white in a metal's mirror, 0-1, from the table. */
export const metalWhite = (alpha: number, cosine: number): number => readTable(METAL_WHITE, alpha, cosine);

/** Hemispherical mean of R: 2 times the integral of R cos over the cosine. What a coat mirrors of light from all sides, 0-1. */
export function meanCoatAlbedo(alpha: number): number {
  const steps = 256;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const cosine = (i + 0.5) / steps;
    sum += 2 * cosine * coatAlbedo(alpha, cosine);
  }
  return sum / steps;
}

/** One row of a table at the cosines (i / (n - 1))^2, i = 0 .. n - 1: what a shader interpolates over the root of the cosine. */
export function albedoRow(alpha: number, metal: boolean): Float32Array {
  const read = metal ? metalWhite : coatAlbedo;
  return Float32Array.from({ length: TABLE_COSINES }, (_, i) => read(alpha, (i * COSINE_STEP) ** 2));
}

function readTable(table: readonly number[], alpha: number, cosine: number): number {
  const x = Math.min(TABLE_WIDTHS - 1, Math.sqrt(Math.max(0, alpha)) / WIDTH_STEP);
  const y = Math.sqrt(Math.min(1, Math.max(0, cosine))) / COSINE_STEP;
  const i = Math.min(TABLE_WIDTHS - 2, Math.floor(x));
  const j = Math.min(TABLE_COSINES - 2, Math.floor(y));
  const at = (row: number) => {
    const first = row * TABLE_COSINES + j;
    return table[first]! + (table[first + 1]! - table[first]!) * (y - j);
  };
  return at(i) + (at(i + 1) - at(i)) * (x - i);
}
