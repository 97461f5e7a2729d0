import { KeysHelp } from '../ui/bar/KeysHelp';
import { ErrorBoundary } from '../ui/parts/ErrorBoundary';
import { ProblemBanner } from '../ui/parts/ProblemBanner';
import { Screen } from '../ui/Screen';
import { PROBLEMS } from '../ui/words/problems';
import { useApp, useAppState } from './context';
import { saveProject } from './files';
import { BarPane } from './panes/BarPane';
import { DrawerPane } from './panes/DrawerPane';
import { FindingsPane } from './panes/FindingsPane';
import { LedgePane } from './panes/LedgePane';
import { PicturePane } from './panes/PicturePane';
import { projectOf } from './state';

/** The parts of the screen, each behind its own boundary so that a bug in one leaves the rest usable. */
export function AppScreen() {
  const { store } = useApp();
  const problem = useAppState((state) => state.problem);
  const drawer = useAppState((state) => state.drawer);
  const keysHelp = useAppState((state) => state.keysHelp);
  const save = () => saveProject(projectOf(store.getState()));
  return (
    <>
      <Screen
        bar={<BarPane />}
        banner={
          problem && (
            <ProblemBanner problem={problem} onSave={save} onDismiss={() => store.setState({ problem: null })} />
          )
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
              <DrawerPane surface={drawer} />
            </ErrorBoundary>
          )
        }
        findings={
          <ErrorBoundary text={PROBLEMS.panelBroke} onSave={save}>
            <FindingsPane />
          </ErrorBoundary>
        }
      />
      {keysHelp && <KeysHelp onClose={() => store.setState({ keysHelp: false })} />}
    </>
  );
}
