import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise, hashTexel } from './noise';
import type { Sheet } from './sheet';

const LEAST_SIDES = 4;
const MAX_SIDES = 7;
const LEVELS = 6;
/** Sizes fall by this factor from level to level. */
const SMALLER = 0.66;

/** Cells along each side in which chips are counted, and places tried for each chip: the emptiest takes it. */
const CELLS = 16;
const TRIALS = 3;

/**
 * Broken chips in a binder (terrazzo, flecked engineered stone): angular, some long, no two touching, large ones first and ever
 * smaller ones between them. They are mixed well, as in a batch: nowhere denser than elsewhere, so that no sheet is found again from
 * afar. `size_mm` is the width of the larger chips; `shares` the area shares of components 1, 2, 3.
 */
export function chipSheet(frame: Frame, size_mm: number, shares: readonly number[], seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const random = mulberry32(seed ^ 0xc41b);
  const taken = new Float32Array(width * height);
  const presence = shares.map(() => new Float32Array(width * height));
  const binder = fractalNoise(width, height, frame.width_mm / 40, frame.height_mm / 40, 3, seed + 61);
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      gain[i] = 1 + 0.008 * binder[i]! + 0.05 * (hashTexel(x, y, seed) - 0.5);
    }
  }
  const texel = Math.sqrt(ds * dt);
  const left = shares.map((share) => share * width * height);
  const whole = shares.reduce((a, b) => a + b, 0) * width * height;
  const nx = new Float32Array(MAX_SIDES);
  const ny = new Float32Array(MAX_SIDES);
  const reach = new Float32Array(MAX_SIDES);
  let remaining = whole;
  const filled = new Float32Array(CELLS * CELLS);
  const cellOf = (x: number, y: number): number =>
    Math.floor((y / height) * CELLS) * CELLS + Math.floor((x / width) * CELLS);
  for (let level = 0; level < LEVELS; level++) {
    // Radii fall from level to level; larger ones take most of the area until the shares are used up.
    const radius = Math.max(0.62 * size_mm * SMALLER ** level, 0.9 * texel);
    const goal = level === LEVELS - 1 ? 0 : whole * (1 - (level + 1) / LEVELS) ** 1.35;
    let misses = 0;
    while (remaining > goal + 0.5 && misses < 12000) {
      let cx = 0;
      let cy = 0;
      let emptiest = Infinity;
      for (let trial = 0; trial < TRIALS; trial++) {
        const x = random() * width;
        const y = random() * height;
        const here = filled[cellOf(x, y)]!;
        if (here >= emptiest) continue;
        emptiest = here;
        cx = x;
        cy = y;
      }
      if (taken[Math.floor(cy) * width + Math.floor(cx)]! > 0) {
        misses++;
        continue;
      }
      const k = choose(left, random());
      const r = radius * (0.8 + 0.4 * random());
      const sides = LEAST_SIDES + Math.floor(random() * (MAX_SIDES - LEAST_SIDES + 1));
      const turn = 2 * Math.PI * random();
      const flat = 0.42 + 0.58 * random();
      const lie = Math.PI * random();
      for (let s = 0; s < sides; s++) {
        const angle = turn + (2 * Math.PI * (s + 0.7 * (random() - 0.5))) / sides;
        nx[s] = Math.cos(angle);
        ny[s] = Math.sin(angle);
        const along = Math.cos(angle - lie);
        reach[s] = r * (0.72 + 0.28 * random()) * Math.sqrt(along * along + (1 - along * along) * flat * flat);
      }
      const halfX = Math.ceil((1.35 * r) / ds + 1);
      const halfY = Math.ceil((1.35 * r) / dt + 1);
      const x0 = Math.floor(cx);
      const y0 = Math.floor(cy);
      // Sharp corners that reach farther out than this are broken off.
      const farthest = (1.5 * r + texel) ** 2;
      const first = (((x0 - halfX) % width) + width) % width;
      const cell = cellOf(cx, cy);
      let free = true;
      for (let pass = 0; pass < 2 && free; pass++) {
        const tone = 1 + 0.11 * (random() - 0.5);
        for (let dy = -halfY; dy <= halfY && free; dy++) {
          const row = ((((y0 + dy) % height) + height) % height) * width;
          const py = (y0 + dy + 0.5 - cy) * dt;
          let column = first - 1;
          for (let dx = -halfX; dx <= halfX; dx++) {
            column = column + 1 === width ? 0 : column + 1;
            const i = row + column;
            if (pass === 0 && taken[i] === 0) continue;
            const px = (x0 + dx + 0.5 - cx) * ds;
            if (px * px + py * py > farthest) continue;
            let outside = -1e9;
            for (let s = 0; s < sides; s++) {
              const d = nx[s]! * px + ny[s]! * py - reach[s]!;
              if (d > outside) outside = d;
            }
            const cover = Math.min(1, 0.5 - outside / texel);
            if (pass === 0) {
              // A chip keeps a film of binder around it.
              if (cover > -0.4) {
                free = false;
                break;
              }
            } else if (cover > 0) {
              taken[i] = cover;
              presence[k]![i] = cover;
              gain[i]! *= tone;
              left[k]! -= cover;
              remaining -= cover;
              filled[cell]! += cover;
            }
          }
        }
      }
      if (!free) misses++;
    }
  }
  return { presence, edge: null, gain };
}

function choose(left: readonly number[], at: number): number {
  let sum = 0;
  for (const l of left) sum += Math.max(l, 0);
  let upTo = 0;
  for (let k = 0; k < left.length; k++) {
    upTo += Math.max(left[k]!, 0) / (sum || 1);
    if (at < upTo) return k;
  }
  return left.length - 1;
}
