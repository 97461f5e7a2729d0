import type { StoreApi } from 'zustand/vanilla';
import { failure, type Problem, type Result, success } from '../engine/result';
import { newLamp } from '../model/new-lamp';
import type { Lamp } from '../model/project';
import { noticeTold, refusalTold } from '../ui/parts/told';
import { LAMPS } from '../ui/words/lamps';
import { PROBLEMS } from '../ui/words/problems';
import type { Actions } from './actions';
import { type AppState, projectOf } from './state';

/** A spectrum has some thousand numbers at most. */
const MOST_MEGABYTES = 5;
const BYTES_PER_MEGABYTE = 1e6;

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
    const { problem, more } = read;
    return store.setState({ told: refusalTold({ ...problem, remedy: `${problem.remedy} ${LAMPS.kept}` }, more) });
  }
  actions.addLamps(read.value.added, read.value.light);
  store.setState((state) => ({ told: state.told ?? noticeTold(read.notices) }));
}

async function readLamps(store: StoreApi<AppState>, file: File): Promise<Result<Opened>> {
  const inFile = (problem: Problem): Problem => ({ ...problem, at: { file: file.name } });
  if (file.size > MOST_MEGABYTES * BYTES_PER_MEGABYTE) {
    const text = LAMPS.tooLarge(Math.round(file.size / BYTES_PER_MEGABYTE));
    return failure(inFile({ code: 'file-too-large', text, remedy: LAMPS.tooLargeRemedy }));
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    return failure(inFile({ code: 'unreadable', text: PROBLEMS.unreadable, remedy: PROBLEMS.unreadableRemedy }));
  }
  const [{ parseLampFile }, { fileStem }] = await Promise.all([import('../io/lamp-file'), import('../io/read-lamp')]);
  const parsed = parseLampFile(text, file.name);
  if (!parsed.ok) return parsed;
  const count = parsed.value.length;
  if (count > MOST_LAMPS) {
    const words = LAMPS.tooMany(count, MOST_LAMPS);
    return failure(inFile({ code: 'too-many-lamps', text: words, remedy: LAMPS.tooManyRemedy }));
  }

  // A heading such as "power" names no lamp; the file has a name its owner knows.
  const stem = fileStem(file.name);
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
