import type { FineRect, LightRoom, Rect, Vec3 } from '../../src/engine/light/types';

/**
 * A self-made kitchen-like room, 4 x 3 x 2.5 m, with three independent reflectance bands, solved by two independent
 * renderers: Cycles 3.4 (area means, 8192 samples a pixel, standard error about 0.1 %) and Radiance 5.2.
 */
const [CEILING, WALL, BACKSPLASH, BASE, COUNTER, TALL, UPPER, FLOOR, BLACK] = [0, 1, 2, 3, 4, 5, 6, 7, -1] as const;

const REFLECTANCE: readonly (readonly [number, number, number])[] = [
  [0.85, 0.85, 0.83], // ceiling
  [0.75, 0.72, 0.66], // wall
  [0.35, 0.45, 0.6], // backsplash
  [0.3, 0.42, 0.33], // base
  [0.55, 0.53, 0.5], // counter
  [0.3, 0.18, 0.1], // tall
  [0.8, 0.78, 0.72], // upper
  [0.42, 0.25, 0.13], // floor
];

/** Corner, u edge, v edge, surface. */
const QUADS: readonly (readonly [Vec3, Vec3, Vec3, number])[] = [
  [[0, 0.9, 2.5], [4, 0.0, 0.0], [0, -0.9, 0.0], CEILING],
  [[0, 3, 2.5], [4, 0, 0.0], [0, -1.5, 0.0], CEILING],
  [[0, 1.5, 2.5], [1.7, 0.0, 0.0], [0, -0.6, 0.0], CEILING],
  [[2.3, 1.5, 2.5], [1.7, 0.0, 0.0], [0.0, -0.6, 0.0], CEILING],
  [[1.7, 1.5, 2.5], [0.6, 0.0, 0.0], [0.0, -0.6, 0.0], BLACK],
  [[0, 0, 0], [0, 0, 2.5], [4, 0, 0], WALL],
  [[0, 0, 0], [0, 0.9, 0], [0, 0, 2.5], WALL],
  [[0, 2, 0], [0, 0.4, 0], [0, 0, 2.5], WALL],
  [[0, 2.4, 0.9], [0, 0.6, 0.0], [0, 0.0, 1.6], WALL],
  [[0, 0.9, 0], [0, 1.1, 0], [0, 0.0, 1], WALL],
  [[0, 0.9, 2.1], [0, 1.1, 0.0], [0, 0.0, 0.4], WALL],
  [[0, 0.9, 1], [0, 1.1, 0], [0, 0.0, 1.1], BLACK],
  [[4, 0, 2.5], [0, 2.4, 0.0], [0, 0, -2.5], WALL],
  [[4, 2.4, 2.5], [0, 0.6, 0.0], [0, 0.0, -0.3], WALL],
  [[3.4, 3, 0.9], [0.0, 0, 0.55], [-3.4, 0, 0.0], BACKSPLASH],
  [[3.4, 3, 2.15], [0.0, 0, 0.35], [-3.1, 0, 0.0], WALL],
  [[0.3, 3, 1.45], [0.0, 0, 1.05], [-0.3, 0, 0.0], WALL],
  [[4, 3, 2.2], [0, 0, 0.3], [-0.6, 0, 0.0], WALL],
  [[3.4, 2.4, 0], [0.0, 0.0, 0.86], [-3.4, 0.0, 0], BASE],
  [[0, 2.4, 0.86], [3.4, 0.0, 0.0], [0, -0.03, 0.0], COUNTER],
  [[3.4, 2.37, 0.86], [0.0, 0.0, 0.04], [-3.4, 0.0, 0.0], COUNTER],
  [[0, 2.37, 0.9], [3.4, 0.0, 0.0], [0, 0.63, 0.0], COUNTER],
  [[3.4, 2.37, 0.86], [0.0, 0.03, 0.0], [0.0, 0.0, 0.04], COUNTER],
  [[4, 2.4, 0], [0, 0.0, 2.2], [-0.6, 0.0, 0], TALL],
  [[3.4, 2.4, 2.2], [0.6, 0.0, 0.0], [0.0, 0.6, 0.0], TALL],
  [[3.4, 2.4, 1.45], [0.0, 0.6, 0.0], [0.0, 0.0, -0.55], TALL],
  [[3.4, 2.4, 2.15], [0.0, 0.25, 0.0], [0.0, 0.0, -0.7], TALL],
  [[3.4, 2.4, 2.2], [0.0, 0.6, 0.0], [0.0, 0.0, -0.05], TALL],
  [[3.4, 2.65, 1.45], [0.0, 0.0, 0.7], [-3.1, 0.0, 0.0], UPPER],
  [[0.3, 2.65, 2.15], [3.1, 0.0, 0.0], [0.0, 0.35, 0.0], UPPER],
  [[0.3, 2.65, 2.15], [0.0, 0.35, 0.0], [0.0, 0.0, -0.7], UPPER],
  [[0.3, 2.7, 1.45], [3.1, 0.0, 0.0], [0.0, -0.05, 0.0], UPPER],
  [[0.3, 3, 1.45], [3.1, 0, 0.0], [0.0, -0.26, 0.0], UPPER],
  [[0.3, 2.74, 1.45], [3.1, 0.0, 0.0], [0.0, -0.04, 0.0], BLACK],
  [[0, 0, 0], [4, 0, 0], [0, 0.9, 0], FLOOR],
  [[0, 1.5, 0], [4, 0.0, 0], [0, 0.9, 0], FLOOR],
  [[0, 0.9, 0], [1.2, 0.0, 0], [0, 0.6, 0], FLOOR],
  [[2.8, 0.9, 0], [1.2, 0.0, 0], [0.0, 0.6, 0], FLOOR],
  [[1.2, 0.9, 0.9], [0.0, 0.6, 0.0], [0.0, 0.0, -0.9], BASE],
  [[2.8, 0.9, 0], [0.0, 0.6, 0], [0.0, 0.0, 0.9], BASE],
  [[2.8, 0.9, 0], [0.0, 0.0, 0.9], [-1.6, 0.0, 0], BASE],
  [[1.2, 1.5, 0], [0.0, 0.0, 0.9], [1.6, 0.0, 0], BASE],
  [[1.2, 0.9, 0.9], [1.6, 0.0, 0.0], [0.0, 0.6, 0.0], COUNTER],
];

