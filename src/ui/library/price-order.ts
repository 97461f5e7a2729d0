import { isSameKind, type Price } from '../../model/price';
import type { Finish } from '../../model/project';

/** Prices of one currency for one unit, with how many there are. */
interface Kind {
  readonly price: Price;
  count: number;
}

/** The kinds of prices of these finishes, the commonest first; of equally common ones that which comes first. */
function kindsOf(finishes: readonly Finish[]): readonly Kind[] {
  const kinds: Kind[] = [];
  for (const { supply } of finishes) {
    const price = supply?.price;
    if (!price) continue;
    const known = kinds.find((kind) => isSameKind(kind.price, price));
    if (known) known.count++;
    else kinds.push({ price, count: 1 });
  }
  return kinds.sort((a, b) => b.count - a.count);
}

/**
 * By price, which only amounts of one currency for one unit can be: the commonest kind first, then others each by themselves, then bands, then
 * what has neither. Down turns the order within each.
 */
export function sortByPrice(finishes: readonly Finish[], isDown: boolean): readonly Finish[] {
  const kinds = kindsOf(finishes);
  const keyed = finishes.map((finish) => ({ finish, key: keyOf(finish, kinds) }));
  const sign = isDown ? -1 : 1;
  return keyed.sort((a, b) => a.key[0] - b.key[0] || sign * (a.key[1] - b.key[1])).map(({ finish }) => finish);
}

function keyOf({ supply }: Finish, kinds: readonly Kind[]): readonly [group: number, value: number] {
  const price = supply?.price;
  if (price) return [kinds.findIndex((kind) => isSameKind(kind.price, price)), price.amount];
  return supply?.price_band ? [kinds.length, supply.price_band.length] : [kinds.length + 1, 0];
}

/** The kind of prices that comes first, and how many prices of other kinds there are; null where all are alike. */
export function pricesApart(finishes: readonly Finish[]): { readonly first: Price; readonly others: number } | null {
  const [first, ...others] = kindsOf(finishes);
  if (!first || others.length === 0) return null;
  return { first: first.price, others: others.reduce((sum, { count }) => sum + count, 0) };
}
