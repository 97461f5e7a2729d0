import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import { type FilePurpose, purposeOfJson, purposeOfName } from '../io/file-of';
import { isWordsOnly } from '../io/sheet/words-only';
import { noticeTold, refusalTold } from '../ui/parts/told';
import { DROP, TAKEN_ELSEWHERE } from '../ui/words/drop';
import type { Actions } from './actions';
import { openProject, PROJECT_FILE } from './files';
import type { ProjectShelf } from './keeping/shelf';
import { freeLookId, readLookFile } from './look-files';
import { isTooLarge } from './read-file';
import { type AppState, documentOf } from './state';

interface DropDoors {
  readonly actions: Actions;
  readonly projects: ProjectShelf;
}

/** What was dropped on the page goes where it belongs; what belongs nowhere, or to a panel of its own, is told and changes nothing. */
export async function dropFiles(
  store: StoreApi<AppState>,
  { actions, projects }: DropDoors,
  files: readonly File[],
): Promise<void> {
  const refuse = (problem: Problem) => store.setState({ told: refusalTold(problem) });
  const [file] = files;
  if (!file) return;
  if (files.length > 1) {
    return refuse({ code: 'several-files', text: DROP.several(files.length), remedy: DROP.severalRemedy });
  }
  const purpose = await purposeOf(file);
  switch (purpose) {
    case null:
      return refuse({ code: 'unknown-file', text: DROP.unknown(file.name), remedy: DROP.unknownRemedy });
    case 'project':
      return openProject(store, projects, file);
    case 'look':
      return takeLook(store, actions, file);
    case 'finishes':
      if (await holdsNoFinish(file)) {
        return refuse({ code: 'no-finishes', text: DROP.noFinishes(file.name), remedy: DROP.unknownRemedy });
      }
      return store.setState({ libraries: true, dropped: file, told: null });
    default: {
      const { text, remedy } = TAKEN_ELSEWHERE[purpose];
      return refuse({ code: 'taken-elsewhere', text: text(file.name), remedy });
    }
  }
}

/** What is too large to look into is a project to whoever opens it, and refused there. */
async function purposeOf(file: File): Promise<FilePurpose | null> {
  const purpose = purposeOfName(file.name);
  if (purpose !== 'json') return purpose;
  if (isTooLarge(file, PROJECT_FILE)) return 'project';
  try {
    return purposeOfJson(await file.text());
  } catch {
    return 'project';
  }
}

/** As much of a text as tells whether it is a table of finishes, bytes. */
const LOOKED_AT = 256 * 1024;

/** Whether a text is no table at all: nothing in it but words, under no heading that is understood. What cannot be read is told by the import. */
async function holdsNoFinish(file: File): Promise<boolean> {
  if (!/\.(?:txt|csv|tsv)$/i.test(file.name)) return false;
  const code = await import('../io/sheet/read-sheet').catch(() => null);
  if (!code) return false;
  const bytes = new Uint8Array(await file.slice(0, LOOKED_AT).arrayBuffer());
  const read = code.readSheet(bytes, file.name);
  return read.ok && isWordsOnly(read.value);
}

async function takeLook(store: StoreApi<AppState>, actions: Actions, file: File): Promise<void> {
  const read = await readLookFile(file);
  if (!read.ok) return store.setState({ told: refusalTold(read.problem, read.more) });
  const look = { ...read.value, id: freeLookId(documentOf(store.getState()).looks ?? []) };
  const [problem, ...more] = actions.attempt({ kind: 'add-look', look });
  if (problem) return store.setState({ told: refusalTold(problem, more) });
  const added = { code: 'look-added', text: DROP.lookAdded(look.name), remedy: DROP.lookAddedRemedy };
  store.setState({ panel: 'look', reading: null, picked: null, told: noticeTold([added, ...(read.notices ?? [])]) });
}