/** Index of the black quads that shine, and their exitance in every band. */
const SHINING: readonly (readonly [number, number])[] = [
  [4, 4000],
  [11, 1500],
  [33, 6000],
];

export interface CheckZone {
  readonly name: string;
  readonly axis: 0 | 1 | 2;
  readonly sign: 1 | -1;
  readonly plane: number;
  /** Range along axis + 1 and along axis + 2 (mod 3). */
  readonly b: readonly [number, number];
  readonly c: readonly [number, number];
  /** Mean irradiance in the three bands by Cycles. */
  readonly cycles: readonly [number, number, number];
}

export const CHECK_ZONES: readonly CheckZone[] = [
  { name: 'counter', axis: 2, sign: 1, plane: 0.9, b: [0.3, 3.1], c: [2.42, 2.62], cycles: [364.63, 361.07, 354.15] },
  { name: 'island', axis: 2, sign: 1, plane: 0.9, b: [1.25, 2.75], c: [0.95, 1.45], cycles: [319.99, 309.14, 292.05] },
  { name: 'floor work', axis: 2, sign: 1, plane: 0, b: [0.5, 3.5], c: [1.7, 2.3], cycles: [171.33, 169.07, 152.52] },
  { name: 'base front', axis: 1, sign: -1, plane: 2.4, b: [0.1, 0.8], c: [0.2, 3.2], cycles: [146.34, 133.89, 115.29] },
  {
    name: 'upper front',
    axis: 1,
    sign: -1,
    plane: 2.65,
    b: [1.5, 2.1],
    c: [0.4, 3.3],
    cycles: [221.57, 209.38, 191.31],
  },
  { name: 'splash', axis: 1, sign: -1, plane: 3, b: [0.95, 1.4], c: [0.2, 3.2], cycles: [314.68, 307.6, 294.54] },
  { name: 'tall front', axis: 1, sign: -1, plane: 2.4, b: [0.2, 2], c: [3.45, 3.95], cycles: [118.25, 104.81, 88.03] },
  { name: 'right wall', axis: 0, sign: -1, plane: 4, b: [0.3, 2.1], c: [0.3, 2.2], cycles: [149.79, 138.23, 122.81] },
  {
    name: 'ceiling left',
    axis: 2,
    sign: -1,
    plane: 2.5,
    b: [0.2, 1.4],
    c: [0.95, 1.45],
    cycles: [255.08, 241.7, 223.91],
  },
];

const area = (rect: Rect): number => Math.hypot(...rect.u) * Math.hypot(...rect.v);

/** The room with one light group; three bands per surface in `reflectance`. */
export function checkRoom(): { readonly room: LightRoom; readonly reflectance: Float32Array } {
  const coarse: Rect[] = QUADS.map(([origin, u, v, surface]) => ({ origin, u, v, surface }));
  const pattern = { s0: 0, t0: 0, su: 1, tu: 0, sv: 0, tv: 1 };
  const fine: FineRect[] = coarse.map((rect) => ({ ...rect, pattern, piece: 0 }));
  const lamps = SHINING.map(([index, exitance]) => {
    const rect = coarse[index]!;
    return { group: 0, rect, lumens: exitance * area(rect) };
  });
  return {
    room: {
      surfaces: ['ceiling', 'wall', 'backsplash', 'base-fronts', 'counter', 'tall-fronts', 'wall-fronts', 'floor'],
      groups: ['all'],
      coarse,
      fine,
      lamps,
      windows: [],
      props: [],
      worktop: fine.flatMap((rect, i) => (rect.surface === COUNTER && rect.u[2] === 0 && rect.v[2] === 0 ? [i] : [])),
    },
    reflectance: Float32Array.from(REFLECTANCE.flat()),
  };
}
