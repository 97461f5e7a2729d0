import { mulberry32 } from '../random';
import type { Targets } from './kernel/types';
import { rectNormal } from './rect-bvh';
import { shadowTargets } from './shadow-targets';
import { reverseBits, sobolSecond, unitInterval } from './sobol';
import type { Rect } from './types';

/** Points on a face that light or shadow rays go to. */
export interface FaceSamples {
  readonly corners: Float64Array;
  readonly normal: Float64Array;
  /** Corners, centre and more: when all are seen, or none, the whole face is taken as seen, or not. */
  readonly probes: Float64Array;
  /** Points all over the face, evenly spread as a whole and along either edge; any first 16, 32 ... are so too. */
  readonly samples: Float64Array;
  /** Both once more, for shadow rays. */
  readonly probeTargets: Targets;
  readonly sampleTargets: Targets;
}

const FACE_OFFSET_M = 2e-4;
const INSET_M = 2e-3;

/** Corners and normal of a rectangle, probes and `count` samples a little in front of it. */
export function faceSamples(rect: Rect, count: number): FaceSamples {
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
    corners,
    normal,
    probes,
    samples,
    probeTargets: shadowTargets(probes),
    sampleTargets: shadowTargets(samples),
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
