import { lazy, Suspense, useMemo, useRef } from 'react';
import type { SurfaceId } from '../../engine/surface';
import type { Lamp, Option } from '../../model/project';
import { FlatElevation } from '../../ui/elevation/FlatElevation';
import { useMedia } from '../../ui/parts/use-media';
import { PictureFoot } from '../../ui/picture/PictureFoot';
import { PicturePlaceholder, PictureStage } from '../../ui/picture/PictureStage';
import { SeenByNotice } from '../../ui/picture/SeenBy';
import { PICTURE, settingShortName } from '../../ui/words/picture';
import type { PickedPoint } from '../../view/types';
import { hasWebGl2 } from '../../view/webgl2';
import { useApp, useAppState } from '../context';
import { openLamp } from '../lamp-files';
import { halvesOf, isSplitWanted, projectOf, shownOption, shownSetting } from '../state';
import { useOptionPaints } from '../use-option-paints';

const Picture = lazy(() => import('../../view/Picture').then((view) => ({ default: view.Picture })));

/** One list for all projects without lamps, so that nothing seems to change. */
const NO_LAMPS: readonly Lamp[] = [];

export function PicturePane() {
  const { store, actions } = useApp();
  const room = useAppState((state) => state.room);
  const settings = useAppState((state) => projectOf(state).settings);
  const setting = useAppState(shownSetting);
  const lamps = useAppState((state) => projectOf(state).lamps) ?? NO_LAMPS;
  const chosen = useAppState((state) => state.viewpoint);
  const contextLost = useAppState((state) => state.contextLost);
  const busy = useAppState((state) => !state.light?.isFinal);
  const halves = useHalves();
  const viewpoint = room?.viewpoints.find((one) => one.id === chosen) ?? room?.viewpoints[0];
  return (
    <PictureStage
      picture={hasWebGl2() ? <RoomPicture /> : <FlatPicture />}
      busy={busy}
      message={contextLost ? PICTURE.contextLost : hasWebGl2() ? null : PICTURE.noWebGl}
      halves={halves && [halves[0].name, halves[1].name]}
      foot={
        <PictureFoot
          viewpoints={hasWebGl2() ? (room?.viewpoints ?? []) : []}
          viewpoint={viewpoint?.id ?? ''}
          onViewpoint={(id) =>
            store.setState((before) => ({ viewpoint: id, viewpointVersion: before.viewpointVersion + 1 }))
          }
          settings={settings}
          setting={setting}
          onSetting={(id) => store.setState({ setting: id })}
          onLevel={actions.setLevel}
          onLamp={actions.setLamp}
          lamps={lamps}
          onOpenLamp={(file) => void openLamp(store, actions, file)}
        />
      }
    />
  );
}

/** The two options beside each other, or null while one alone is to be seen. */
function useHalves(): readonly [left: Option, right: Option] | null {
  const isSplit = useAppState(isSplitWanted);
  const left = useAppState((state) => halvesOf(state)[0]);
  const right = useAppState((state) => halvesOf(state)[1]);
  return isSplit ? [left, right] : null;
}

/** The surfaces to outline: those pointed at, else the one whose reading is open. */
const useOutlined = (): readonly SurfaceId[] => {
  const pointed = useAppState((state) => state.pointed);
  const reading = useAppState((state) => state.reading);
  return useMemo(() => (pointed.length > 0 || !reading ? pointed : [reading]), [pointed, reading]);
};

function RoomPicture() {
  const { store } = useApp();
  const reducedMotion = useMedia('(prefers-reduced-motion: reduce)');
  const room = useAppState((state) => state.room);
  const light = useAppState((state) => state.light);
  const looks = useAppState((state) => state.looks);
  const option = useAppState(shownOption);
  const chosen = useAppState((state) => state.viewpoint);
  const viewpointVersion = useAppState((state) => state.viewpointVersion);
  const sheen = useAppState((state) => state.sheen);
  const seenBy = useAppState((state) => state.seenBy);
  const setting = useAppState(shownSetting);
  const halves = useHalves();
  const wanted = useOutlined();
  const split = halves && looks[halves[0].id] && looks[halves[1].id] ? halves : null;
  const look = looks[split ? split[0].id : option.id];
  const beside = split ? looks[split[1].id] : null;
  const pressedRight = useRef(false);
  const viewpoint = room?.viewpoints.find((one) => one.id === chosen);
  const outlined = useMemo(
    () => wanted.map((surface) => room?.surfaces.indexOf(surface) ?? -1).filter((index) => index >= 0),
    [wanted, room],
  );

  const onPick = (point: PickedPoint | null) => {
    const surface = point && room?.surfaces[point.surface];
    if (!point || !surface) return;
    const pressed = split ? split[pressedRight.current ? 1 : 0] : option;
    store.setState({ option: pressed.id, reading: surface, picked: point });
  };

  if (!room || !light || !look || !viewpoint) return <PicturePlaceholder text={PICTURE.working} />;
  const settingName = settingShortName(setting.name);
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
          viewpointVersion={viewpointVersion}
          reducedMotion={reducedMotion}
          sheen={sheen}
          outlined={outlined}
          onPick={onPick}
          onContextLost={() => store.setState({ contextLost: true })}
          onContextRestored={() => store.setState({ contextLost: false })}
          label={
            split
              ? PICTURE.labelBeside(split[0].name, split[1].name, settingName, viewpoint.name)
              : PICTURE.label(option.name, settingName, viewpoint.name)
          }
        />
        <SeenByNotice seenBy={seenBy} />
      </div>
    </Suspense>
  );
}

/** The flat drawing of the shown option, or of both beside each other. */
function FlatPicture() {
  const shown = useAppState(shownOption);
  const options = useHalves() ?? [shown];
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
  const kitchen = useAppState((state) => projectOf(state).kitchen);
  const outlined = useOutlined();
  const paintOf = useOptionPaints(option);
  return (
    <FlatElevation
      kitchen={kitchen}
      paintOf={paintOf}
      outlined={outlined}
      onPick={(reading) => store.setState({ option: option.id, reading, picked: null })}
    />
  );
}
