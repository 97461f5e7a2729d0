import type { Lab, Xyz } from '../color/types';

/** A place in a picture, in its pixels: x to the right, y down, 0, 0 the outer corner of the first one. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

/** Four corners in order round an area of a picture. */
export type PictureQuad = readonly [PicturePoint, PicturePoint, PicturePoint, PicturePoint];

/**
 * A picture in linear light, each cell the mean of `step` by `step` pixels, rows from the top.
 * `xyz`: three numbers per cell, Y 1 for the white of the picture's own encoding. `high`, `low`: the share of a cell's pixels, 0-255,
 * whose code has a channel at the upper or at the lower end.
 */
export interface LinearPicture {
  readonly width: number;
  readonly height: number;
  readonly step: number;
  readonly xyz: Float32Array;
  readonly high: Uint8Array;
  readonly low: Uint8Array;
}

/**
 * What lies in one area of a picture: a rectangle of blocks that holds it, of which those with `inside` belong to it.
 * Block i lies at `left + (i % width + 0.5) * step`, in pixels of the picture, and so on down from `top`.
 */
export interface Patch {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly step: number;
  readonly xyz: Float32Array;
  readonly inside: Uint8Array;
  /** Number of blocks inside. */
  readonly count: number;
  /** Area in pixels of the picture. */
  readonly pixels: number;
  /** Shares 0-1 of the pixels inside that are at the upper and at the lower end of the code. */
  readonly high: number;
  readonly low: number;
}

/** The light on a sample as the card in the picture tells it. */
export interface CardLight {
  /** Tristimulus values, on the picture's scale, of the perfect diffuser beside the card. */
  readonly white: Xyz<'setting-2'>;
  /** How the light changes per pixel of the picture, as natural logarithms of X, Y, Z along x and y; 0 where it was not found to. */
  readonly slopes: readonly (readonly [alongX: number, alongY: number])[];
  /** Where `white` holds. */
  readonly center: PicturePoint;
}

/** One color of a sample. */
export interface SampleColor {
  readonly lab: Lab<'D65-2'>;
  /** Area share, 0-1; those of a sample sum to 1. */
  readonly share: number;
  /** Root mean square CIEDE2000 difference of the pixels of this color from it: texture and noise together. */
  readonly spreadDe00: number;
}
