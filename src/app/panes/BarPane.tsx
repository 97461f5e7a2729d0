import { redoLabel, undoLabel } from '../../model/history';
import { TopBar } from '../../ui/bar/TopBar';
import { useApp, useAppState } from '../context';
import { openProject, saveProject } from '../files';
import { projectOf, shownOption } from '../state';
import { applyTheme } from '../theme';

export function BarPane() {
  const { store, actions } = useApp();
  const state = useAppState((all) => all);
  const project = projectOf(state);
  return (
    <TopBar
      projectName={project.name}
      optionSwitch={{
        options: project.options,
        chosen: shownOption(state).id,
        holding: state.holding,
        onChoose: (option) => store.setState({ option }),
        onHold: (holding) => store.setState({ holding }),
      }}
      sideBySide={state.sideBySide}
      onSideBySide={(sideBySide) => store.setState({ sideBySide })}
      undoLabel={undoLabel(state.history)}
      redoLabel={redoLabel(state.history)}
      onUndo={actions.undo}
      onRedo={actions.redo}
      onOpen={(file) => void openProject(store, file)}
      onSave={() => saveProject(store)}
      more={{
        sheen: state.sheen,
        onSheen: (sheen) => store.setState({ sheen }),
        letterKeys: state.letterKeys,
        onLetterKeys: (letterKeys) => store.setState({ letterKeys }),
        theme: state.theme,
        onTheme: (theme) => {
          applyTheme(theme);
          store.setState({ theme });
        },
        onKeysHelp: () => store.setState({ keysHelp: true }),
      }}
    />
  );
}
