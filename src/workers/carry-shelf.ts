import type { Library } from '../model/library';
import type { Shelf } from '../model/offered-finishes';
import { type CarriedFinishes, createFinishPacker, createFinishUnpacker } from './carry-finishes';

/** Libraries on their way to a worker: of their finishes only what it does not have yet. */
export interface CarriedShelf extends Omit<Shelf, 'libraries'> {
  readonly libraries: readonly (Omit<Library, 'finishes'> & { readonly finishes: CarriedFinishes })[];
}

/** One packer or unpacker per library; those of libraries that went are forgotten at both ends. */
class PerLibrary<T> {
  #all = new Map<string, T>();
  constructor(private readonly make: () => T) {}

  take(ids: readonly string[]): (id: string) => T {
    const before = this.#all;
    this.#all = new Map(ids.map((id) => [id, before.get(id) ?? this.make()]));
    return (id) => this.#all.get(id)!;
  }
}

const idsOf = ({ libraries }: { readonly libraries: readonly { readonly id: string }[] }) =>
  libraries.map(({ id }) => id);

export function createShelfPacker(): (shelf: Shelf) => CarriedShelf {
  const packers = new PerLibrary(createFinishPacker);
  return (shelf) => {
    const packerOf = packers.take(idsOf(shelf));
    return {
      ...shelf,
      libraries: shelf.libraries.map((library) => ({ ...library, finishes: packerOf(library.id)(library.finishes) })),
    };
  };
}

/** The other end: what did not change is the same object, libraries included. */
export function createShelfUnpacker(): (carried: CarriedShelf) => Shelf {
  const unpackers = new PerLibrary(createFinishUnpacker);
  let known = new Map<string, Library>();
  return (carried) => {
    const unpackerOf = unpackers.take(idsOf(carried));
    const libraries = carried.libraries.map((one): Library => {
      const library = { ...one, finishes: unpackerOf(one.id)(one.finishes) };
      const before = known.get(one.id);
      const isSame = before?.finishes === library.finishes && before.name === one.name && before.note === one.note;
      return isSame ? before : library;
    });
    known = new Map(libraries.map((library) => [library.id, library]));
    return { ...carried, libraries };
  };
}
