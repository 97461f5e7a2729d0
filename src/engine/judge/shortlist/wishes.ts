import { surfacesPhrase } from '../surface-words';
import type { Candidate, HeldSurface } from './types';
import type { Wish } from './wish';

/** Whether a wish is met; null where what is known of the finish does not say. */
export function isMet(wish: Wish, candidate: Candidate, around: readonly HeldSurface[]): boolean | null {
  switch (wish.kind) {
    case 'class':
      return candidate.finish.class === wish.class;
    case 'lrv':
      return candidate.lrv >= wish.from && candidate.lrv <= wish.to;
    case 'sheen':
      return candidate.finish.glossGu >= wish.from && candidate.finish.glossGu <= wish.to;
    case 'price':
      return candidate.priceBand === null ? null : wish.bands.includes(candidate.priceBand);
    case 'availability':
      return candidate.availability === null
        ? null
        : candidate.availability.toLowerCase().includes(wish.words.toLowerCase());
    case 'pattern':
      return candidate.pattern === wish.pattern;
    default: {
      const other = around.find(({ surface }) => surface === wish.surface);
      if (!other) return null;
      return wish.kind === 'no-lighter-than' ? candidate.lrv <= other.lrv : candidate.lrv >= other.lrv;
    }
  }
}

/** A wish in words: "light reflectance 60 to 80". */
export function wishWords(wish: Wish): string {
  switch (wish.kind) {
    case 'class':
      return wish.class;
    case 'lrv':
      return `light reflectance ${wish.from} to ${wish.to}`;
    case 'sheen':
      return `sheen ${wish.from} to ${wish.to} GU`;
    case 'price':
      return `price ${wish.bands.join(' or ')}`;
    case 'availability':
      return `"${wish.words}"`;
    case 'pattern':
      return `a ${wish.pattern} pattern`;
    case 'no-lighter-than':
      return `no lighter than ${surfacesPhrase([wish.surface]).text}`;
    case 'no-darker-than':
      return `no darker than ${surfacesPhrase([wish.surface]).text}`;
  }
}
