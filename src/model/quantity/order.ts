import { type Measure, type SizeOfOne, toMeasure } from './measures';
import { roundUp, withWaste } from './round-up';
import type { Pack } from './supply-pack';

/** What is needed, before it is bought. */
export interface Need {
  readonly net: number;
  readonly measure: Measure;
  readonly waste_percent: number;
  /** Packs kept for repairs. */
  readonly spare_packs: number;
}

/** What is bought. */
export interface Order {
  /** With waste, in the measure of the pack, or where that is not known in that of the need; counted things are whole. */
  readonly quantity: number;
  readonly measure: Measure;
  readonly pack: Pack | null;
  /** Whole packs with spares; null where no pack is known. */
  readonly packs: number | null;
  /** How many of the packs are spares. */
  readonly spares: number;
  /** What is in the packs, or where no pack is known the quantity itself. */
  readonly bought: number;
}

/**
 * Packs that hold a quantity in the same measure, waste included, with spares as whole packs: rounded up at the very end. Nothing needed
 * is no pack and no spare. Null where the size of a pack is not known or no size.
 */
export function packsFor(quantity: number, pack: number | undefined, spare_packs = 0): number | null {
  if (pack === undefined || !(pack > 0 && Number.isFinite(pack)) || !Number.isFinite(quantity)) return null;
  const needed = roundUp(quantity / pack);
  return needed === 0 ? 0 : needed + spare_packs;
}

/** The order that covers a need from packs as they are sold; packs whose measure the need cannot be told in are left out. */
export function orderOf(need: Need, pack: Pack | null, one: SizeOfOne = {}): Order {
  const needed = whole(withWaste(need.net, need.waste_percent), need.measure);
  const inPack = pack ? toMeasure(needed, need.measure, pack.measure, one) : null;
  const packs = pack && inPack !== null ? packsFor(inPack, pack.quantity, need.spare_packs) : null;
  if (!pack || inPack === null || packs === null) {
    return { quantity: needed, measure: need.measure, pack: null, packs: null, spares: 0, bought: needed };
  }
  return {
    quantity: whole(inPack, pack.measure),
    measure: pack.measure,
    pack,
    packs,
    spares: packs === 0 ? 0 : need.spare_packs,
    bought: packs * pack.quantity,
  };
}

const COUNTED: readonly Measure[] = ['piece', 'panel', 'slab', 'sheet'];

const whole = (quantity: number, measure: Measure): number =>
  COUNTED.includes(measure) ? roundUp(quantity) : quantity;
