import { NO_FINISH } from './empty-surface';
import type { Library } from './library';
import type { Finish } from './project';

/** The finishes one may choose among in a project: its own, and those of the kept libraries beside it. */
export interface Offered {
  /** Each id once. What the project took from a library stands where it stands there, so that laying it moves nothing. */
  readonly finishes: readonly Finish[];
  readonly byId: ReadonlyMap<string, Finish>;
}

/** Libraries that are kept, without those one has put aside. */
export interface Shelf {
  readonly libraries: readonly Library[];
  /** Ids of libraries that are not offered. */
  readonly putAside: readonly string[];
}

export const EMPTY_SHELF: Shelf = { libraries: [], putAside: [] };

/**
 * The finishes offered beside a project's own. A finish the project has from a library is that finish, whatever became of it there.
 * The others come with their origin, under the id they have in their library, or where another finish has that, under
 * `id (name of the library)`. Who keeps the plain id does not depend on the order of the libraries, nor on what is put aside.
 */
export function offeredFinishes(own: readonly Finish[], shelf: Shelf): Offered {
  const before = known.get(own);
  if (before?.shelf === shelf) return before.offered;
  const offered = shelf.libraries.length === 0 ? ownOnly(own) : withLibraries(own, shelf);
  known.set(own, { shelf, offered });
  return offered;
}

/** Is a finish of the project another one than its library has under that code by now? Also where it was changed in the project. */
export function isOutdated(finish: Finish, { libraries }: Shelf): boolean {
  const { origin } = finish;
  const library = origin && libraries.find(({ id }) => id === origin.library);
  const there = library && recordsOf(library).get(origin.finish);
  return there !== undefined && there !== sourceOf(finish) && content(there) !== content(finish);
}

/** The record of the library that an offered finish is made from; the finish itself where it is from none. */
export const sourceOf = (finish: Finish): Finish => sources.get(finish) ?? finish;

/** The offered copy that a project's own copy was taken from, where the two are alike. */
export function offeredCopy(finish: Finish, { libraries }: Shelf): Finish | undefined {
  const { origin } = finish;
  const library = origin && libraries.find(({ id }) => id === origin.library);
  const record = library && recordsOf(library).get(origin.finish);
  const copy = record && copyOf(record, library);
  if (!copy || JSON.stringify({ ...copy, id: finish.id }) !== JSON.stringify(finish)) return undefined;
  return copy.id === finish.id ? copy : withId(copy, finish.id);
}

/** A library's own record of a finish; undefined where it has none of that id. */
export const recordOf = (library: Library, id: string): Finish | undefined => recordsOf(library).get(id);

/** A library's records by their ids there. */
function recordsOf(library: Library): ReadonlyMap<string, Finish> {
  const made = records.get(library) ?? new Map(library.finishes.map((finish) => [finish.id, finish]));
  records.set(library, made);
  return made;
}

/** A library's finishes as they are offered under their own ids, in its order. */
export function offeredCopies(library: Library): readonly Finish[] {
  let made = copies.get(library);
  if (!made) {
    made = library.finishes.map((finish) => copyOf(finish, library));
    copies.set(library, made);
  }
  return made;
}

/** Once per record: when one of a library changes, the others stay the same objects. */
function copyOf(finish: Finish, { id, name }: Library): Finish {
  const before = copied.get(finish);
  if (before?.origin?.library === id && before.origin.name === name) return before;
  const copy = { ...finish, origin: { library: id, name, finish: finish.id } };
  copied.set(finish, copy);
  sources.set(copy, finish);
  return copy;
}

const known = new WeakMap<readonly Finish[], { readonly shelf: Shelf; readonly offered: Offered }>();
const records = new WeakMap<Library, ReadonlyMap<string, Finish>>();
const copies = new WeakMap<Library, readonly Finish[]>();
const copied = new WeakMap<Finish, Finish>();
const sources = new WeakMap<Finish, Finish>();
/** Copies under another id, so that the same one is the same object. */
const renamed = new WeakMap<Finish, Map<string, Finish>>();

const content = ({ id: _, origin: __, ...rest }: Finish): string =>
  JSON.stringify(Object.entries(rest).sort(([x], [y]) => (x < y ? -1 : 1)));

const ownOnly = (own: readonly Finish[]): Offered => ({
  finishes: own,
  byId: new Map(own.map((finish) => [finish.id, finish])),
});

function withLibraries(own: readonly Finish[], { libraries, putAside }: Shelf): Offered {
  const used = new Set([NO_FINISH.id, ...own.map(({ id }) => id)]);
  const taken = takenFrom(own);
  const offered = new Map<Library, readonly Finish[]>();
  for (const library of [...libraries].sort((x, y) => byText(x.id, y.id))) {
    const here = taken.get(library.id);
    offered.set(
      library,
      offeredCopies(library).map((copy) => {
        const its = here?.get(copy.id);
        if (its) return its;
        const id = freeId(copy.id, library.name, used);
        used.add(id);
        return id === copy.id ? copy : withId(copy, id);
      }),
    );
  }
  const there = libraries.filter(({ id }) => !putAside.includes(id)).flatMap((library) => offered.get(library)!);
  const placed = new Set(there);
  const finishes = [...own.filter((finish) => !placed.has(finish)), ...there];
  return { finishes, byId: new Map(finishes.map((finish) => [finish.id, finish])) };
}

/** What a project has from libraries, by library and by what it is called there. */
function takenFrom(own: readonly Finish[]): ReadonlyMap<string, ReadonlyMap<string, Finish>> {
  const taken = new Map<string, Map<string, Finish>>();
  for (const finish of own) {
    if (!finish.origin) continue;
    const { library, finish: id } = finish.origin;
    taken.set(library, (taken.get(library) ?? new Map<string, Finish>()).set(id, finish));
  }
  return taken;
}

const byText = (x: string, y: string): number => (x < y ? -1 : x > y ? 1 : 0);

function freeId(id: string, library: string, used: ReadonlySet<string>): string {
  if (!used.has(id)) return id;
  for (let count = 1; ; count++) {
    const other = `${id} (${library}${count === 1 ? '' : ` ${count}`})`;
    if (!used.has(other)) return other;
  }
}

function withId(copy: Finish, id: string): Finish {
  const others = renamed.get(copy) ?? new Map<string, Finish>();
  renamed.set(copy, others);
  let made = others.get(id);
  if (!made) {
    made = { ...copy, id };
    sources.set(made, sourceOf(copy));
    others.set(id, made);
  }
  return made;
}
