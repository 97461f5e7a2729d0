import type { Emitter } from '../../engine/light/emitters';
import { readGlass } from '../../engine/light/glass';
import { rectNormal } from '../../engine/light/rect-bvh';
import type { Rect, Vec3 } from '../../engine/light/types';
import { luminanceOutside, partTowards, type WindowLight } from '../../engine/light/window-light';
import { relativeIntensity } from '../../engine/photometry/relative-intensity';
import type { BrightFace } from './mirrored-room';
import type { RoomBasis } from './room-study';

const SAME_PLANE_M = 1e-5;

/** A bright face that may be off. */
export interface LitFace extends BrightFace {
  readonly isOn: boolean;
}

/** Which black rectangle is, or is a piece of, a lamp face or a window's glass. */
export function brightFaces(
  fine: readonly Rect[],
  { emitters, windows }: Pick<RoomBasis['transport'], 'emitters' | 'windows'>,
  levels: readonly number[],
): ReadonlyMap<number, LitFace> {
  const isOn = (group: number) => levels[group]! > 0;
  const faces = [
    ...emitters.map((lamp) => ({
      rect: lamp.rect,
      face: {
        ...faceParts(lamp),
        isOn: isOn(lamp.group),
        addLuminance: (direction: Vec3, weight: number, out: Float64Array) => {
          out[lamp.group]! += weight * lampLuminance(lamp, direction);
        },
      },
    })),
    ...windows.map((window) => ({
      rect: window.rect,
      face: {
        ...faceParts(window),
        isOn: window.groups.some(isOn),
        addLuminance: (direction: Vec3, weight: number, out: Float64Array) =>
          addOutside(window, direction, weight, out),
      },
    })),
  ];
  const found = new Map<number, LitFace>();
  fine.forEach((rect, index) => {
    if (rect.surface >= 0) return;
    const face = faces.find((candidate) => isPieceOf(rect, candidate.rect));
    if (face) found.set(index, face.face);
  });
  return found;
}

const faceParts = ({ area, normal, samples }: Emitter | WindowLight) => ({ area_m2: area, normal, samples });

function isPieceOf(piece: Rect, whole: Rect): boolean {
  const a = rectNormal(piece);
  const b = rectNormal(whole);
  if (a.axis !== b.axis || a.sign !== b.sign) return false;
  return [0, 1, 2].every((k) => {
    const middle = piece.origin[k]! + (piece.u[k]! + piece.v[k]!) / 2;
    const far = whole.origin[k]! + whole.u[k]! + whole.v[k]!;
    return (
      middle >= Math.min(whole.origin[k]!, far) - SAME_PLANE_M &&
      middle <= Math.max(whole.origin[k]!, far) + SAME_PLANE_M
    );
  });
}

/** Luminance through the glass along a ray that leaves the room, cd/m2 times `weight`, to the group of what it meets outside. */
function addOutside(window: WindowLight, [dx, dy, dz]: Vec3, weight: number, out: Float64Array): void {
  const { normal, glass, groups } = window;
  const cosine = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
  if (!(cosine > 0)) return;
  const part = partTowards(window, dx, dy, dz);
  out[groups[part as 0 | 1 | 2]]! += weight * luminanceOutside(window, part, dx, dy, dz) * readGlass(glass, cosine);
}

/** Luminance of a lamp face against a ray that meets it, cd/m2. */
function lampLuminance({ rect, normal, exitance, beam }: Emitter, [dx, dy, dz]: Vec3): number {
  const cosine = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
  if (!(cosine > 0)) return 0;
  if (!beam) return exitance / Math.PI;
  const along = ([x, y, z]: Vec3) => -(dx * x + dy * y + dz * z) / Math.hypot(x, y, z);
  return (exitance * relativeIntensity(beam, along(rect.u), along(rect.v), cosine)) / cosine;
}
