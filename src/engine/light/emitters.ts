import { mulberry32 } from '../random';
import { glassTable } from './glass';
import { groundFromSkyLx, type OutsideLuminance, windowExitance, zenithFromSkyLx } from './overcast-sky';
import { rectNormal } from './rect-bvh';
import type { LampFace, Rect, WindowAperture } from './types';

/** A lamp face or window ready to light points. Sample points lie a little in front of the face. */
export interface Emitter {
  readonly group: number;
  readonly rect: Rect;
  readonly corners: Float64Array;
  readonly normal: Float64Array;
  /** lm/m2 at level 1 that leave the face into the room. */
  readonly exitance: number;
  readonly area: number;
  /** Null for a lamp: the same luminance to all sides. */
  readonly outside: OutsideLuminance | null;
  /** Corners, centre and more: when all are seen, or none, the whole face is taken as seen, or not. */
  readonly probes: Float64Array;
  /** One jittered point in each cell of an across x up grid, across fastest. */
  readonly cells: Float64Array;
  readonly across: number;
  readonly up: number;
  /** `perCell` jittered points in each cell, for cells on the edge of a shadow. */
  readonly finer: Float64Array;
  readonly perCell: number;
}

/** Cells of a face, and extra rays in a cell where visibility changes: a window is large and seldom seen whole. */
const LAMP_CELLS = 16;
const LAMP_FINER = 8;
const WINDOW_CELL_M2 = 0.04;
const WINDOW_CELLS = [12, 48] as const;
const WINDOW_FINER = 3;
const FACE_OFFSET_M = 2e-4;
const INSET_M = 2e-3;
const GOLDEN = 0.6180339887498949;

export function lampEmitter(lamp: LampFace): Emitter {
  const area = rectArea(lamp.rect);
  const across = gridAlong(lamp.rect, LAMP_CELLS);
  return faceOf(lamp.rect, lamp.group, lamp.lumens / area, null, across, LAMP_CELLS, LAMP_FINER);
}

export function windowEmitter(window: WindowAperture): Emitter {
  const outside: OutsideLuminance = {
    zenith: zenithFromSkyLx(window.skyLx),
    ground: groundFromSkyLx(window.skyLx, window.groundReflectance),
    glass: glassTable(window.panes),
  };
  const { axis, sign } = rectNormal(window.rect);
  const exitance = windowExitance(outside, axis === 2 ? sign : 0);
  const [least, most] = WINDOW_CELLS;
  const total = Math.min(most, Math.max(least, Math.round(rectArea(window.rect) / WINDOW_CELL_M2)));
  const across = gridAlong(window.rect, total);
  return faceOf(window.rect, window.group, exitance, outside, across, total, WINDOW_FINER);
}

const rectArea = (rect: Rect): number => Math.hypot(...rect.u) * Math.hypot(...rect.v);

/** Cells along u so that about `total` cells are near square. */
function gridAlong(rect: Rect, total: number): number {
  const aspect = Math.hypot(...rect.u) / Math.hypot(...rect.v);
  return Math.min(total, Math.max(1, Math.round(Math.sqrt(total * aspect))));
}

function faceOf(
  rect: Rect,
  group: number,
  exitance: number,
  outside: OutsideLuminance | null,
  across: number,
  total: number,
  perCell: number,
): Emitter {
  const up = Math.max(1, Math.round(total / across));
  const { axis, sign } = rectNormal(rect);
  const normal = new Float64Array(3);
  normal[axis] = sign;
  const put = (to: Float64Array, index: number, fu: number, fv: number, offset: number): void => {
    for (let k = 0; k < 3; k++) {
      to[3 * index + k] = rect.origin[k]! + rect.u[k]! * fu + rect.v[k]! * fv + normal[k]! * offset;
    }
  };
  const corners = new Float64Array(12);
  [0, 1, 1, 0].forEach((fu, i) => {
    put(corners, i, fu, i >> 1, 0);
  });
  const random = mulberry32(total);
  // 5 for 8 points, 2 for 3: without a common divisor.
  const stride = Math.round(perCell * GOLDEN);
  const cells = new Float64Array(3 * across * up);
  const finer = new Float64Array(3 * across * up * perCell);
  for (let c = 0; c < across * up; c++) {
    const i = c % across;
    const j = Math.floor(c / across);
    put(cells, c, (i + random()) / across, (j + random()) / up, FACE_OFFSET_M);
    for (let m = 0; m < perCell; m++) {
      // A Latin square: even along u and along v alike.
      const fu = (m + random()) / perCell;
      const fv = (((m * stride) % perCell) + random()) / perCell;
      put(finer, c * perCell + m, (i + fu) / across, (j + fv) / up, FACE_OFFSET_M);
    }
  }
  const spots = probeSpots(rect);
  const probes = new Float64Array(3 * spots.length);
  spots.forEach(([fu, fv], i) => {
    put(probes, i, fu, fv, FACE_OFFSET_M);
  });
  return {
    group,
    rect,
    corners,
    normal,
    exitance,
    area: rectArea(rect),
    outside,
    probes,
    cells,
    across,
    up,
    finer,
    perCell,
  };
}

function probeSpots(rect: Rect): [number, number][] {
  const iu = Math.min(0.05, INSET_M / Math.hypot(...rect.u));
  const iv = Math.min(0.05, INSET_M / Math.hypot(...rect.v));
  const spots: [number, number][] = [
    [iu, iv],
    [1 - iu, 1 - iv],
    [1 - iu, iv],
    [iu, 1 - iv],
    [0.5, 0.5],
  ];
  if (Math.hypot(...rect.u) > 0.8) spots.push([0.25, 0.5], [0.75, 0.5]);
  if (Math.hypot(...rect.v) > 0.8) spots.push([0.5, 0.25], [0.5, 0.75]);
  return spots;
}
