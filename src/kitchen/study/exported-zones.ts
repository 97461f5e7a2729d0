import { addDirect, directScene } from '../../engine/light/direct-scene';
import { finishGather, gatherPoint, startGather } from '../../engine/light/gather-rows';
import { gatherNodes } from '../../engine/light/nodes';
import { rectNormal } from '../../engine/light/rect-bvh';
import { solveGroup } from '../../engine/light/solve';
import { facingOf } from '../../engine/light/surface-light';
import { buildTransport } from '../../engine/light/transport';
import type { LightRoom, Rect, Vec3 } from '../../engine/light/types';
import type { Facing, SurfaceId } from '../../engine/surface';

/** A rectangle of the room and what it sends, lm/m2. */
export interface ShiningRect {
  readonly rect: Rect;
  readonly emit: number;
}

/** A part of a large face and the mean irradiance on it. */
export interface ExportedZone {
  readonly name: SurfaceId;
  /** Axis of the normal (0 x, 1 y, 2 z), its direction, and the plane. */
  readonly ax: 0 | 1 | 2;
  readonly sg: 1 | -1;
  readonly c: number;
  /** Range along axis (ax + 1) % 3, and along axis (ax + 2) % 3, m. */
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
  /** Mean irradiance in the three bands, lm/m2. */
  readonly upstand: readonly [number, number, number];
}

/** Faces that are worth a figure: what one works at and stands on, and what one sees most of. */
const ZONES: readonly (readonly [surface: SurfaceId, facing: Facing])[] = [
  ['counter', 'up'],
  ['island-counter', 'up'],
  ['floor', 'up'],
  ['base-fronts', 'upright'],
  ['island-fronts', 'upright'],
  ['wall-fronts', 'upright'],
  ['tall-fronts', 'upright'],
  ['backsplash', 'upright'],
  ['wall', 'upright'],
  ['ceiling', 'down'],
];

const BANDS = 3;
/** Zones keep this far from the edges of their face, or a fifth of a short one, m. */
const MARGIN_M = 0.05;
/** Points at which indirect light is gathered; direct light, which changes faster, at three times as many each way. */
const POINTS = 256;
const DIRECT_FINER = 3;
const RAYS = 400;
const SEED = 7;

/** The largest face of each kind, and the mean irradiance on it. */
export function exportedZones(
  surfaces: readonly SurfaceId[],
  rects: readonly ShiningRect[],
  reflectance: Float32Array,
): ExportedZone[] {
  const zones = ZONES.flatMap(([name, facing]) => {
    const zone = largestZone(surfaces.indexOf(name), facing, rects);
    return zone ? [{ name, ...zone }] : [];
  });
  const means = zoneMeans(rects, reflectance, zones);
  return zones.map((zone, i) => ({ ...zone, upstand: means[i]! }));
}

/**
 * Mean irradiance in three bands over parts of a closed room's faces, lm/m2, the room closed by the same rectangles that bounce
 * its light. `reflectance`: per surface and band, for the rectangles' `surface`.
 */
export function zoneMeans(
  rects: readonly ShiningRect[],
  reflectance: Float32Array,
  zones: readonly Zone[],
): [number, number, number][] {
  const room = exportedLight(rects);
  const transport = buildTransport(room);
  const radiosity = solveGroup(transport, reflectance, transport.direct[0]!, { bands: BANDS });
  const scene = directScene(transport);
  return zones.map((zone) => {
    const gatherer = startGather(room, transport, RAYS, SEED);
    for (const [point, normal] of pointsOf(zone, 1)) gatherPoint(gatherer, ...point, ...normal);
    const direct = new Float64Array(1);
    let directPoints = 0;
    for (const [point, normal] of pointsOf(zone, DIRECT_FINER)) {
      addDirect(scene, ...point, ...normal, direct);
      directPoints++;
    }
    const indirect = gatherNodes({ rows: finishGather(gatherer) }, radiosity, BANDS);
    return [0, 1, 2].map((band) => {
      let sum = 0;
      for (let i = band; i < indirect.length; i += BANDS) sum += indirect[i]!;
      return (sum * BANDS) / indirect.length + direct[0]! / directPoints;
    }) as [number, number, number];
  });
}

/** The room for the light engine: what bounces light is what is seen, everything that shines is one group of diffuse lamps. */
function exportedLight(rects: readonly ShiningRect[]): LightRoom {
  const coarse = rects.map(({ rect }) => rect);
  return {
    surfaces: [],
    groups: ['all'],
    coarse,
    fine: coarse.map((rect) => ({ ...rect, pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 })),
    lamps: rects
      .filter(({ emit }) => emit > 0)
      .map(({ rect, emit }) => ({ group: 0, rect, lumens: emit * Math.hypot(...rect.u) * Math.hypot(...rect.v) })),
    windows: [],
    props: [],
    worktop: [],
  };
}

/** A part of a face. */
export type Zone = Omit<ExportedZone, 'name' | 'upstand'>;

function largestZone(surface: number, facing: Facing, rects: readonly ShiningRect[]): Zone | null {
  let most = 0;
  let found: Zone | null = null;
  for (const { rect } of rects) {
    if (rect.surface !== surface || facingOf(rect) !== facing) continue;
    const area = Math.hypot(...rect.u) * Math.hypot(...rect.v);
    if (area <= most) continue;
    most = area;
    const { axis, sign } = rectNormal(rect);
    const [u0, u1] = insideOf(rect.origin, rect.u, rect.v, (axis + 1) % 3);
    const [v0, v1] = insideOf(rect.origin, rect.u, rect.v, (axis + 2) % 3);
    found = { ax: axis as 0 | 1 | 2, sg: sign as 1 | -1, c: rect.origin[axis]!, u0, u1, v0, v1 };
  }
  return found;
}

function insideOf(origin: Vec3, u: Vec3, v: Vec3, k: number): readonly [number, number] {
  const far = origin[k]! + u[k]! + v[k]!;
  const [low, high] = [Math.min(origin[k]!, far), Math.max(origin[k]!, far)];
  const margin = Math.min(MARGIN_M, (high - low) / 5);
  return [low + margin, high - margin];
}

type Triple = [number, number, number];

/** Points evenly over a zone, about as many per metre one way as the other, and its normal. */
function* pointsOf({ ax, sg, c, u0, u1, v0, v1 }: Zone, finer: number): Generator<[Triple, Triple]> {
  const alongU = Math.min(64, Math.max(4, Math.round(Math.sqrt((POINTS * (u1 - u0)) / (v1 - v0)))));
  const nu = finer * alongU;
  const nv = finer * Math.max(4, Math.round(POINTS / alongU));
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) {
      const point: Triple = [c, c, c];
      const normal: Triple = [0, 0, 0];
      normal[ax] = sg;
      point[(ax + 1) % 3] = u0 + ((u1 - u0) * (i + 0.5)) / nu;
      point[(ax + 2) % 3] = v0 + ((v1 - v0) * (j + 0.5)) / nv;
      yield [point, normal];
    }
  }
}
