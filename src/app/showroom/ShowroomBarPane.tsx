import { useSyncExternalStore } from 'react';
import { redoLabel, undoLabel } from '../../model/history';
import { ShowroomBar } from '../../ui/showroom/ShowroomBar';
import { useApp, useAppState } from '../context';
import { OfflinePane } from '../offline/OfflinePane';
import { projectOf, shownOption } from '../state';
import { canFillScreen, isFullScreen, onFullScreen, toggleFullScreen } from './full-screen';
import { turnShowroomOff } from './kept-showroom';
import { startOver } from './start-over';

/** The bar while the showroom mode is on. */
export function ShowroomBarPane() {
  const { store, actions } = useApp();
  const name = useAppState((state) => state.showroom?.name ?? '');
  const options = useAppState((state) => projectOf(state).options);
  const history = useAppState((state) => state.history);
  const tried = useAppState((state) => state.tryOut?.label ?? null);
  const shown = useAppState(shownOption);
  const holding = useAppState((state) => state.holding);
  const sideBySide = useAppState((state) => state.sideBySide);
  const bringBack = useAppState((state) => state.bringBack);
  const isFilled = useSyncExternalStore(onFullScreen, isFullScreen);
  return (
    <ShowroomBar
      name={name}
      optionSwitch={{
        options,
        chosen: shown.id,
        holding,
        onChoose: (option) => store.setState({ option }),
        onHold: (holding) => store.setState({ holding }),
      }}
      sideBySide={sideBySide}
      onSideBySide={(sideBySide) => store.setState({ sideBySide })}
      undoLabel={tried ?? undoLabel(history)}
      redoLabel={redoLabel(history)}
      onUndo={actions.undo}
      onRedo={actions.redo}
      onList={() => store.setState({ listing: true })}
      onStartOver={() => startOver(store)}
      onBringBack={bringBack}
      staff={{
        onFullScreen: canFillScreen() ? toggleFullScreen : null,
        isFullScreen: isFilled,
        onLeave: () => {
          turnShowroomOff();
          location.reload();
        },
        about: <OfflinePane />,
      }}
    />
  );
}
