import type { FineRect, LightRoom } from '../../engine/light/types';
import { pieceSize } from '../../engine/pattern/pieces';
import type { PatternSpec } from '../../engine/pattern/types';
import type { SurfaceId } from '../../engine/surface';
import type { Laying } from '../../model/project';

/** The picture moves the pattern of at most this many pieces of a surface apart; further ones share the shifts of the first. */
export const MOST_SHIFTS = 16;

/** Faces narrower than this are edges of tiles and sheets: they take no part in where a field starts, m. */
const EDGE_M = 0.03;

/** Kept between a run and the seam at the end of its slab, m. */
const TRIM_M = 0.02;

/** Kept between the strips of a slab: the saw's cut and some trimming, m. */
const BETWEEN_STRIPS_M = 0.01;

/** Upright surfaces on which rows start whole on the counter or the floor. */
const UPRIGHT: readonly SurfaceId[] = ['backsplash', 'wall', 'upstand'];

/** Surfaces cut from slabs; each begins at another place of the slab. */
const FROM_SLABS: readonly SurfaceId[] = ['counter', 'island-counter', 'upstand', 'backsplash'];

/** Extent of a piece in its pattern's coordinates, m. */
interface Extent {
  piece: number;
  s0: number;
  s1: number;
  t0: number;
  t1: number;
}

/**
 * How far the pattern is moved on each piece of a surface: (ds, dt) per piece number, m; null where it lies as it is. Fields of
 * tiles are centred or start in a corner; each piece of a slab material takes its own strip of a slab. The room's geometry does
 * not depend on it, so a laying changes without a new room.
 */
export function pieceShifts(
  room: LightRoom,
  surface: SurfaceId,
  spec: PatternSpec,
  laying: Laying,
): Float32Array | null {
  const index = room.surfaces.indexOf(surface);
  const extents = extentsOf(room.fine.filter((rect) => rect.surface === index));
  const [first] = extents;
  if (!first) return null;
  const shifts =
    spec.slab && spec.layout === 'plain'
      ? cutStrips(extents, spec, laying, FROM_SLABS.indexOf(surface))
      : pieceSize(spec) && spec.layout !== 'planks'
        ? extents.map((extent) => startOfField(extent, spec, laying, UPRIGHT.includes(surface)))
        : null;
  if (!shifts) return null;
  const out = new Float32Array(2 * (Math.max(...extents.map(({ piece }) => piece)) + 1));
  extents.forEach(({ piece }, i) => {
    out.set(shifts[i % MOST_SHIFTS]!, 2 * piece);
  });
  return out;
}

/** The pieces of a surface in the order of their numbers: the picture counts them the same way. */
export const piecesOf = (rects: readonly FineRect[]): readonly number[] =>
  [...new Set(rects.map(({ piece }) => piece))].sort((a, b) => a - b);

/** Pattern coordinates (m) of a place of a fine rectangle, with its piece's shift. */
export function placeOnPattern(
  { pattern, piece }: Pick<FineRect, 'pattern' | 'piece'>,
  u: number,
  v: number,
  shifts: Float32Array | null,
): readonly [s: number, t: number] {
  const { s0, t0, su, tu, sv, tv } = pattern;
  const at = 2 * piece;
  return [s0 + su * u + sv * v + (shifts?.[at] ?? 0), t0 + tu * u + tv * v + (shifts?.[at + 1] ?? 0)];
}

function extentsOf(rects: readonly FineRect[]): readonly Extent[] {
  return piecesOf(rects).map((piece) => {
    const own = rects.filter((rect) => rect.piece === piece);
    const broad = own.filter(({ u, v }) => Math.min(Math.hypot(...u), Math.hypot(...v)) >= EDGE_M);
    const extent: Extent = { piece, s0: Infinity, s1: -Infinity, t0: Infinity, t1: -Infinity };
    for (const { pattern } of broad.length > 0 ? broad : own) {
      for (const [u, v] of CORNERS) {
        const s = pattern.s0 + u * pattern.su + v * pattern.sv;
        const t = pattern.t0 + u * pattern.tu + v * pattern.tv;
        extent.s0 = Math.min(extent.s0, s);
        extent.s1 = Math.max(extent.s1, s);
        extent.t0 = Math.min(extent.t0, t);
        extent.t1 = Math.max(extent.t1, t);
      }
    }
    return extent;
  });
}

const CORNERS = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
] as const;

type Shift = readonly [ds: number, dt: number];

/**
 * Where a field of pieces starts. Centred: a joint or the middle of a piece in the middle, whichever leaves the larger cut at the
 * edges (never under half a piece then); upright fields keep whole rows on their foot. From the corner: whole pieces there.
 */
function startOfField({ s0, s1, t0, t1 }: Extent, spec: PatternSpec, laying: Laying, upright: boolean): Shift {
  const size = pieceSize(spec)!;
  const joint = (spec.joint_mm ?? 0) / 1000;
  const [long, short] = [size[0] / 1000 + joint, size[1] / 1000 + joint];
  // Turned aslant, or without rows of its own: a node of the pattern in the middle or the corner is all one can ask.
  if (spec.turn_deg === 45 || spec.layout === 'herringbone' || spec.layout === 'hexagon') {
    return laying.start === 'corner' ? [-s0, -t0] : [-(s0 + s1) / 2, upright ? -t0 : -(t0 + t1) / 2];
  }
  const [alongS, alongT] = spec.turn_deg === 90 ? [short, long] : [long, short];
  if (laying.start === 'corner') return [-s0, -t0];
  return [centred(s0, s1, alongS), upright ? -t0 : centred(t0, t1, alongT)];
}

/** The shift that brings a joint or the middle of a piece to the middle of an edge from `from` to `to`, all in m. */
export function centred(from: number, to: number, module: number): number {
  const middle = (from + to) / 2;
  const cutBeside = (start: number): number => {
    const rest = ((to - from) / 2 - start) % module;
    return rest < 1e-6 ? module : rest;
  };
  return cutBeside(0) >= cutBeside(module / 2) ? -middle : module / 2 - middle;
}

/**
 * Strips side by side across the slab, each piece of the surface its own; what finds no room goes to the next slab of the bundle,
 * which looks like this one and is read from another place. A run no longer than the slab has no seam.
 */
function cutStrips(extents: readonly Extent[], spec: PatternSpec, laying: Laying, place: number): readonly Shift[] {
  const turned = spec.turn_deg === 90;
  const [length, width] = spec.slab!.size_mm.map((size) => size / 1000) as [number, number];
  let slab = Math.max(0, place);
  let edge = TRIM_M;
  return extents.map(({ s0, s1, t0, t1 }): Shift => {
    const run = turned ? t1 - t0 : s1 - s0;
    const depth = turned ? s1 - s0 : t1 - t0;
    if (edge > TRIM_M && edge + depth > width - TRIM_M) {
      slab += 1;
      edge = TRIM_M;
    }
    const spare = Math.max(0, length - TRIM_M - run - TRIM_M);
    const along = TRIM_M + spare * ((0.618 * slab) % 1) + (laying.slab?.shift_mm ?? 0) / 1000;
    const across = edge + Math.min(0.1 * (slab % 3), Math.max(0, width - TRIM_M - edge - depth));
    edge = across + depth + BETWEEN_STRIPS_M;
    // The texture is read at (t, -s) where it is turned by a quarter.
    return turned ? [-across - s1, along - t0] : [along - s0, across - t0];
  });
}
