import { L_PER_GALLON, M_PER_FOOT } from '../unit-words';

/** What quantities are measured in. Square and running feet, U.S. gallons, pounds avoirdupois. */
export type Measure = 'm2' | 'ft2' | 'L' | 'gal' | 'kg' | 'lb' | 'm' | 'ft' | 'piece' | 'panel' | 'slab' | 'sheet';

/** Exactly (NIST SP 811, appendix B). */
const KG_PER_POUND = 0.45359237;

type Kind = 'area' | 'volume' | 'mass' | 'length' | 'piece' | 'slab' | 'sheet';

/** Each measure in the metric one of its kind. */
const METRIC: { readonly [M in Measure]: readonly [kind: Kind, factor: number] } = {
  m2: ['area', 1],
  ft2: ['area', M_PER_FOOT ** 2],
  L: ['volume', 1],
  gal: ['volume', L_PER_GALLON],
  kg: ['mass', 1],
  lb: ['mass', KG_PER_POUND],
  m: ['length', 1],
  ft: ['length', M_PER_FOOT],
  piece: ['piece', 1],
  panel: ['piece', 1],
  slab: ['slab', 1],
  sheet: ['sheet', 1],
};

/** What one counted thing covers, m2, or how long it is, m: what leads from counts to areas and lengths and back. */
export interface SizeOfOne {
  readonly piece_m2?: number;
  readonly piece_m?: number;
  readonly slab_m2?: number;
  readonly sheet_m2?: number;
}

/**
 * A quantity in another measure; null where the two do not measure the same and no size of one leads from one to the other.
 * Fractions are kept: rounding is for packs.
 */
export function toMeasure(value: number, from: Measure, to: Measure, one: SizeOfOne = {}): number | null {
  if (from === to) return value;
  const [fromKind, fromFactor] = METRIC[from];
  const [toKind, toFactor] = METRIC[to];
  if (fromKind === toKind) return (value * fromFactor) / toFactor;
  const counted = sizeOfOne(fromKind, toKind, one);
  if (counted !== null) return (value * counted) / toFactor;
  const counting = sizeOfOne(toKind, fromKind, one);
  return counting === null ? null : (value * fromFactor) / counting;
}

/** How much of a measured kind one counted thing is; null where that is not known or says nothing. */
function sizeOfOne(counted: Kind, measured: Kind, one: SizeOfOne): number | null {
  if (counted === measured) return null;
  const size =
    measured === 'area' ? areaOfOne(counted, one) : counted === 'piece' && measured === 'length' ? one.piece_m : 0;
  return size !== undefined && size > 0 ? size : null;
}

function areaOfOne(counted: Kind, one: SizeOfOne): number | undefined {
  switch (counted) {
    case 'piece':
      return one.piece_m2;
    case 'slab':
      return one.slab_m2;
    case 'sheet':
      return one.sheet_m2;
    default:
      return undefined;
  }
}
