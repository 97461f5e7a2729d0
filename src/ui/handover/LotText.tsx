import type { Lot } from '../../model/order/records';

const LOT = ['batch', 'shade', 'calibre', 'slabs'] as const;

/** Batch, shade, calibre and slab numbers, none of them broken: half a number is read as another one. */
export function LotText({ lot }: { readonly lot: Lot | null }) {
  const numbers = LOT.flatMap((name) => lot?.[name]?.split(/,\s*/) ?? []).filter((one) => one.trim() !== '');
  return numbers.map((one, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two lots may bear the same number
    <span key={i}>
      <span className="unbroken">{one}</span>
      {i < numbers.length - 1 && ', '}
    </span>
  ));
}
