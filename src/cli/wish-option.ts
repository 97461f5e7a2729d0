import { FINISH_CLASSES } from '../engine/finish/types';
import type { Wish } from '../engine/judge/shortlist/wish';
import { failure, type Result, success } from '../engine/result';
import { SURFACES } from '../engine/surface';
import { isSurfaceId } from '../model/decision-order';
import { SHEENS } from '../model/sheens';

/** The words of the page, and some more that the trade has for a sheen (levels of the MPI gloss scale), gloss units at 60 degrees. */
const SHEEN_WORDS: Readonly<Record<string, readonly [number, number]>> = {
  ...Object.fromEntries(SHEENS.map(({ id, from, to }) => [id, [from, to] as const])),
  velvet: [5, 10],
  eggshell: [10, 25],
  'high-gloss': [85, 100],
};
const PRICES = ['$', '$$', '$$$'];

/** How a wish is written. */
const WISH_WORDS =
  'class:stone, lrv:60-80, sheen:satin or sheen:10-25, price:$$, available:in stock, pattern:quiet, no-lighter-than:counter';

/** A wish of the command line: KIND:VALUE. */
export function readWish(words: string): Result<Wish> {
  const at = words.indexOf(':');
  const kind = words.slice(0, at).trim().toLowerCase();
  const value = words.slice(at + 1).trim();
  if (at < 0 || value === '') return unreadable(words, `Write it like ${WISH_WORDS}.`);
  switch (kind) {
    case 'class': {
      const found = FINISH_CLASSES.find((one) => one === value.toLowerCase());
      return found ? success({ kind, class: found }) : unreadable(words, `Classes are: ${FINISH_CLASSES.join(', ')}.`);
    }
    case 'lrv':
      return rangeOf(words, value, (from, to) => ({ kind, from, to }));
    case 'sheen': {
      const named = SHEEN_WORDS[value.toLowerCase()];
      if (named) return success({ kind, from: named[0], to: named[1] });
      return /^[\d.]/.test(value)
        ? rangeOf(words, value, (from, to) => ({ kind, from, to }))
        : unreadable(words, `Write gloss units, 10-25, or one of: ${Object.keys(SHEEN_WORDS).join(', ')}.`);
    }
    case 'price': {
      const bands = value.split(',').map((band) => band.trim());
      const isKnown = bands.every((band) => PRICES.includes(band));
      return isKnown
        ? success({ kind, bands })
        : unreadable(words, `Price bands are ${PRICES.join(', ')}; put them in single quotes.`);
    }
    case 'available':
      return success({ kind: 'availability', words: value });
    case 'pattern':
      return value === 'quiet' || value === 'lively'
        ? success({ kind, pattern: value })
        : unreadable(words, 'A pattern is quiet or lively.');
    case 'no-lighter-than':
    case 'no-darker-than':
      return isSurfaceId(value)
        ? success({ kind, surface: value })
        : unreadable(words, `Surfaces are: ${SURFACES.join(', ')}.`);
    default:
      return unreadable(words, `Write it like ${WISH_WORDS}.`);
  }
}

function rangeOf(words: string, value: string, make: (from: number, to: number) => Wish): Result<Wish> {
  const found = /^(\d+(?:\.\d+)?)\s*-\s*(\d+(?:\.\d+)?)$/.exec(value);
  const [from, to] = [Number(found?.[1]), Number(found?.[2])];
  return found && from <= to && to <= 100
    ? success(make(from, to))
    : unreadable(words, 'Write two numbers from 0 to 100, the smaller one first, like 60-80.');
}

const unreadable = (words: string, remedy: string): Result<never> =>
  failure({ code: 'wrong-wish', text: `--wish "${words}" is no wish.`, remedy });
