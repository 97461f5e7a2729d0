import type { Problem } from '../../engine/result';
import { isBlank } from './cell-number';
import type { Columns } from './columns';
import { priceInCell } from './price-cell';
import { IF_RIGHT, quoted, sheetProblem } from './sheet-problem';
import type { SheetRow } from './types';

/** Cells that are looked at. */
const LOOKED_AT = 500;

/** What was taken for granted of the prices of a file, and what it says of them that is not kept. */
export function priceNotices({ price, at, headings, isOurs }: Columns, rows: readonly SheetRow[], file: string) {
  const column = at.get('price');
  if (column === undefined || isOurs) return [];
  const heading = headings[column]?.heading ?? '';
  const hasCurrency = price.said.currency !== undefined || at.has('price_currency');
  const cells = rows
    .slice(0, LOOKED_AT)
    .map(({ cells: all }) => all[column] ?? '')
    .filter((cell) => !isBlank(cell));
  const read = cells.map((cell) => priceInCell(cell, { mark: price.mark, hasCurrency }));
  const found = (isSo: (one: NonNullable<(typeof read)[number]> & { is: 'price' }) => unknown): string | undefined =>
    cells[read.findIndex((one) => one?.is === 'price' && isSo(one))];
  const notices: Problem[] = [];
  const tell = (code: string, words: string, remedy: string) => notices.push(sheetProblem(code, words, remedy, file));

  const dollar = price.said.isBareDollar
    ? heading
    : at.has('price_currency')
      ? null
      : found(({ said }) => said.isBareDollar);
  if (dollar)
    tell(
      'dollar-as-usd',
      `Prices in "$" were read as US dollars (USD).`,
      'Write CAD, AUD or another code if they are not.',
    );
  const open = found(({ mark }) => mark === 'either');
  if (open) {
    tell('thousands', `What could be either was read as thousands: ${quoted(open)} is ${thousand(open)}.`, IF_RIGHT);
  }
  if (!hasCurrency && found(({ said }) => said.currency === undefined)) {
    tell('no-currency', 'Some prices say no currency.', 'Write it into the heading, like "Price (USD)".');
  }
  if (price.said.isOnTax || found(({ said }) => said.isOnTax)) {
    const where = price.said.isOnTax ? quoted(heading) : 'The file';
    tell(
      'tax-not-kept',
      `${where} says whether tax is in the prices; that is not kept with them.`,
      'Put it into the note where it matters.',
    );
  }
  if (price.isPurchase) {
    tell(
      'purchase-price',
      `${quoted(heading)} names what you pay yourself; it will be shown wherever prices are, to customers as well.`,
      'Choose another column, or leave it out under Columns.',
    );
  }
  return notices;
}

const thousand = (cell: string): string => {
  const read = priceInCell(cell, { mark: null, hasCurrency: true });
  return read?.is === 'price' ? String(read.amount) : cell;
};
