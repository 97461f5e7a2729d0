import type { PatternTexture, PieceField } from './types';

/** A place on a texture, m; reused, so that readers of many places allocate nothing. */
export interface TexturePlace {
  x: number;
  y: number;
}

/**
 * Where on a texture the field of a pattern at (s, t), m, is to be read. The twin of `shaders/pieces.glsl`: a turn first, then
 * the piece there, then one of the texture's pieces by a hash, turned by half a turn or not.
 */
export function placeOnTexture(texture: PatternTexture, s: number, t: number, out: TexturePlace): void {
  const [c, n] = TURNS[texture.turn_deg ?? 0];
  const x = c * s + n * t;
  const y = c * t - n * s;
  if (!texture.pieces) {
    out.x = x;
    out.y = y;
    return;
  }
  locate[texture.pieces.kind](texture.pieces, x, y);
  const field = texture.pieces;
  const hash = hashPiece(found.i, found.j, field.seed);
  const piece = hash % (field.columns * field.rows);
  const sign = hash >>> 31 ? -1 : 1;
  const column = piece % field.columns;
  const row = Math.floor(piece / field.columns);
  const [ms, mt] = field.module_m;
  const hexagon = field.kind === 'hexagon';
  out.x = (column + (hexagon ? 0.5 * (row % 2) : 0.5)) * ms + sign * found.u;
  out.y = (row + (hexagon ? 0 : 0.5)) * mt + sign * found.v;
}

/** Cosine and sine of the turns. */
export const TURNS = { 0: [1, 0], 45: [Math.SQRT1_2, Math.SQRT1_2], 90: [0, 1] } as const;

/** The piece last found: its two numbers, and the place from its middle along and across it, m. */
const found = { i: 0, j: 0, u: 0, v: 0 };

function put(i: number, j: number, u: number, v: number): void {
  found.i = i;
  found.j = j;
  found.u = u;
  found.v = v;
}

const locate = {
  rows({ module_m: [ms, mt], offsets }: PieceField, x: number, y: number): void {
    const j = Math.floor(y / mt);
    const n = offsets.length;
    const q = x / ms - offsets[((j % n) + n) % n]!;
    const i = Math.floor(q);
    put(i, j, (q - i - 0.5) * ms, y - (j + 0.5) * mt);
  },

  /**
   * Level pieces stand at k (W, W) + m (L, -L), and each upright one at the end of a level one: [L, L + W] x [W - L, W] from its
   * corner. The two cover the plane once, for any L >= W.
   */
  herringbone({ module_m: [l, w] }: PieceField, x: number, y: number): void {
    const m = Math.floor((x - y + w) / (2 * l));
    const k = Math.floor((y + m * l) / w);
    const u = x - k * w - m * l;
    if (u >= 0 && u < l) {
      put(2 * k, m, u - l / 2, y + m * l - (k + 0.5) * w);
      return;
    }
    const n = Math.floor((x - y - l + w) / (2 * l));
    const h = Math.floor((x - l - n * l) / w);
    const along = y - w + l - h * w + n * l;
    put(2 * h + 1, n, along - l / 2, x - l - n * l - (h + 0.5) * w);
  },

  hexagon({ module_m: [ms, mt] }: PieceField, x: number, y: number): void {
    let best = Infinity;
    const low = Math.floor(y / mt);
    for (let j = low; j <= low + 1; j++) {
      const shift = j % 2 === 0 ? 0 : 0.5;
      const i = Math.floor(x / ms - shift + 0.5);
      const u = x - (i + shift) * ms;
      const v = y - j * mt;
      if (u * u + v * v >= best) continue;
      best = u * u + v * v;
      put(i, j, u, v);
    }
  },
};

/** 32-bit hash of a piece's two numbers; the shader has the same. */
function hashPiece(i: number, j: number, seed: number): number {
  let h = Math.imul(i, 0x27d4eb2d) ^ Math.imul(j, 0x165667b1) ^ seed;
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
