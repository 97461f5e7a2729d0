import type { Facing, SurfaceId } from '../../engine/surface';

/** What the samples stand before. */
export type Backing = 'gray' | 'white';

/** How the samples are placed: as they will be in the room, or all in one plane, to show why that misleads. */
export type Arrangement = 'as-in-room' | 'all-flat' | 'all-upright';

/** How one wants to see the sample stand. */
export interface StandChoice {
  readonly backing: Backing;
  readonly arrangement: Arrangement;
}

/** The two ways a sample is placed. */
export type Position = Exclude<Facing, 'down'>;

/** A sample of the stand: which surface it stands for, as it will be in the room, and its real size. */
export interface StandSample {
  readonly surface: SurfaceId;
  /** As it will be in the room. */
  readonly position: Position;
  /** Width, height (depth where it lies) and thickness, m. */
  readonly size_m: readonly [width: number, height: number, thickness: number];
  /** Grain and boards run along the height rather than the width. */
  readonly grainUp: boolean;
  /** Width of stiles and rails of a five-piece door sample, m; null for flat samples. */
  readonly frame_m: number | null;
}

/** A sample at its place: corner of its back, nearest to the front left below, m. */
export interface PlacedSample extends StandSample {
  readonly placed: Position;
  readonly at: readonly [x: number, y: number, z: number];
}
