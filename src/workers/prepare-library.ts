import type { ComponentRecord } from '../engine/judge/assessment';
import { prepareCandidate } from '../kitchen/study/candidates';
import { offeredCopies, type Shelf } from '../model/offered-finishes';

/** What finishes of a library are by their numbers, one after the other. */
export interface LibraryFacts {
  /** Id of the library. */
  readonly library: string;
  /** Place of the first of them in it. */
  readonly from: number;
  /** Null where a color cannot be. */
  readonly facts: readonly (ComponentRecord | null)[];
}

/** So many are told at once. */
const CHUNK = 250;

/** Works out what the finishes of libraries are, before anybody asks; yields after each, and the facts of some now and then. */
export function* prepareLibraries({ libraries, putAside }: Shelf): Generator<LibraryFacts | null, void> {
  // What is offered comes first.
  const isAside = ({ id }: { readonly id: string }) => Number(putAside.includes(id));
  for (const library of [...libraries].sort((x, y) => isAside(x) - isAside(y))) {
    const copies = offeredCopies(library);
    for (let from = 0; from < copies.length; from += CHUNK) {
      const facts: (ComponentRecord | null)[] = [];
      for (const copy of copies.slice(from, from + CHUNK)) {
        facts.push(prepareCandidate(copy));
        yield null;
      }
      yield { library: library.id, from, facts };
    }
  }
}
