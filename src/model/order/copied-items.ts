import type { Option } from '../project';
import type { ItemRecord } from './records';

/** An option as another begins from it: quantities and notes go along; what was approved, ordered and delivered was said of the first alone. */
export function copiedItems({ items, ...option }: Option): Option {
  const kept = (items ?? []).flatMap((record): readonly ItemRecord[] => {
    const { approved: _, ordered_on: _ordered, delivery: _came, lot: _lot, ...rest } = record;
    return Object.keys(rest).length > 2 ? [rest] : [];
  });
  return kept.length > 0 ? { ...option, items: kept } : option;
}
