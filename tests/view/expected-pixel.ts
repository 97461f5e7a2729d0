import { DataUtils } from 'three';
import type { AtlasLayout, Vec3 } from '../../src/engine/light/types';
import { sampleBytes } from '../../src/engine/pattern/sample';
import type { PatternTexture } from '../../src/engine/pattern/types';
import type { Look, RoomLight, SurfaceLook } from '../../src/kitchen/look';
import { DARKENING_POWER } from '../../src/kitchen/study/local-exposure';
import type { Room } from '../../src/kitchen/types';
import { type PropHit, pickProp, pickRect, type RectHit } from '../../src/view/pick';

/** What a pixel must be, computed in doubles straight from the records: the picture's shader is checked against this. */
export interface ExpectedPixel {
  /** A rectangle's index, or those of the rectangles' count on a prop's. */
  readonly rect: number;
  readonly rgb: readonly [number, number, number];
  /** The largest channel before and after its place is darkened; display white is 1. */
  readonly exposed: number;
  readonly shown: number;
  /** Exposed linear sRGB before its place is darkened. */
  readonly linear: readonly [number, number, number];
  /** Place on the pattern, texels; null on plain faces. */
  readonly texel: readonly [number, number] | null;
}

/** Null where the ray meets nothing with a finish. */
export function expectedPixel(
  room: Room,
  light: RoomLight,
  look: Look,
  eye: Vec3,
  direction: Vec3,
): ExpectedPixel | null {
  const onFace = pickRect(room.light.fine, eye, direction);
  const onProp = pickProp(room.light.props, eye, direction, onFace?.distance);
  const place = onProp ? placeOnProp(room, light, look, onProp) : onFace && placeOnFace(room, light, look, onFace);
  if (!place) return null;
  const { finish, direct, indirectAt, s, t } = place;
  const pattern = finish.pattern && s !== null ? look.patterns.get(finish.pattern)! : null;
  const bytes = pattern && s !== null ? bytesAt(pattern, s, t) : [0, 0, 0, 128];
  const weights = [255 - bytes[0]! - bytes[1]! - bytes[2]!, bytes[0]!, bytes[1]!, bytes[2]!].map((b) => b / 255);
  const gain = bytes[3]! / 128;

  const color = [0, 0, 0];
  for (let c = 0; c < (pattern ? finish.groupColors.length : 1); c++) {
    const indirect = indirectAt(c);
    for (let k = 0; k < 3; k++) {
      let sum = indirect[k]!;
      for (let g = 0; g < room.light.groups.length; g++) sum += direct[g]! * finish.groupColors[c]![3 * g + k]!;
      color[k]! += weights[c]! * gain * sum;
    }
  }
  // A white that would burn out in the direct light there sets the exposure of its place.
  const white = [0, 1, 2].map((k) => direct.reduce((sum, lx, g) => sum + lx * look.groupWhites[3 * g + k]!, 0));
  const positive = color.map((v) => Math.max(0, v) / Math.max(1, ...white) ** DARKENING_POWER);
  const peak = Math.max(1, ...positive);
  const shown = Math.max(...positive);
  // What is still brighter than display white fades to it, half way two stops over.
  const faded = (peak - 1) / (peak + 2);
  return {
    rect: place.index,
    linear: color as [number, number, number],
    exposed: Math.max(...color),
    shown,
    rgb: positive.map((v) => 255 * srgbEncoded((v / peak) * (1 - faded) + faded)) as [number, number, number],
    texel:
      pattern && s !== null ? [(s / pattern.width_m) * pattern.width, (t / pattern.height_m) * pattern.height] : null,
  };
}

/** Light and finish of a place, whatever it lies on. */
interface LitPlace {
  readonly index: number;
  readonly finish: SurfaceLook;
  readonly direct: readonly number[];
  indirectAt(component: number): readonly number[];
  /** On the pattern, m; null where there is none. */
  readonly s: number | null;
  readonly t: number;
}

