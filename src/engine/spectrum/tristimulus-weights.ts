import { GRID_COUNT } from './grid';
import { lightById } from './lights';
import { observer2 } from './observers';

/** Weights that turn a reflectance into X, Y, Z with 1 for the perfect diffuser. */
export interface TristimulusWeights {
  /** Three per grid sample: x, y, z. */
  readonly rows: Float64Array;
  /** X, Y, Z of the perfect diffuser. */
  readonly white: Float64Array;
}

/** Weights for D65 and the 2 degree observer: what a colour is given under. */
export const WEIGHTS_D65_2: TristimulusWeights = weightsD65();

function weightsD65(): TristimulusWeights {
  const light = lightById('D65')!;
  const rows = new Float64Array(3 * GRID_COUNT);
  const white = new Float64Array(3);
  let perfect = 0;
  for (let i = 0; i < GRID_COUNT; i++) perfect += light[i]! * observer2.y[i]!;
  for (let i = 0; i < GRID_COUNT; i++) {
    [observer2.x, observer2.y, observer2.z].forEach((matching, r) => {
      rows[3 * i + r] = (light[i]! * matching[i]!) / perfect;
      white[r] = white[r]! + rows[3 * i + r]!;
    });
  }
  return { rows, white };
}
