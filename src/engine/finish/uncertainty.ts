import type { FinishComponent, Provenance } from './types';

/**
 * How far a colour may be off by how it came to be known: root mean square of the whole CIEDE2000 difference between what is
 * said and what is. Half of the plus-minus figures in use (0.5, 2, 5, 10), which are read as twice that; common practice,
 * no source.
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

/**
 * Which reading a component of a finish comes from. Components read in the same way share one instrument, photo or eye and
 * err together; grout is a finish of its own and errs by itself.
 */
export const readingOf = (component: Pick<FinishComponent, 'role' | 'provenance'>): string =>
  component.role === 'grout' ? 'grout' : component.provenance;
