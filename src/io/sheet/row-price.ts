import { PRICE_UNITS, type Price } from '../../model/price';
import type { Supply } from '../../model/project';
import { isBlank } from './cell-number';
import { type Columns, cellOf, headingOf } from './columns';
import { type PriceCell, priceInCell } from './price-cell';
import { type PriceSaid, plainPrice, readPriceWords } from './price-words';
import type { RowReading } from './row-reading';
import { bandInCell, leftOut } from './row-supply';
import type { SheetRow } from './types';

/** Longer cells are neither units nor bands. */
const MOST_LETTERS = 60;
const MOST_AMOUNT = 1_000_000;

const REMEDY = 'Write one amount with its currency and what it is for, like "34.50 GBP/m2", or leave it empty.';
const BAND_REMEDY = 'Write a band: $, $$ or $$$, 1 to 3, low, mid or high.';

/** Price and price band of a row. A band that stands under prices is one all the same, and the other way round. */
export function priceOf({ columns, row, notices }: RowReading): Pick<Supply, 'price' | 'price_band'> {
  const cell = cellOf(columns, row, 'price');
  const read = priceCell(columns, cell);
  // Where a column holds prices, a number is none of the bands.
  const stray = read === null && !/\d/.test(cell) ? bandInCell(cell) : null;
  const price = read?.is === 'price' ? priceIn(columns, row, read) : null;
  if (!isBlank(cell) && !stray && (read === null || (read.is === 'price' && !price))) {
    notices.push(leftOut(headingOf(columns, 'price'), cell, REMEDY, row.line));
  }
  const bandCell = cellOf(columns, row, 'price_band');
  const band = isBlank(bandCell) || bandCell.length > MOST_LETTERS ? null : bandInCell(bandCell);
  const strayRead = band || isBlank(bandCell) ? null : priceCell(columns, bandCell);
  const strayPrice =
    !price && strayRead?.is === 'price' && strayRead.said.currency ? priceIn(columns, row, strayRead) : null;
  if (!isBlank(bandCell) && !band && !strayPrice && strayRead?.is !== 'none') {
    notices.push(leftOut(headingOf(columns, 'price_band'), bandCell, BAND_REMEDY, row.line));
  }
  const found = price ?? strayPrice;
  const group = band ?? stray;
  return { ...(found && { price: found }), ...(group && { price_band: group }) };
}

function priceCell({ price, isOurs, at }: Columns, cell: string): PriceCell | null {
  if (isOurs && /^[\d.]+(?:e[+-]?\d+)?$/.test(cell)) {
    return { is: 'price', amount: Number(cell), said: {}, mark: null };
  }
  const hasCurrency = price.said.currency !== undefined || at.has('price_currency');
  return priceInCell(cell, { mark: price.mark, hasCurrency });
}

/** The amount with what the cell says of it, else other columns, else the heading; null where it is out of bounds. */
function priceIn(columns: Columns, row: SheetRow, { amount, said }: PriceCell & { is: 'price' }): Price | null {
  if (!(amount >= 0 && amount <= MOST_AMOUNT)) return null;
  const currency = said.currency ?? currencyOf(columns, row) ?? columns.price.said.currency;
  const per = said.per ?? perOf(columns, row) ?? columns.price.said.per;
  return { amount, ...(currency && { currency }), ...(per && { per }) };
}

function currencyOf(columns: Columns, row: SheetRow): string | undefined {
  const cell = cellOf(columns, row, 'price_currency').trim();
  return /^[A-Z]{3}$/.test(cell) ? cell : saidIn(cell).currency;
}

function perOf(columns: Columns, row: SheetRow): Price['per'] {
  const cell = cellOf(columns, row, 'price_per').trim();
  return PRICE_UNITS.find((unit) => unit === cell) ?? saidIn(`/ ${cell}`).per;
}

const saidIn = (cell: string): PriceSaid =>
  isBlank(cell) || cell.length > MOST_LETTERS ? {} : readPriceWords(plainPrice(cell)).said;
