import { createRoot } from 'react-dom/client';
import { createStore } from 'zustand/vanilla';
import { parseProject } from '../io/project-file';
import { BootProblem } from '../ui/parts/BootProblem';
import { createSamplePaints } from '../ui/swatch/sample-paints';
import type { Studio, StudioEvents } from '../workers/studio';
import { AppScreen } from './AppScreen';
import { createActions } from './actions';
import { AppContext } from './context';
import { listenToKeys } from './shortcuts';
import { initialState } from './state';
import { followState, studioEvents } from './studio-link';
import { applyTheme, keptTheme } from './theme';

/** Runs work when the browser has nothing more urgent; Safari has no idle callback. */
const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in window) window.requestIdleCallback(work, { timeout: 500 });
  else setTimeout(work, 50);
};

/** Opens the project text, starts the workers and puts the screen into the page. */
export function startApp(
  place: HTMLElement,
  projectText: string,
  createStudio: (events: StudioEvents) => Studio,
): void {
  const root = createRoot(place);
  const theme = keptTheme();
  applyTheme(theme);
  const project = parseProject(projectText);
  if (!project.ok) {
    root.render(<BootProblem problem={project.problem} />);
    return;
  }

  const store = createStore(() => initialState(project.value, theme));
  const actions = createActions(store);
  const studio = createStudio(studioEvents(store));
  followState(store, studio);
  listenToKeys(store, actions);
  const paints = createSamplePaints(whenIdle);
  const { readPoint } = studio;
  root.render(
    <AppContext value={{ store, actions, paints, readPoint }}>
      <AppScreen />
    </AppContext>,
  );
}
