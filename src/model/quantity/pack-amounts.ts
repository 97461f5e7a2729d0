import { wordsPattern } from '../unit-vocabulary';
import type { Measure } from './measures';
import { PACK_UNITS, type UnitOfWords } from './pack-words';

/** A number of a text with what it counts; null where nothing stands with it. */
export interface Amount {
  readonly quantity: number;
  readonly measure: Measure | null;
}

const UNITS = PACK_UNITS.map((unit) => ({ ...unit, pattern: wordsPattern(unit.words) }));

const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
/** The size of a piece says nothing of how many there are: "600 x 600 mm". */
const SIZE = new RegExp(
  String.raw`(?<![\d.,a-z])${NUMBER} ?(?:mm|cm|m|in|")? ?[x\u00d7] ?${NUMBER}(?: ?[x\u00d7] ?${NUMBER})? ?(?:mm|cm|in|"|m(?! ?\^? ?2))?(?! ?[a-z])`,
  'g',
);
const MANY = new RegExp(
  String.raw`(?<![\d.,/a-z^])(?:(${NUMBER}) ?[x\u00d7] ?)?(?:(\d+)[/\u2044]([2-9])(?!\d)|(${NUMBER}))`,
  'g',
);

/** Numbers with their units in a plain text, and the words that are left. A comma parts decimals. Lengths in mm count only alone. */
export function amountsIn(plain: string): { readonly amounts: readonly Amount[]; readonly rest: string } {
  const text = plain.replace(SIZE, ' ');
  const amounts: (Amount & { readonly isFine: boolean })[] = [];
  let rest = '';
  let end = 0;
  MANY.lastIndex = 0;
  for (let found = MANY.exec(text); found; found = MANY.exec(text)) {
    const [whole, times, over, under, plainNumber] = found;
    const after = /[ -]*/y;
    after.lastIndex = found.index + whole.length;
    const start = after.lastIndex + (after.exec(text)?.[0].length ?? 0);
    const unit = unitAt(text, start);
    const one = plainNumber === undefined ? Number(over) / Number(under) : decimal(plainNumber);
    const quantity = one * (times === undefined ? 1 : decimal(times)) * (unit?.factor ?? 1);
    amounts.push({ quantity, measure: unit?.measure ?? null, isFine: unit?.measure === 'm' && unit.factor < 1 });
    rest += `${text.slice(end, found.index)} `;
    end = unit ? start + unit.length : found.index + whole.length;
    MANY.lastIndex = end;
  }
  rest += text.slice(end);
  const coarse = amounts.filter(({ isFine }) => !isFine);
  return { amounts: coarse.length > 0 ? coarse : amounts, rest };
}

/** The unit that words are, all of them; null where they are none. */
export function bareUnit(words: string): Pick<UnitOfWords, 'measure' | 'factor'> | null {
  const unit = unitAt(words, 0);
  return unit && unit.length === words.length ? unit : null;
}

/** The longest word for a unit that begins there. */
function unitAt(text: string, at: number): (UnitOfWords & { readonly length: number }) | null {
  let best: (UnitOfWords & { length: number }) | null = null;
  for (const { pattern, ...unit } of UNITS) {
    pattern.lastIndex = at;
    const length = pattern.exec(text)?.[0].trimEnd().length ?? 0;
    if (length > (best?.length ?? 0)) best = { ...unit, length };
  }
  return best;
}

const decimal = (digits: string): number => Number(digits.replace(',', '.'));
