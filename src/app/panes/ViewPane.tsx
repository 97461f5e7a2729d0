import { ViewPanel } from '../../ui/picture/ViewPanel';
import { hasWebGl2 } from '../../view/webgl2';
import { useApp, useAppState } from '../context';
import { atItsOwnHeight, eyeHeight_mm, LEAST_EYE_MM, MOST_EYE_MM } from '../eye-height';
import { goTo, setEyeHeight, setEyes } from '../look-from';
import { drawnScene } from '../scene';
import { lengthUnitOf } from '../state';
import { KeepPane } from './KeepPane';

const MM_PER_M = 1000;

/** The panel of how one looks at the room. */
export function ViewPane() {
  const { store } = useApp();
  const shownAs = useAppState((state) => state.shownAs);
  const marksClipped = useAppState((state) => state.marksClipped);
  const isShowroom = useAppState((state) => state.showroom !== null);
  const eyes = useAppState((state) => state.eyes);
  const moved = useAppState((state) => state.movedEye);
  const unit = useAppState(lengthUnitOf);
  const isRoom = useAppState((state) => drawnScene(state).id === 'room');
  const viewpoint = useAppState((state) => state.room?.viewpoints.find((one) => one.id === state.viewpoint));
  return (
    <ViewPanel
      eye={
        viewpoint && isRoom && hasWebGl2()
          ? {
              of: eyes.of,
              onOf: (of) => setEyes(store, of === 'place' ? atItsOwnHeight(eyes, viewpoint.id) : { ...eyes, of }),
              height_mm: moved ? Math.round(moved[2] * MM_PER_M) : eyeHeight_mm(eyes, viewpoint),
              least_mm: LEAST_EYE_MM,
              most_mm: MOST_EYE_MM,
              onHeight: (height_mm) => setEyeHeight(store, viewpoint, height_mm),
              unit,
              onUnit: (lengthUnit) => store.setState({ lengthUnit }),
              isMoved: moved !== null,
              onBack: () => goTo(store, viewpoint.id),
            }
          : null
      }
      shownAs={shownAs}
      onShownAs={(next) => store.setState({ shownAs: next })}
      marksClipped={marksClipped}
      onMarksClipped={(on) => store.setState({ marksClipped: on })}
      keep={isShowroom ? null : <KeepPane />}
      onClose={() => store.setState({ panel: null })}
    />
  );
}
