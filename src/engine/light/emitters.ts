import { type ReadyBeam, readyBeam } from '../photometry/relative-intensity';
import { mulberry32 } from '../random';
import { glassTable } from './glass';
import { groundFromSkyLx, type OutsideLuminance, windowExitance, zenithFromSkyLx } from './overcast-sky';
import { rectNormal } from './rect-bvh';
import { reverseBits, sobolSecond, unitInterval } from './sobol';
import type { LampFace, LightRoom, Rect, WindowAperture } from './types';

/** A lamp face or window ready to light points. Sample points lie a little in front of the face. */
export interface Emitter {
  readonly group: number;
  readonly rect: Rect;
  readonly corners: Float64Array;
  readonly normal: Float64Array;
  /** lm/m2 at level 1 that leave the face into the room. */
  readonly exitance: number;
  readonly area: number;
  /** Null for a lamp. */
  readonly outside: OutsideLuminance | null;
  /** How a lamp spreads what leaves its face; null for the same luminance to all sides, and for a window. */
  readonly beam: ReadyBeam | null;
  /** Corners, centre and more: when all are seen, or none, the whole face is taken as seen, or not. */
  readonly probes: Float64Array;
  /** Points all over the face, evenly spread as a whole and along either edge; any first 16, 32 ... are so too. */
  readonly samples: Float64Array;
}

/** Shadow rays where a face is partly hidden. Windows are hidden in part nearly everywhere, by their own frames. */
const LAMP_SAMPLES = 64;
const WINDOW_SAMPLES = 64;
const LARGE_WINDOW_M2 = 0.8;
const FACE_OFFSET_M = 2e-4;
const INSET_M = 2e-3;

/** Lamps first, then windows, each in the room's order. */
export function prepareEmitters(room: Pick<LightRoom, 'lamps' | 'windows'>): Emitter[] {
  return [...room.lamps.map(lampEmitter), ...room.windows.map(windowEmitter)];
}

export function lampEmitter(lamp: LampFace): Emitter {
  const beam = readyBeam(lamp.beam);
  const lumens = lamp.lumens * (beam ? beam.frontShare : 1);
  return { ...faceOf(lamp.rect, lamp.group, lumens / rectArea(lamp.rect), null, LAMP_SAMPLES), beam };
}

export function windowEmitter(window: WindowAperture): Emitter {
  const outside: OutsideLuminance = {
    zenith: zenithFromSkyLx(window.skyLx),
    ground: groundFromSkyLx(window.skyLx, window.groundReflectance),
    glass: glassTable(window.panes),
  };
  const { axis, sign } = rectNormal(window.rect);
  const exitance = windowExitance(outside, axis === 2 ? sign : 0);
  const samples = rectArea(window.rect) > LARGE_WINDOW_M2 ? 2 * WINDOW_SAMPLES : WINDOW_SAMPLES;
  return faceOf(window.rect, window.group, exitance, outside, samples);
}

const rectArea = (rect: Rect): number => Math.hypot(...rect.u) * Math.hypot(...rect.v);

function faceOf(rect: Rect, group: number, exitance: number, outside: OutsideLuminance | null, count: number): Emitter {
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
  const random = mulberry32(count);
  const flipU = Math.floor(random() * 2 ** 32);
  const flipV = Math.floor(random() * 2 ** 32);
  const samples = new Float64Array(3 * count);
  for (let i = 0; i < count; i++) {
    put(samples, i, unitInterval(reverseBits(i) ^ flipU), unitInterval(sobolSecond(i) ^ flipV), FACE_OFFSET_M);
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
    beam: null,
    probes,
    samples,
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
