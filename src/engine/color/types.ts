/** White point and observer, both in the name. 'setting-2' is the adopted white of a setting, 2 degree observer ('setting-10': 10). */
export type White = 'D65-2' | 'D65-10' | 'D50-2' | 'D50-10' | 'C-2' | 'C-10' | 'A-2' | 'setting-2' | 'setting-10';

declare const white: unique symbol;

/** CIE tristimulus values, perfect diffuser Y = 100 unless a function says otherwise. */
export interface Xyz<W extends White> {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly [white]?: W;
}

/** CIELAB relative to white W. */
export interface Lab<W extends White> {
  readonly l: number;
  readonly a: number;
  readonly b: number;
  readonly [white]?: W;
}

/** CIE 1931 (or 1964) chromaticity. */
export interface Chromaticity {
  readonly x: number;
  readonly y: number;
}

/** Linear-light sRGB (IEC 61966-2-1 primaries, D65); 1 = white; may leave 0-1. */
export interface LinearSrgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

/** 3 x 3 matrix, row major. */
export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];
