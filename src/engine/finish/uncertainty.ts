import type { Provenance } from './types';

/**
 * How far a colour may be off, one standard deviation in CIEDE2000 units, by how it came to be known.
 * Half of the plus-minus figures in use for each way of measuring; common practice, no source.
 */
export const UNCERTAINTY_DE00: { readonly [P in Provenance]: number } = {
  measured: 0.25,
  declared: 1,
  'photo-with-card': 2.5,
  photo: 5,
  'by-eye': 5,
  screen: 5,
};

/** The less trustworthy of two ways to know a colour. */
export const lessCertain = (a: Provenance, b: Provenance): Provenance =>
  UNCERTAINTY_DE00[b] > UNCERTAINTY_DE00[a] ? b : a;
