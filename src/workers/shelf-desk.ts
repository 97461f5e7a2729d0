import { EMPTY_SHELF, offeredCopy, type Shelf } from '../model/offered-finishes';
import type { Finish, Project } from '../model/project';
import type { LibraryFacts } from './prepare-library';
import { prepareLibraries } from './prepare-library';

/** As long as a message may wait, ms. */
const SLICE_MS = 4;

/** The libraries kept beside the project, as the light worker has them. What their finishes are it works out when all else is done. */
export class ShelfDesk {
  shelf: Shelf = EMPTY_SHELF;
  #number = 0;
  /** What a project took from a library, by its own copy: swapped once for the library's, where the two are alike. */
  #adopted = new WeakMap<readonly Finish[], readonly Finish[]>();
  #preparing: ReturnType<typeof prepareLibraries> | null = null;
  /** What the page knows of already. */
  readonly #told = new WeakSet<Finish>();

  constructor(private readonly tell: (facts: LibraryFacts, shelf: number) => void) {}

  put(shelf: Shelf, number: number): void {
    this.shelf = shelf;
    this.#number = number;
    this.#adopted = new WeakMap();
    this.#preparing = prepareLibraries(shelf, this.#told);
  }

  /** The project with the very records of libraries, where it has copies of them: what is known of these is known of its own. */
  adopt(project: Project): Project {
    const { library } = project;
    let adopted = this.#adopted.get(library);
    if (!adopted) {
      const swapped = library.map((finish) => offeredCopy(finish, this.shelf) ?? finish);
      adopted = swapped.every((finish, i) => finish === library[i]) ? library : swapped;
      this.#adopted.set(library, adopted);
    }
    return adopted === library ? project : { ...project, library: adopted };
  }

  /** A few milliseconds of preparing; false when there is nothing left to prepare. */
  prepare(): boolean {
    const until = performance.now() + SLICE_MS;
    while (this.#preparing) {
      const step = this.#preparing.next();
      if (step.done) this.#preparing = null;
      else if (step.value) this.tell(step.value, this.#number);
      if (performance.now() >= until) break;
    }
    return this.#preparing !== null;
  }
}
