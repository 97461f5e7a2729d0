import type { Facing } from '../surface';
import { directionThrough, lensTowards } from './lens';
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
  const { eye } = viewpoint;
  const lens = lensTowards(eye, viewpoint.target);
  const high = Math.tan((viewpoint.fov_deg * Math.PI) / 360);
  const counts = new Map<string, { surface: number; facing: Facing; rays: number }>();
  for (let j = 0; j < rows; j++) {
    const sy = high * (1 - (2 * (j + 0.5)) / rows);
    for (let i = 0; i < columns; i++) {
      const sx = high * ASPECT * ((2 * (i + 0.5)) / columns - 1);
      const [dx, dy, dz] = directionThrough(lens, sx, sy);
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