function placeOnFace(room: Room, light: RoomLight, look: Look, hit: RectHit): LitPlace | null {
  const face = room.light.fine[hit.rect]!;
  const finish = look.surfaces.find(({ surface }) => surface === face.surface);
  if (!finish) return null;
  const layer = 4 * light.nodeAtlas.width * light.nodeAtlas.height;
  const { s0, t0, su, tu, sv, tv } = face.pattern;
  const halfAt = (i: number) => DataUtils.fromHalfFloat(look.nodeColors[i]!);
  return {
    index: hit.rect,
    finish,
    direct: light.direct.flatMap((map) =>
      sampleBlock(light.directAtlas, hit.rect, hit.u, hit.v, (i) => map?.[i] ?? 0, 0),
    ),
    indirectAt: (component) => sampleBlock(light.nodeAtlas, hit.rect, hit.u, hit.v, halfAt, component * layer),
    s: s0 + hit.u * su + hit.v * sv + (finish.shifts?.[2 * face.piece] ?? 0),
    t: t0 + hit.u * tu + hit.v * tv + (finish.shifts?.[2 * face.piece + 1] ?? 0),
  };
}

function placeOnProp(room: Room, light: RoomLight, look: Look, { prop, vertices, weights }: PropHit): LitPlace {
  const { surface, pattern, positions, piece = 0 } = room.light.props[prop]!;
  const finish = look.surfaces.find((one) => one.surface === surface)!;
  /** `size` numbers a vertex, from `first` on. */
  const mean = (values: ArrayLike<number>, size: number, first = 0): number[] =>
    Array.from({ length: size }, (_, k) =>
      vertices.reduce((sum, vertex, i) => sum + weights[i]! * values[first + size * vertex + k]!, 0),
    );
  const [s, t] = pattern ? mean(pattern, 2) : [null, 0];
  return {
    index: room.light.fine.length + prop,
    finish,
    direct: light.propDirect.flatMap((map) => mean(map![prop]!, 4)),
    indirectAt: (component) => mean(look.propColors[prop]!, 3, component * positions.length),
    s: s === null ? null : s! + (finish.shifts?.[2 * piece] ?? 0),
    t: t! + (finish.shifts?.[2 * piece + 1] ?? 0),
  };
}

/** IEC 61966-2-1. */
function srgbEncoded(v: number): number {
  return v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055;
}

function sampleBlock(
  { width, blocks }: AtlasLayout,
  rect: number,
  u: number,
  v: number,
  at: (index: number) => number,
  offset: number,
): number[] {
  const [x, y, alongU, alongV] = blocks.subarray(4 * rect) as unknown as [number, number, number, number];
  const [a, b] = [u * (alongU - 1), v * (alongV - 1)];
  const [i, j] = [Math.min(Math.floor(a), Math.max(0, alongU - 2)), Math.min(Math.floor(b), Math.max(0, alongV - 2))];
  const [i1, j1] = [Math.min(i + 1, alongU - 1), Math.min(j + 1, alongV - 1)];
  const value = (p: number, q: number, k: number) => at(offset + 4 * ((y + q) * width + x + p) + k);
  const [f, g] = [a - i, b - j];
  return [0, 1, 2, 3].map(
    (k) =>
      (1 - g) * ((1 - f) * value(i, j, k) + f * value(i1, j, k)) +
      g * ((1 - f) * value(i, j1, k) + f * value(i1, j1, k)),
  );
}

/** A sheet by the definition below; what is laid in pieces, turned or mirrored by the engine's twin, which has tests of its own. */
function bytesAt(pattern: PatternTexture, s: number, t: number): readonly number[] {
  if (!pattern.pieces && !pattern.turn_deg && pattern.wrap !== 'mirror') return samplePattern(pattern, s, t);
  const bytes = new Float64Array(4);
  sampleBytes(pattern, s, t, bytes);
  return [...bytes];
}

/** Bilinear at the finest level, repeating; s and t in metres. Bytes. */
function samplePattern({ width, height, width_m, height_m, data }: PatternTexture, s: number, t: number): number[] {
  const [a, b] = [(s / width_m) * width - 0.5, (t / height_m) * height - 0.5];
  const [i, j] = [Math.floor(a), Math.floor(b)];
  const [f, g] = [a - i, b - j];
  const wrap = (p: number, n: number) => ((p % n) + n) % n;
  const value = (p: number, q: number, k: number) => data[4 * (wrap(q, height) * width + wrap(p, width)) + k]!;
  return [0, 1, 2, 3].map(
    (k) =>
      (1 - g) * ((1 - f) * value(i, j, k) + f * value(i + 1, j, k)) +
      g * ((1 - f) * value(i, j + 1, k) + f * value(i + 1, j + 1, k)),
  );
}
