import { CIE_1931_X, CIE_1931_Y, CIE_1931_Z, CIE_1964_X, CIE_1964_Y, CIE_1964_Z } from './observers.data';

/** A standard observer: colour-matching functions on the project's grid (380-780 nm, 5 nm, 81 samples). */
export interface Observer {
  readonly name: string;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** CIE 1931 standard colorimetric observer, 2 degrees. Its y is V, the luminous efficiency. */
export const observer2: Observer = {
  name: 'CIE 1931 2 degree',
  x: Float64Array.from(CIE_1931_X),
  y: Float64Array.from(CIE_1931_Y),
  z: Float64Array.from(CIE_1931_Z),
};

/** CIE 1964 standard colorimetric observer, 10 degrees: what a light reflectance value (LRV) is read with. */
export const observer10: Observer = {
  name: 'CIE 1964 10 degree',
  x: Float64Array.from(CIE_1964_X),
  y: Float64Array.from(CIE_1964_Y),
  z: Float64Array.from(CIE_1964_Z),
};
