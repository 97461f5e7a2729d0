import type { LightRoom, Rect, Vec3 } from '../engine/light/types';
import { stepsOf } from './edge-lines';
import { rectNormal } from './rect-normal';

/** A plane that mirrors: places p with normal . p = offset, seen from the side the normal points to. */
export interface MirrorPlane {
  readonly normal: Vec3;
  /** m. */
  readonly offset: number;
}

/** Faces of one plane that mirror. */
export interface MirrorFaces extends MirrorPlane {
  readonly rects: readonly Rect[];
}

/** Faces narrower than this are no mirrors one would look into, m. */
const LEAST_EDGE_M = 0.05;
/** Nor are planes that fill less of the eye's sphere than this, sr: 0.05 is a hundredth of the usual picture. */
const LEAST_SOLID_ANGLE = 0.05;
/** What lies this near to a plane lies on it (mirror.glsl asks for a little less), m. */
const ON_PLANE_M = 0.003;
/** An eye this near to a plane sees it edge on, m. */
const LEAST_HEIGHT_M = 0.02;

/** The faces that mirror, plane by plane. `polished`: whether a surface mirrors clearly; panes of windows count where `panes` says so. */
export function mirrorFaces(
  room: Pick<LightRoom, 'fine' | 'windows'>,
  polished: ReadonlySet<number>,
  panes: boolean,
): readonly MirrorFaces[] {
  const byPlane = new Map<string, { normal: Vec3; offset: number; rects: Rect[] }>();
  const add = (rect: Rect): void => {
    if (Math.min(Math.hypot(...rect.u), Math.hypot(...rect.v)) < LEAST_EDGE_M) return;
    const normal = rectNormal(rect);
    const offset = dot(normal, rect.origin);
    const key = `${normal.map((x) => Math.round(x)).join()}:${stepsOf(offset)}`;
    const plane = byPlane.get(key);
    if (plane) plane.rects.push(rect);
    else byPlane.set(key, { normal, offset, rects: [rect] });
  };
  for (const rect of room.fine) if (polished.has(rect.surface)) add(rect);
  if (panes) for (const { rect } of room.windows) add(rect);
  return [...byPlane.values()];
}

/** Surfaces with a face on one of the planes: all others mirror by the room's cube alone. */
export function surfacesOn(planes: readonly MirrorPlane[], { fine }: Pick<LightRoom, 'fine'>): ReadonlySet<number> {
  const on = new Set<number>();
  for (const rect of fine) {
    if (on.has(rect.surface)) continue;
    const own = rectNormal(rect);
    const offset = dot(own, rect.origin);
    if (planes.some((plane) => dot(plane.normal, own) > 0.99 && Math.abs(plane.offset - offset) < ON_PLANE_M)) {
      on.add(rect.surface);
    }
  }
  return on;
}

/** The planes an eye sees most of, at most `count`, the largest first. */
export function planesSeen(faces: readonly MirrorFaces[], eye: Vec3, count: number): readonly MirrorPlane[] {
  return faces
    .filter(({ normal, offset }) => dot(normal, eye) - offset > LEAST_HEIGHT_M)
    .map((plane) => ({ plane, seen: plane.rects.reduce((sum, rect) => sum + solidAngle(rect, plane, eye), 0) }))
    .filter(({ seen }) => seen > LEAST_SOLID_ANGLE)
    .sort((a, b) => b.seen - a.seen)
    .slice(0, count)
    .map(({ plane }) => plane);
}

/**
 * Solid angle of a rectangle, sr: exact, of a corner in front of the eye by the closed form of a right pyramid (A. Khadjavi, 1968), put
 * together from its four corners.
 */
function solidAngle({ origin, u, v }: Rect, { normal, offset }: MirrorPlane, eye: Vec3): number {
  const height = dot(normal, eye) - offset;
  const along = (edge: Vec3): readonly [number, number] => {
    const length = Math.hypot(...edge);
    const from = edge.reduce((sum, x, k) => sum + (x / length) * (origin[k]! - eye[k]!), 0);
    return [from, from + length];
  };
  const [u0, u1] = along(u);
  const [v0, v1] = along(v);
  const corner = (a: number, b: number): number =>
    Math.atan((a * b) / (height * Math.sqrt(a * a + b * b + height * height)));
  return corner(u1, v1) - corner(u0, v1) - corner(u1, v0) + corner(u0, v0);
}

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
