import { lightById } from '../spectrum/lights';
import type { Observer } from '../spectrum/observers';
import { observer2, observer10 } from '../spectrum/observers';
import type { White, Xyz } from './types';
import { whiteOf } from './xyz';

// From the same 5 nm tables as every colour, not the rounded printed values: a perfect reflector gets a* = b* = 0 exactly.

/** White of D65, 2 degree observer: X 95.04, Z 108.88. */
export const D65_2 = tabledWhite<'D65-2'>('D65', observer2);

/** White of D65, 10 degree observer: X 94.81, Z 107.32. */
export const D65_10 = tabledWhite<'D65-10'>('D65', observer10);

/** White of D50, 2 degree observer: X 96.42, Z 82.51. */
export const D50_2 = tabledWhite<'D50-2'>('D50', observer2);

/** White of D50, 10 degree observer: X 96.72, Z 81.43. */
export const D50_10 = tabledWhite<'D50-10'>('D50', observer10);

/** White of illuminant C, 2 degree observer: X 98.07, Z 118.22. The Munsell renotation is defined under it. */
export const C_2 = tabledWhite<'C-2'>('C', observer2);

/** White of illuminant C, 10 degree observer: X 97.28, Z 116.15. */
export const C_10 = tabledWhite<'C-10'>('C', observer10);

/** White of illuminant A, 2 degree observer: X 109.85, Z 35.58. */
export const A_2 = tabledWhite<'A-2'>('A', observer2);

function tabledWhite<W extends White>(id: string, observer: Observer): Xyz<W> {
  return whiteOf<W>(lightById(id)!, observer);
}
