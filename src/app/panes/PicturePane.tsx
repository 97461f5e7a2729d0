import { lazy, Suspense, useMemo, useRef } from 'react';
import type { SurfaceId } from '../../engine/surface';
import type { Option } from '../../model/project';
import { FlatElevation } from '../../ui/elevation/FlatElevation';
import { useMedia } from '../../ui/parts/use-media';
import { PictureFoot } from '../../ui/picture/PictureFoot';
import { PicturePlaceholder, PictureStage } from '../../ui/picture/PictureStage';
import { PICTURE, settingShortName } from '../../ui/words/picture';
import type { PickedPoint } from '../../view/types';
import { hasWebGl2 } from '../../view/webgl2';
import { useApp, useAppState } from '../context';
import { halvesOf, isSplitWanted, projectOf, shownOption, shownSetting } from '../state';
import { useOptionPaints } from '../use-option-paints';

const Picture = lazy(() => import('../../view/Picture').then((view) => ({ default: view.Picture })));

export function PicturePane() {
  const { store, actions } = useApp();
  const state = useAppState((all) => all);
  const { room } = state;
  const setting = shownSetting(state);
  const viewpoint = room?.viewpoints.find((one) => one.id === state.viewpoint) ?? room?.viewpoints[0];
  const [left, right] = halvesOf(state);
  return (
    <PictureStage
      picture={hasWebGl2() ? <RoomPicture /> : <FlatPicture />}
      message={state.contextLost ? PICTURE.contextLost : hasWebGl2() ? null : PICTURE.noWebGl}
      halves={isSplitWanted(state) ? [left.name, right.name] : null}
      foot={
        <PictureFoot
          viewpoints={hasWebGl2() ? (room?.viewpoints ?? []) : []}
          viewpoint={viewpoint?.id ?? ''}
          onViewpoint={(id) =>
            store.setState((before) => ({ viewpoint: id, viewpointVersion: before.viewpointVersion + 1 }))
          }
          settings={projectOf(state).settings}
          setting={setting}
          onSetting={(id) => store.setState({ setting: id })}
          onLevel={actions.setLevel}
          onLamp={actions.setLamp}
        />
      }
    />
  );
}

function RoomPicture() {
  const { store } = useApp();
  const state = useAppState((all) => all);
  const reducedMotion = useMedia('(prefers-reduced-motion: reduce)');
  const { room, light } = state;
  const option = shownOption(state);
  const [left, right] = halvesOf(state);
  const isSplit = isSplitWanted(state) && state.looks[left.id] && state.looks[right.id];
  const look = state.looks[isSplit ? left.id : option.id];
  const beside = isSplit ? state.looks[right.id] : null;
  const pressedRight = useRef(false);
  const viewpoint = room?.viewpoints.find((one) => one.id === state.viewpoint);
  const outlined = useMemo(() => {
    const wanted: readonly SurfaceId[] = state.pointed.length > 0 || !state.reading ? state.pointed : [state.reading];
    return wanted.map((surface) => room?.surfaces.indexOf(surface) ?? -1).filter((index) => index >= 0);
  }, [state.pointed, state.reading, room]);

  const onPick = (point: PickedPoint | null) => {
    const surface = point && room?.surfaces[point.surface];
    if (!point || !surface) return;
    const pressed = !isSplit ? option : pressedRight.current ? right : left;
    store.setState({ option: pressed.id, reading: surface, picked: point });
  };

  if (!room || !light || !look || !viewpoint) return <PicturePlaceholder text={PICTURE.working} />;
  const settingName = settingShortName(shownSetting(state).name);
  return (
    <Suspense fallback={<PicturePlaceholder text={PICTURE.loading} />}>
      <div
        className="stage-fill"
        onPointerDownCapture={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          pressedRight.current = event.clientX > box.left + box.width / 2;
        }}
      >
        <Picture
          room={room}
          light={light}
          look={look}
          beside={beside}
          viewpoint={viewpoint}
          viewpointVersion={state.viewpointVersion}
          reducedMotion={reducedMotion}
          sheen={state.sheen}
          outlined={outlined}
          onPick={onPick}
          onContextLost={() => store.setState({ contextLost: true })}
          onContextRestored={() => store.setState({ contextLost: false })}
          label={
            beside
              ? PICTURE.labelBeside(left.name, right.name, settingName, viewpoint.name)
              : PICTURE.label(option.name, settingName, viewpoint.name)
          }
        />
      </div>
    </Suspense>
  );
}

/** The flat drawing of the shown option, or of both beside each other. */
function FlatPicture() {
  const state = useAppState((all) => all);
  const halves = halvesOf(state);
  const options = isSplitWanted(state) ? halves : [shownOption(state)];
  return (
    <div className="stage-flat">
      {options.map((option) => (
        <FlatOption key={option.id} option={option} />
      ))}
    </div>
  );
}

function FlatOption({ option }: { readonly option: Option }) {
  const { store } = useApp();
  const state = useAppState((all) => all);
  const paintOf = useOptionPaints(option);
  return (
    <FlatElevation
      kitchen={projectOf(state).kitchen}
      paintOf={paintOf}
      outlined={state.pointed.length > 0 || !state.reading ? state.pointed : [state.reading]}
      onPick={(reading) => store.setState({ option: option.id, reading, picked: null })}
    />
  );
}
