import { GRID_COUNT } from './grid';
import { lightById } from './lights';
import { type Observer, observer2 } from './observers';
import type { EmissionSpd } from './types';

/** Weights that turn a reflectance into X, Y, Z with 1 for the perfect diffuser. */
export interface TristimulusWeights {
  /** Three per grid sample: x, y, z. */
  readonly rows: Float64Array;
  /** X, Y, Z of the perfect diffuser. */
  readonly white: Float64Array;
}

const known = new WeakMap<EmissionSpd, Map<Observer, TristimulusWeights>>();

/**
 * Weights for a light and an observer (CIE 15:2018, 7.1; 5 nm sums), worked out once per light and observer: the arrays are
 * shared, do not write to them. A light without visible power has no white; it is a bug in the caller and throws.
 */
export function tristimulusWeights(light: EmissionSpd, observer: Observer): TristimulusWeights {
  const ofLight = known.get(light) ?? new Map<Observer, TristimulusWeights>();
  known.set(light, ofLight);
  const before = ofLight.get(observer);
  if (before) return before;
  const made = makeWeights(light, observer);
  ofLight.set(observer, made);
  return made;
}

/** Weights for D65 and the 2 degree observer: what the product's colours are stated under. */
export const WEIGHTS_D65_2: TristimulusWeights = tristimulusWeights(lightById('D65')!, observer2);

function makeWeights(light: EmissionSpd, observer: Observer): TristimulusWeights {
  const rows = new Float64Array(3 * GRID_COUNT);
  const white = new Float64Array(3);
  let perfect = 0;
  for (let i = 0; i < GRID_COUNT; i++) perfect += light[i]! * observer.y[i]!;
  if (!(perfect > 0)) throw new RangeError('a light without visible power has no white');
  for (let i = 0; i < GRID_COUNT; i++) {
    [observer.x, observer.y, observer.z].forEach((matching, r) => {
      rows[3 * i + r] = (light[i]! * matching[i]!) / perfect;
      white[r] = white[r]! + rows[3 * i + r]!;
    });
  }
  return { rows, white };
}
