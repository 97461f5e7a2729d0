import { lazy } from 'react';
import { KeysHelp } from '../ui/bar/KeysHelp';
import { Banner } from '../ui/parts/Banner';
import { ErrorBoundary } from '../ui/parts/ErrorBoundary';
import { Screen } from '../ui/Screen';
import { PROBLEMS } from '../ui/words/problems';
import { useApp, useAppState } from './context';
import { saveProject } from './files';
import { mannerOf } from './manner';
import { UpdatePane } from './offline/UpdatePane';
import { ApartPane } from './panes/ApartPane';
import { BarPane } from './panes/BarPane';
import { DrawerPane } from './panes/DrawerPane';
import { DropPane } from './panes/DropPane';
import { FindingsPane } from './panes/FindingsPane';
import { KeepingPane } from './panes/KeepingPane';
import { LedgePane } from './panes/LedgePane';
import { PicturePane } from './panes/PicturePane';
import { TryPane } from './panes/TryPane';
import { ShowroomBarPane } from './showroom/ShowroomBarPane';
import { ShowroomDialogs } from './showroom/ShowroomDialogs';

const BroughtPane = lazy(() => import('./panes/BroughtPane').then((pane) => ({ default: pane.BroughtPane })));
const HandoverPane = lazy(() => import('./handover/HandoverPane').then((pane) => ({ default: pane.HandoverPane })));
const LibrariesPane = lazy(() => import('./panes/LibrariesPane').then((pane) => ({ default: pane.LibrariesPane })));
const SchedulePane = lazy(() => import('./panes/SchedulePane').then((pane) => ({ default: pane.SchedulePane })));
const NewProjectPane = lazy(() => import('./panes/NewProjectPane').then((pane) => ({ default: pane.NewProjectPane })));

/** The parts of the screen, each behind its own boundary so that a bug in one leaves the rest usable. */
export function AppScreen() {
  const { store } = useApp();
  // All below is drawn anew in other words and units, and nothing that is typed or open is lost.
  useAppState(mannerOf);
  const told = useAppState((state) => state.told);
  const drawer = useAppState((state) => state.drawer);
  const keysHelp = useAppState((state) => state.keysHelp);
  const asking = useAppState((state) => state.asking);
  const brought = useAppState((state) => state.brought !== null);
  const ordering = useAppState((state) => state.ordering);
  const handover = useAppState((state) => state.handover);
  const libraries = useAppState((state) => state.libraries);
  const isShowroom = useAppState((state) => state.showroom !== null);
  const run = useAppState((state) => state.showroomRun);
  const save = () => saveProject(store);
  return (
    <>
      <Screen
        bar={isShowroom ? <ShowroomBarPane /> : <BarPane />}
        banner={
          <>
            {told && <Banner told={told} onSave={save} onDismiss={() => store.setState({ told: null })} />}
            {!isShowroom && <KeepingPane />}
            {!isShowroom && <UpdatePane />}
            <TryPane />
          </>
        }
        picture={
          <ErrorBoundary text={PROBLEMS.pictureBroke} onSave={save}>
            <PicturePane />
          </ErrorBoundary>
        }
        ledge={
          <ErrorBoundary text={PROBLEMS.ledgeBroke} onSave={save}>
            <LedgePane />
          </ErrorBoundary>
        }
        drawer={
          drawer && (
            <ErrorBoundary text={PROBLEMS.ledgeBroke} onSave={save}>
              <DrawerPane key={run} surface={drawer} />
            </ErrorBoundary>
          )
        }
        findings={
          <ErrorBoundary text={PROBLEMS.panelBroke} onSave={save}>
            <FindingsPane key={run} />
          </ErrorBoundary>
        }
      />
      <DropPane />
      {asking && (
        <ApartPane onClose={() => store.setState({ asking: false })}>
          <NewProjectPane />
        </ApartPane>
      )}
      {handover && (
        <ApartPane onClose={() => store.setState({ handover: false })}>
          <HandoverPane />
        </ApartPane>
      )}
      {libraries && (
        <ApartPane onClose={() => store.setState({ libraries: false })}>
          <LibrariesPane />
        </ApartPane>
      )}
      {ordering && (
        <ApartPane onClose={() => store.setState({ ordering: false })}>
          <SchedulePane />
        </ApartPane>
      )}
      {brought && (
        <ApartPane onClose={() => store.setState({ brought: null })}>
          <BroughtPane />
        </ApartPane>
      )}
      {keysHelp && <KeysHelp onClose={() => store.setState({ keysHelp: false })} />}
      <ShowroomDialogs />
    </>
  );
}
