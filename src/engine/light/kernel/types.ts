import type { RectBvh } from '../rect-bvh';
import type { SparseRows } from '../types';

/** B = rho (D + F B) for every band on its own. */
export interface Relaxation {
  /** F: what each patch receives from the others. */
  readonly rows: SparseRows;
  /** Surface of each patch; below 0 it stays as it is. */
  readonly surface: Int32Array;
  readonly bands: number;
  /** rho per surface and band. */
  readonly reflectance: Float32Array;
  /** D per patch, the same in every band, or per patch and band. */
  readonly direct: Float32Array;
  /** Per band, above 0: changes are told as a share of it. */
  readonly scale: Float64Array;
  /** Over-relaxation, below 2. */
  readonly relaxation: number;
  /** Share of the scale that sweeps to come may still add. */
  readonly tolerance: number;
}

/** Neighbouring samples seen in one component's colours. */
export interface BandSum {
  readonly first: number;
  readonly count: number;
  /** Per light group 24 x 3 numbers, null where it is off. */
  readonly colors: readonly (Float32Array | null)[];
}

/** Rays that start at one point, for a point of any place and normal. */
export interface RayFan {
  readonly bvh: RectBvh;
  readonly count: number;
  /**
   * Unit directions in a frame of two tangents and the normal, in groups of four: four p, four q, four r. Four of a group best lie close
   * to each other. The last group is filled up with any direction.
   */
  readonly groups: Float64Array;
  /** What each ray met: slot, -1 for nothing, and its distance, m. As long as there are directions. */
  readonly hits: Float64Array;
  readonly distances: Float64Array;
}

/** Points shadow rays go to. */
export interface Targets {
  readonly count: number;
  /** In groups of four: four x, four y, four z, m. The last group is filled up with any points. */
  readonly groups: Float64Array;
  /** Of each whether anything stands before it, 0 for nothing. */
  readonly blocked: Int32Array;
}

/** The point rays start at, m, two unit tangents and the unit normal there. */
export type RayFrame = readonly [
  x: number,
  y: number,
  z: number,
  tx: number,
  ty: number,
  tz: number,
  sx: number,
  sy: number,
  sz: number,
  nx: number,
  ny: number,
  nz: number,
];

/** The inner loops of light. Whichever kernel does them, the numbers agree to 1e-5 of what is usual in a band. */
export interface LightKernel {
  readonly name: KernelName;
  /** Sweeps until done; `b` is patches x bands, changed in place. Gives the number of sweeps. */
  relax(task: Relaxation, b: Float64Array): number;
  /** Rows x bands: every row . B, where B holds `bands` values a patch. */
  gatherRows(rows: SparseRows, radiosity: Float32Array, bands: number, out: Float32Array): void;
  /**
   * Colours of all samples of all sums, one sum after another, three numbers each: over the groups and the 24 bands of
   * `light` (samples x 24 per group, null where there is none).
   */
  sumBands(light: readonly (Float32Array | null)[], sums: readonly BandSum[], out: Float32Array): void;
  /**
   * The nearest rectangle each ray meets, into `hits` and `distances`; of several at the same place the lowest slot. Both kernels give the
   * same bits.
   */
  traceFan(fan: RayFan, frame: RayFrame): void;
  /** Whether anything stands between a point and each of the first `count` targets, into `blocked`. Both kernels give the same. */
  shadeFan(bvh: RectBvh, targets: Targets, count: number, x: number, y: number, z: number): void;
}

export type KernelName = 'wasm' | 'typescript';

/** Beyond any room; what does not settle in so many sweeps is taken as it is. */
export const MAX_SWEEPS = 2000;
