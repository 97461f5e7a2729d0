import type { StoreApi } from 'zustand/vanilla';
import { failure, type Problem, type Result, success } from '../engine/result';
import type { parseLampFile } from '../io/lamp-file';
import { newLamp } from '../model/new-lamp';
import type { Lamp } from '../model/project';
import { noticeTold, refusalTold } from '../ui/parts/told';
import { LAMPS } from '../ui/words/lamps';
import { reread } from '../ui/words/spoken';
import type { Actions } from './actions';
import { type FileLimit, fetched, readFile } from './read-file';
import { type AppState, projectOf } from './state';

/** A spectrum has some thousand numbers at most. */
const LAMP_FILE = reread((): FileLimit => ({ megabytes: 5, tooLarge: LAMPS.tooLarge, remedy: LAMPS.tooLargeRemedy }));

/** More lamps than this at once make no list to choose from. */
const MOST_LAMPS = 12;

/** Lamps read from a file: those the project has not yet, and the id of the first in the file. */
interface Opened {
  readonly added: readonly Lamp[];
  readonly light: string;
}

/**
 * Takes the lamps of a file into the project and lights the first, as one step to undo. A file that cannot be used leaves
 * everything as it is and says why.
 */
export async function openLamp(store: StoreApi<AppState>, actions: Actions, file: File): Promise<void> {
  const read = await readLamps(store, file);
  if (!read.ok) {
    return store.setState({ told: refusalTold(read.problem, read.more) });
  }
  actions.addLamps(read.value.added, read.value.light);
  store.setState({ told: noticeTold(read.notices) });
}

const readLamps = (store: StoreApi<AppState>, file: File): Promise<Result<Opened>> =>
  readFile(file, LAMP_FILE, async (text) => {
    const code = await fetched(() => Promise.all([import('../io/lamp-file'), import('../io/read-lamp')]));
    if (!code.ok) return code;
    const [{ parseLampFile }, { fileStem }] = code.value;
    const parsed = parseLampFile(text, file.name);
    return parsed.ok ? lampsToAdd(store, file, parsed, fileStem(file.name)) : parsed;
  });

/** The lamps of a file under names of their own. `stem`: the name of the file. */
function lampsToAdd(
  store: StoreApi<AppState>,
  file: File,
  parsed: Extract<ReturnType<typeof parseLampFile>, { ok: true }>,
  stem: string,
): Result<Opened> {
  const inFile = (problem: Problem): Problem => ({ ...problem, at: { file: file.name } });
  const count = parsed.value.length;
  if (count > MOST_LAMPS) {
    const words = LAMPS.tooMany(count, MOST_LAMPS);
    return failure(inFile({ code: 'too-many-lamps', text: words, remedy: LAMPS.tooManyRemedy }));
  }

  // A heading such as "power" names no lamp; the file has a name its owner knows.
  const nameOf = (inFile: string) => (count === 1 ? stem : LAMPS.ofFile(stem, inFile));
  const before = projectOf(store.getState()).lamps ?? [];
  const all: Lamp[] = [...before];
  const ids: string[] = [];
  const notices = [...(parsed.notices ?? [])];
  for (const spectrum of parsed.value) {
    const name = nameOf(spectrum.name);
    const made = newLamp({ lamps: all }, { ...spectrum, name }, LAMPS.from(file.name));
    const named = (problem: Problem): Problem =>
      inFile(count > 1 ? { ...problem, text: `${spectrum.name}: ${problem.text}` } : problem);
    if (!made.ok) return failure(named(made.problem));
    if (!all.includes(made.value)) all.push(made.value);
    ids.push(made.value.id);
    notices.push(...(made.notices ?? []).map(named));
  }
  if (count > 1) {
    const text = LAMPS.added(count, nameOf(parsed.value[0]!.name));
    notices.unshift(inFile({ code: 'several-lamps', text, remedy: LAMPS.addedRemedy }));
  }
  return success({ added: all.slice(before.length), light: ids[0]! }, notices);
}
