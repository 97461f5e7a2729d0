import { redoLabel, undoLabel } from '../../model/history';
import { isLitByDaylight } from '../../model/lamp-settings';
import { TopBar } from '../../ui/bar/TopBar';
import { KEEPING } from '../../ui/words/keeping';
import { retold } from '../../ui/words/spoken';
import { BAR } from '../../ui/words/top-bar';
import { hasWebGl2 } from '../../view/webgl2';
import { useApp, useAppState } from '../context';
import { dropFiles } from '../drop-file';
import { saveProject } from '../files';
import { MOST_OPTIONS } from '../lay-look';
import { wordsOf } from '../manner';
import { OfflinePane } from '../offline/OfflinePane';
import { canFillScreen, toggleFullScreen } from '../showroom/full-screen';
import { projectOf, shownOption, shownSetting } from '../state';
import { applyTheme } from '../theme';

export function BarPane() {
  const { store, actions, projects } = useApp();
  const project = useAppState(projectOf);
  const keeping = useAppState((state) => state.keeping.state);
  const history = useAppState((state) => state.history);
  const tryOut = useAppState((state) => state.tryOut);
  const shown = useAppState(shownOption);
  const holding = useAppState((state) => state.holding);
  const sideBySide = useAppState((state) => state.sideBySide);
  const sheen = useAppState((state) => state.sheen);
  const seenBy = useAppState((state) => state.seenBy);
  const isDaylight = useAppState((state) => isLitByDaylight(shownSetting(state)));
  const projectsOpen = useAppState((state) => state.panel === 'projects');
  const letterKeys = useAppState((state) => state.letterKeys);
  const theme = useAppState((state) => state.theme);
  const words = useAppState(wordsOf);
  const unit = useAppState((state) => state.lengthUnit);
  return (
    <TopBar
      projectName={project.name}
      projectsOpen={projectsOpen}
      onProjects={() =>
        store.setState({ panel: projectsOpen ? null : 'projects', reading: null, picked: null, pointed: [] })
      }
      keptText={KEEPING.states[keeping]}
      isKept={keeping === 'nothing' || keeping === 'keeping' || keeping === 'kept'}
      optionSwitch={{
        options: project.options,
        chosen: shown.id,
        holding,
        onChoose: (option) => store.setState({ option }),
        onHold: (holding) => store.setState({ holding }),
      }}
      sideBySide={sideBySide}
      onSideBySide={(sideBySide) => store.setState({ sideBySide })}
      undoLabel={tryOut ? BAR.dropOf(retold(tryOut.label)) : toldOf(undoLabel(history))}
      redoLabel={tryOut ? null : toldOf(redoLabel(history))}
      onUndo={actions.undo}
      onRedo={actions.redo}
      onSchedule={() => store.setState({ ordering: true })}
      onOpen={(file) => void dropFiles(store, { actions, projects }, [file])}
      onSave={() => saveProject(store)}
      more={{
        sheen,
        onSheen: (sheen) => store.setState({ sheen }),
        seenBy: hasWebGl2() ? { seenBy, isDaylight, onSeenBy: (seenBy) => store.setState({ seenBy }) } : null,
        letterKeys,
        onLetterKeys: (letterKeys) => store.setState({ letterKeys }),
        theme,
        onTheme: (theme) => {
          applyTheme(theme);
          store.setState({ theme });
        },
        words,
        onWords: (words) => store.setState({ words }),
        unit,
        onUnit: (lengthUnit) => store.setState({ lengthUnit }),
        onKeysHelp: () => store.setState({ keysHelp: true }),
        onCopiedLook: () => store.setState({ panel: 'look', reading: null, picked: null }),
        onLibraries: () => store.setState({ libraries: true }),
        onHandover: () => store.setState({ handover: true }),
        onNewProject: () => store.setState({ asking: true }),
        onCopyOption: project.options.length < MOST_OPTIONS ? actions.copyOption : null,
        onRemoveOption: project.options.length > 1 ? actions.removeOption : null,
        about: <OfflinePane />,
        onShowroom: () => store.setState({ settingUpShowroom: true }),
        onFullScreen: canFillScreen() ? toggleFullScreen : null,
      }}
    />
  );
}

/** Steps are kept in US words, so that they follow what is chosen. */
const toldOf = (label: string | null): string | null => (label === null ? null : retold(label));
