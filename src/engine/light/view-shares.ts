import type { Facing } from '../surface';
import { traceNearest } from './rect-trace';
import { facingOf } from './surface-light';
import type { Transport } from './transport';
import type { LightRoom, Viewpoint } from './types';

/** Width over height of the picture that shares are counted in. */
const ASPECT = 1.6;

export interface ViewShare {
  readonly surface: number;
  readonly facing: Facing;
  /** Of the whole picture, 0-1. */
  readonly share: number;
}

/** How much of the picture from a viewpoint each surface fills, by columns x rows rays; openings and props left out. */
export function viewShares(
  room: Pick<LightRoom, 'fine'>,
  transport: Pick<Transport, 'fineBvh'>,
  viewpoint: Viewpoint,
  columns: number,
  rows: number,
): ViewShare[] {
  const bvh = transport.fineBvh;
  const { eye, target } = viewpoint;
  const forward = unit(target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]);
  // Looking straight up or down, y stands in for up.
  const level = Math.hypot(forward[0], forward[1]) > 1e-6;
  const right = level ? unit(forward[1], -forward[0], 0) : unit(1, 0, 0);
  const up = [
    right[1] * forward[2] - right[2] * forward[1],
    right[2] * forward[0] - right[0] * forward[2],
    right[0] * forward[1] - right[1] * forward[0],
  ] as const;
  const high = Math.tan((viewpoint.fov_deg * Math.PI) / 360);
  const counts = new Map<string, { surface: number; facing: Facing; rays: number }>();
  for (let j = 0; j < rows; j++) {
    const sy = high * (1 - (2 * (j + 0.5)) / rows);
    for (let i = 0; i < columns; i++) {
      const sx = high * ASPECT * ((2 * (i + 0.5)) / columns - 1);
      const dx = forward[0] + right[0] * sx + up[0] * sy;
      const dy = forward[1] + right[1] * sx + up[1] * sy;
      const dz = forward[2] + right[2] * sx + up[2] * sy;
      const slot = traceNearest(bvh, eye[0], eye[1], eye[2], dx, dy, dz, Infinity);
      if (slot < 0) continue;
      const rect = room.fine[bvh.rect[slot]!]!;
      if (rect.surface < 0) continue;
      const facing = facingOf(rect);
      const key = `${rect.surface}:${facing}`;
      const entry = counts.get(key);
      if (entry) entry.rays++;
      else counts.set(key, { surface: rect.surface, facing, rays: 1 });
    }
  }
  return [...counts.values()].map(({ surface, facing, rays }) => ({ surface, facing, share: rays / (columns * rows) }));
}

function unit(x: number, y: number, z: number): [number, number, number] {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
