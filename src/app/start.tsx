import { createRoot, type Root } from 'react-dom/client';
import { createStore } from 'zustand/vanilla';
import { parseProject } from '../io/project-file';
import { BootProblem } from '../ui/parts/BootProblem';
import { ErrorBoundary } from '../ui/parts/ErrorBoundary';
import { Locked } from '../ui/parts/locked';
import { problemTold } from '../ui/parts/told';
import { ShowroomStuck } from '../ui/showroom/ShowroomStuck';
import { createSamplePaints } from '../ui/swatch/sample-paints';
import { PROBLEMS } from '../ui/words/problems';
import { SHOWROOM } from '../ui/words/showroom';
import type { Studio, StudioEvents } from '../workers/studio';
import { AppScreen } from './AppScreen';
import { createActions } from './actions';
import { AppContext } from './context';
import { saveProject } from './files';
import { followHeld } from './held-follower';
import { databaseOpener } from './keeping/database';
import { AT_FIRST, readStart, type Start, startKeeping } from './keeping/start-keeping';
import { unkept } from './keeping/tell-unkept';
import { followManner } from './manner';
import { keptAside, offerLibraries } from './offer-libraries';
import { keepForOffline } from './offline/keep-for-offline';
import { followLinks } from './open-link';
import { followPoint } from './point-follower';
import { isPreferring, keepPreferences, keptPreferences, preferencesOf } from './preferences';
import { createSampleBaker } from './sample-baker';
import { listenToKeys } from './shortcuts';
import { showroomAtStart, turnShowroomOff } from './showroom/kept-showroom';
import { rangeShelf } from './showroom/range-shelf';
import { runShowroom } from './showroom/run-showroom';
import { showroomState } from './showroom/start-over';
import { type AppState, initialState, laidPatterns } from './state';
import { followState, studioEvents } from './studio-link';
import { applyTheme } from './theme';
import { warnOfUnsaved } from './unsaved';
import { followUnsettled } from './unsettled-follower';
import { whenIdle } from './when-idle';

/**
 * Opens the project that was open last, or else the one of the text; starts the workers and puts the screen into the page. What goes wrong in
 * that is said on the page.
 */
export async function startApp(
  place: HTMLElement,
  projectText: string,
  createStudio: (events: StudioEvents) => Studio,
): Promise<void> {
  const root = createRoot(place);
  try {
    await begin(root, projectText, createStudio);
  } catch (error) {
    // For whoever looks at what went wrong.
    console.error(error);
    root.render(
      <BootProblem problem={{ code: 'start-failed', text: PROBLEMS.appFailed, remedy: PROBLEMS.appRemedy }} />,
    );
  }
}

async function begin(root: Root, projectText: string, createStudio: (events: StudioEvents) => Studio): Promise<void> {
  const preferences = keptPreferences();
  applyTheme(preferences.theme);
  // Fetched while the kept project is read and the workers compute the first light. Where that fails, the picture's pane asks again and says so.
  import('../view/Picture').catch(() => undefined);
  const open = databaseOpener();
  const found = await showroomAtStart(open);
  if (found === 'unanswered' || found === 'unreadable') {
    const leave = () => {
      turnShowroomOff();
      location.reload();
    };
    root.render(<ShowroomStuck why={found} onRetry={() => location.reload()} onLeave={leave} />);
    return;
  }
  const showroom = found === 'lost' ? null : found;
  const reading = showroom ? AT_FIRST : readStart(open, () => demo);
  // Read while the store answers: it is what a first visit shows, and what one falls back to.
  const parsed = parseProject(projectText);
  if (!parsed.ok) {
    root.render(<BootProblem problem={parsed.problem} />);
    return;
  }
  const demo = parsed.value;
  const start = await reading;
  const opened = start.shown?.history.present ?? demo;
  const state = showroom ? showroomState(showroom) : stateAtStart(initialState(opened, preferences.theme), start);
  const store = createStore(() => ({ ...state, ...preferences, putAside: showroom ? [] : keptAside() }));
  followManner(store, demo);
  const actions = createActions(store);
  const studio = createStudio(studioEvents(store));
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
    if (!showroom && isPreferring(state, before)) keepPreferences(preferencesOf(state), preferencesOf(before));
  });
  followPoint(store, studio.readPoint);
  followHeld(store, studio.readHeld, bake);
  followUnsettled(store);
  const kept = startKeeping(store, open, start, demo);
  if (found === 'lost') store.setState({ told: problemTold(SHOWROOM.lost) });
  keepForOffline(store);
  offerLibraries(store, showroom ? rangeShelf(kept.libraries, showroom) : kept.libraries, studio, whenIdle);
  root.render(
    <AppContext value={{ store, actions, paints, demo, openStore: open, ...kept, ...studio }}>
      <Locked value={showroom !== null}>
        <ErrorBoundary text={PROBLEMS.pageBroke} onSave={() => saveProject(store)}>
          <AppScreen />
        </ErrorBoundary>
      </Locked>
    </AppContext>,
  );
}

/** The state as one left it, or that of a first visit; what could not be read is told. */
function stateAtStart(state: AppState, { shown, notice, error }: Start): AppState {
  if (!shown) return error ? { ...state, keeping: unkept(state.keeping, error) } : state;
  const { history, saved, kept } = shown;
  const isElsewhere = notice?.kind === 'elsewhere';
  return {
    ...state,
    history,
    saved,
    keeping: {
      ...state.keeping,
      state: isElsewhere ? 'elsewhere' : kept ? 'kept' : 'nothing',
      document: kept || isElsewhere ? history.present : null,
      notice,
    },
  };
}
