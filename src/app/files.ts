import type { StoreApi } from 'zustand/vanilla';
import { type Result, success } from '../engine/result';
import { parseProject, projectText } from '../io/project-file';
import type { Project, Revision } from '../model/project';
import { refusalTold } from '../ui/parts/told';
import { PROBLEMS } from '../ui/words/problems';
import { PROJECTS } from '../ui/words/projects';
import { reread } from '../ui/words/spoken';
import { fileNameOf } from './file-name';
import type { ProjectShelf } from './keeping/shelf';
import { type FileLimit, fetched, readFile, readingBroke } from './read-file';
import { saveBlob } from './save-blob';
import { type AppState, documentOf } from './state';
import { APP_WORDS } from './words';

/** A project is a few hundred kilobytes; reading much more would hold the page up for nothing. */
export const PROJECT_FILE = reread(
  (): FileLimit => ({
    megabytes: 20,
    tooLarge: PROBLEMS.tooLarge,
    remedy: PROBLEMS.tooLargeRemedy(20),
  }),
);

/** Work between two pauses, ms, so that the page draws and listens meanwhile. */
const SLICE_MS = 12;

/** Hands the project to the browser as a file to keep. */
export function saveProject(store: StoreApi<AppState>): void {
  const project = documentOf(store.getState());
  saveText(project);
  store.setState({ saved: project });
}

/** The same with a frozen copy, as a project of its own. */
export function saveRevision(project: Project, { id, name, document }: Revision): void {
  const own = { ...document, id: `${project.id}-${id.toLowerCase()}`, name: PROJECTS.fileName(project.name, id, name) };
  saveText(own);
}

const saveText = (project: Project): void =>
  saveBlob(new Blob([projectText(project)], { type: 'application/json' }), `${fileNameOf(project)}.project.json`);

/** The file each page asked for last: one that was asked for before it and takes longer is dropped. */
const asked = new WeakMap<StoreApi<AppState>, File>();

/** Opens a project file. A file that cannot be read leaves the present project as it is and says why. */
export async function openProject(
  store: StoreApi<AppState>,
  projects: Pick<ProjectShelf, 'openDocument'>,
  file: File,
): Promise<void> {
  asked.set(store, file);
  const refuse = ({ problem, more }: Extract<Result<unknown>, { ok: false }>) =>
    store.setState({ told: refusalTold(problem, more) });
  const read = await readProject(file);
  if (asked.get(store) !== file) return;
  if (!read.ok) return refuse(read);
  const from = { label: APP_WORDS.opened(file.name), isInFile: true, ...(read.notices && { notices: read.notices }) };
  try {
    await projects.openDocument(read.value, from);
  } catch (error) {
    refuse({ ok: false, problem: { ...readingBroke(error), at: { file: file.name } } });
  }
}

const readProject = (file: File): Promise<Result<Project>> =>
  readFile(file, PROJECT_FILE, async (text) => {
    const parsed = parseProject(text, file.name);
    if (!parsed.ok) return parsed;
    const checked = await usableColors(parsed.value, text, file.name);
    return checked.ok ? success(checked.value, [...(checked.notices ?? []), ...(parsed.notices ?? [])]) : checked;
  });

/**
 * A project without the finishes and looks whose colors no surface can have, and what was left out: one wrong number does not keep the
 * rest from its owner. Colors take their time and bring spectra along: looked at in slices, with code that is fetched when it is needed.
 */
export async function usableColors(project: Project, text: string, file: string): Promise<Result<Project>> {
  const code = await fetched(() => import('../io/check-colors'));
  if (!code.ok) return code;
  const steps = code.value.checkingColors(project, text, file);
  for (let until = performance.now() + SLICE_MS; ; ) {
    const step = steps.next();
    if (step.done) return success(step.value.usable, [...step.value.leftOut, ...step.value.notices]);
    if (performance.now() < until) continue;
    await new Promise((resolve) => setTimeout(resolve));
    until = performance.now() + SLICE_MS;
  }
}
