import type { StoreApi } from 'zustand/vanilla';
import { parseProject, projectText } from '../io/project-file';
import { record } from '../model/history';
import type { Project } from '../model/project';
import { PROBLEMS } from '../ui/words/problems';
import type { AppState } from './state';
import { projectOf } from './state';
import { APP_WORDS } from './words';

/** Hands the project to the browser as a file to keep. */
export function saveProject(project: Project): void {
  const url = URL.createObjectURL(new Blob([projectText(project)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = `${project.id}.project.json`;
  link.click();
  // The browser reads the file after the click; the address may go once it has begun.
  window.setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Opens a project file. A file that cannot be read leaves the present project as it is and says why. */
export async function openProject(store: StoreApi<AppState>, file: File): Promise<void> {
  let text: string;
  try {
    text = await file.text();
  } catch {
    const at = { file: file.name };
    store.setState({
      problem: { code: 'unreadable', text: PROBLEMS.unreadable, at, remedy: PROBLEMS.unreadableRemedy },
    });
    return;
  }
  const result = parseProject(text, file.name);
  if (!result.ok) {
    const { problem } = result;
    store.setState({ problem: { ...problem, remedy: `${problem.remedy} ${PROBLEMS.kept}` } });
    return;
  }
  const state = store.getState();
  const history = record(state.history, result.value, APP_WORDS.opened(file.name));
  const project = projectOf({ ...state, history });
  store.setState({
    history,
    option: project.options.at(-1)!.id,
    setting: project.settings[0]!.id,
    drawer: null,
    reading: null,
    picked: null,
    assessments: {},
    problem: result.notices?.[0] ?? null,
  });
}
