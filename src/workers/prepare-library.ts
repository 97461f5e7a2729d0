import type { ComponentRecord } from '../engine/judge/assessment';
import { prepareCandidate } from '../kitchen/study/candidates';
import { offeredCopies, type Shelf, sourceOf } from '../model/offered-finishes';
import type { Finish } from '../model/project';

/** What finishes of a library are by their numbers. */
export interface LibraryFacts {
  /** Id of the library. */
  readonly library: string;
  /** Ids there; `facts` has as many. */
  readonly finishes: readonly string[];
  /** Null where a color cannot be. */
  readonly facts: readonly (ComponentRecord | null)[];
}

/** So many are told at once. */
const CHUNK = 500;

/**
 * Works out what the finishes of libraries are, before anybody asks; yields after each that was not known, and the facts of some now and
 * then. What was told before is not told again.
 */
export function* prepareLibraries(
  { libraries, putAside }: Shelf,
  told: WeakSet<Finish>,
): Generator<LibraryFacts | null, void> {
  // What is offered comes first.
  const isAside = ({ id }: { readonly id: string }) => Number(putAside.includes(id));
  for (const library of [...libraries].sort((x, y) => isAside(x) - isAside(y))) {
    const copies = offeredCopies(library).filter((copy) => !told.has(sourceOf(copy)));
    for (let from = 0; from < copies.length; from += CHUNK) {
      const chunk = copies.slice(from, from + CHUNK);
      const facts: (ComponentRecord | null)[] = [];
      for (const copy of chunk) {
        facts.push(prepareCandidate(copy));
        yield null;
      }
      for (const copy of chunk) told.add(sourceOf(copy));
      yield { library: library.id, finishes: chunk.map((copy) => sourceOf(copy).id), facts };
    }
  }
}
