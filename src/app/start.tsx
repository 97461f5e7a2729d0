import { createRoot } from 'react-dom/client';
import { createStore } from 'zustand/vanilla';
import { parseProject } from '../io/project-file';
import { BootProblem } from '../ui/parts/BootProblem';
import { problemTold } from '../ui/parts/told';
import { createSamplePaints } from '../ui/swatch/sample-paints';
import type { Studio, StudioEvents } from '../workers/studio';
import { AppScreen } from './AppScreen';
import { createActions } from './actions';
import { AppContext } from './context';
import { followHeld } from './held-follower';
import { databaseOpener } from './keeping/database';
import { createLibraryShelf } from './keeping/library-shelf';
import { openNews } from './keeping/news';
import { createProjectShelf } from './keeping/project-shelf';
import { storeProblem } from './keeping/store-error';
import { followManner } from './manner';
import { keptAside, offerLibraries } from './offer-libraries';
import { keepForOffline } from './offline/keep-for-offline';
import { followLinks } from './open-link';
import { followPoint } from './point-follower';
import { isPreferring, keepPreferences, keptPreferences, preferencesOf } from './preferences';
import { createSampleBaker } from './sample-baker';
import { listenToKeys } from './shortcuts';
import { showroomAtStart } from './showroom/kept-showroom';
import { runShowroom } from './showroom/run-showroom';
import { showroomState } from './showroom/start-over';
import { initialState, laidPatterns } from './state';
import { followState, studioEvents } from './studio-link';
import { applyTheme } from './theme';
import { warnOfUnsaved } from './unsaved';
import { followUnsettled } from './unsettled-follower';
import { whenIdle } from './when-idle';

/** Opens the project text, starts the workers and puts the screen into the page. */
export async function startApp(
  place: HTMLElement,
  projectText: string,
  createStudio: (events: StudioEvents) => Studio,
): Promise<void> {
  const root = createRoot(place);
  const kept = keptPreferences();
  applyTheme(kept.theme);
  const project = parseProject(projectText);
  if (!project.ok) {
    root.render(<BootProblem problem={project.problem} />);
    return;
  }

  const open = databaseOpener();
  const showroom = await showroomAtStart(open);
  const start = showroom ? showroomState(showroom) : initialState(project.value, kept.theme);
  const store = createStore(() => ({ ...start, ...kept, putAside: keptAside() }));
  followManner(store);
  const actions = createActions(store);
  const studio = createStudio(studioEvents(store));
  // Fetched while the workers compute the first light, not after it. Where that fails, the picture's pane asks again and says so.
  import('../view/Picture').catch(() => undefined);
  followState(store, studio);
  listenToKeys(store, actions);
  if (showroom) runShowroom(store, showroom);
  else {
    warnOfUnsaved(store);
    followLinks(store);
  }
  const bake = createSampleBaker();
  const paints = createSamplePaints({
    fetchLaying: async () => {
      await whenIdle();
      return import('../ui/swatch/laid-sample');
    },
    bake,
  });
  store.subscribe((state, before) => {
    if (state.looks !== before.looks) paints.setLaid(laidPatterns(state));
  });
  store.subscribe((state, before) => {
    if (!showroom && isPreferring(state, before)) keepPreferences(preferencesOf(state));
  });
  followPoint(store, studio.readPoint);
  followHeld(store, studio.readHeld, bake);
  followUnsettled(store);
  const news = openNews();
  const fail = (error: unknown) => store.setState({ told: problemTold(storeProblem(error)) });
  const libraries = createLibraryShelf(open, news, fail);
  const projects = createProjectShelf(store, open, news, fail);
  keepForOffline(store);
  offerLibraries(store, libraries, studio, whenIdle);
  root.render(
    <AppContext value={{ store, actions, paints, projects, libraries, openStore: open, ...studio }}>
      <AppScreen />
    </AppContext>,
  );
}
