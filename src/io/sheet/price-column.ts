import { type DecimalMark, priceInCell } from './price-cell';
import { priceHeading } from './price-heading';
import { type PriceSaid, plainPrice, readPriceWords } from './price-words';
import { bandInCell } from './row-supply';

/** What is known of a column of prices before its rows are read. */
export interface PriceColumn {
  /** What its heading says. */
  readonly said: PriceSaid;
  readonly isPurchase: boolean;
  /** The decimal mark that its cells agree on; null where none of them has one or they differ. */
  readonly mark: '.' | ',' | null;
}

/** Cells that are looked at. */
const LOOKED_AT = 500;

const OPEN_STYLE = { mark: null, hasCurrency: true } as const;

export function priceColumn(heading: string, cells: readonly string[]): PriceColumn {
  const named = priceHeading(heading);
  const { said } = named ?? readPriceWords(plainPrice(heading));
  const marks = new Set<DecimalMark>();
  for (const cell of cells.slice(0, LOOKED_AT)) {
    const read = priceInCell(cell, OPEN_STYLE);
    if (read?.is === 'price' && (read.mark === '.' || read.mark === ',')) marks.add(read.mark);
  }
  const [mark = null] = marks.size === 1 ? [...marks] : [];
  return { said, isPurchase: named?.isPurchase ?? false, mark: mark as PriceColumn['mark'] };
}

/**
 * Whether a column called price holds bands or one called band holds prices: by its cells. Numbers are bands only if all of them are 1, 2 or
 * 3 and no currency or unit is said; under a name of bands numbers are none, unless a currency or decimals say so.
 */
export function fieldOfPrices(named: 'price' | 'price_band', heading: string, cells: readonly string[]) {
  const filled = cells.slice(0, LOOKED_AT).filter((cell) => cell.trim() !== '');
  const read = filled.map((cell) => priceInCell(cell, OPEN_STYLE));
  if (named === 'price_band') {
    const isPrice = read.some((one) => one?.is === 'price' && (one.said.currency || one.mark !== null));
    return isPrice && filled.every((cell, i) => read[i] || bandInCell(cell)) ? 'price' : 'price_band';
  }
  const { said } = priceColumn(heading, []);
  if (filled.length === 0 || said.currency || said.per) return 'price';
  return filled.every((cell) => bandInCell(cell) !== null) ? 'price_band' : 'price';
}
