import type { Supply } from '../project';
import { plainUnits, wordsPattern } from '../unit-vocabulary';
import type { Measure } from './measures';
import { type Amount, amountsIn, bareUnit } from './pack-amounts';
import { CONTAINER_WORDS, COUNTING_CONTAINERS, JOINING_WORDS } from './pack-words';

/** What a finish is sold in. */
export interface Pack {
  /** What it is called, in plain lower case ("can", "box"); null where it is sold by the measure itself ("m2", "slab"). */
  readonly container: string | null;
  /** What is in one, in `measure`; above 0. */
  readonly quantity: number;
  readonly measure: Measure;
}

/** Less is no pack: a milliliter, a gram (our judgment). */
const LEAST_IN_PACK = 0.001;

/** Longer texts are no units. */
const MOST_LETTERS = 60;

/** Two that say the same. */
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(a, b);

/**
 * What the words of a supply say: "can of 2.5 L", "box of 25", "5 gal pail", "sq ft" with a pack of 10.5. Null where they do not say
 * what is in a pack ("box"), or where words and number say different things: nothing is guessed.
 */
export function packOf(supply: Supply): Pack | null {
  const pack = packInWords(supply);
  return pack && pack.quantity >= LEAST_IN_PACK ? pack : null;
}

function packInWords({ unit, pack }: Supply): Pack | null {
  if (unit === undefined || unit.length > MOST_LETTERS || (pack !== undefined && !(pack > 0))) return null;
  const { amounts, rest } = amountsIn(plainUnits(unit));
  const words = rest.split(/[^a-z0-9^]+/).filter((word) => word !== '' && !JOINING_WORDS.includes(word));
  if (amounts.length === 0) return soldByMeasure(words.join(' '), pack);
  const container = words.find((word) => isWord(word, CONTAINER_WORDS)) ?? words.at(-1) ?? null;
  const amount = amountMeant(amounts, pack, container);
  if (!amount) return null;
  // A slab is sold whole, whatever its area.
  if (container !== null && bareUnit(container)?.measure === 'slab')
    return { container: null, quantity: 1, measure: 'slab' };
  const isOne = amount.quantity === 1 && container === null;
  return { container: isOne ? null : (container ?? 'pack'), ...amount };
}

/** The amount that a pack is counted in: the one that agrees with its number, else the first that is measured, else a count. */
function amountMeant(
  amounts: readonly Amount[],
  pack: number | undefined,
  container: string | null,
): { readonly quantity: number; readonly measure: Measure } | null {
  const [first] = amounts;
  const isCount = amounts.length === 1 && container !== null && isWord(container, COUNTING_CONTAINERS);
  const known = amounts.flatMap(({ quantity, measure }) => {
    const meant = measure ?? (isCount ? 'piece' : null);
    const isSound = quantity > 0 && (meant !== 'piece' || Number.isInteger(quantity));
    return meant !== null && isSound ? [{ quantity, measure: meant }] : [];
  });
  // One number that nobody can place, and the others may say something else: "can of 5", "pallet of 40 boxes of 1.2 m2".
  if (!first || known.length < amounts.length) return null;
  if (pack !== undefined && pack !== 1) return known.find(({ quantity }) => isSame(quantity, pack)) ?? null;
  return known.find(({ measure }) => measure !== 'piece') ?? known[0]!;
}

/** "m2", "gallon", "slab": a measure alone, with as much in a pack as its number says. */
function soldByMeasure(words: string, pack: number | undefined): Pack | null {
  const unit = bareUnit(words);
  if (!unit) return null;
  const quantity = unit.factor * (pack ?? 1);
  return { container: unit.factor === 1 ? null : words, quantity, measure: unit.measure };
}

const isWord = (word: string, words: string): boolean => {
  const pattern = wordsPattern(words);
  return pattern.exec(word)?.[0].length === word.length;
};
