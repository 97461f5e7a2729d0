import { lazy, Suspense, useMemo, useRef } from 'react';
import type { Viewpoint } from '../../engine/light/types';
import type { SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import type { Lamp, Option } from '../../model/project';
import { FlatElevation } from '../../ui/elevation/FlatElevation';
import { useMedia } from '../../ui/parts/use-media';
import { AimCross } from '../../ui/picture/AimCross';
import { ModeNotice } from '../../ui/picture/ModeNotice';
import { PictureFoot } from '../../ui/picture/PictureFoot';
import { PicturePlaceholder, PictureStage } from '../../ui/picture/PictureStage';
import { SeenByNotice } from '../../ui/picture/SeenBy';
import { standSentence } from '../../ui/stand/stand-sentence';
import { PICTURE, settingShortName } from '../../ui/words/picture';
import { retold } from '../../ui/words/spoken';
import { SAMPLE_STAND } from '../../ui/words/stand';
import type { PickedPoint } from '../../view/types';
import { hasWebGl2 } from '../../view/webgl2';
import { useApp, useAppState } from '../context';
import { darknessOf } from '../dark-room';
import { atEyeHeight } from '../eye-height';
import { chooseLight, holdLight, releaseLight } from '../light-hold';
import { goTo } from '../look-from';
import { openDrawer } from '../open-drawer';
import { drawnScene, sceneChanged, standChanged } from '../scene';
import { halvesOf, isPictureOld, isSplitWanted, projectOf, shownOption, shownSetting } from '../state';
import { useAim } from '../use-aim';
import { useLampGroups } from '../use-lamp-groups';
import { useOptionPaints } from '../use-option-paints';

const Picture = lazy(() => import('../../view/Picture').then((view) => ({ default: view.Picture })));

/** One list each for all that is not there, so that nothing seems to change. */
const NO_LAMPS: readonly Lamp[] = [];
const NO_SURFACES: readonly SurfaceId[] = [];

export function PicturePane() {
  const { store, actions } = useApp();
  const room = useAppState((state) => drawnScene(state).room);
  const settings = useAppState((state) => projectOf(state).settings);
  const setting = useAppState(shownSetting);
  const lamps = useAppState((state) => projectOf(state).lamps) ?? NO_LAMPS;
  const chosen = useAppState((state) => drawnScene(state).viewpoint);
  const scene = useAppState((state) => state.scene);
  const standChoice = useAppState((state) => state.standChoice);
  const standNote = useStandNote();
  const contextLost = useAppState((state) => state.contextLost);
  const isOld = useAppState(isPictureOld);
  const isRefined = useAppState((state) => drawnScene(state).light?.isFinal ?? false);
  const darkness = useAppState((state) => darknessOf(projectOf(state).kitchen, shownSetting(state)));
  const groups = useLampGroups();
  const panel = useAppState((state) => state.panel);
  const halves = useHalves();
  const viewpoint = room?.viewpoints.find((one) => one.id === chosen) ?? room?.viewpoints[0];
  return (
    <PictureStage
      picture={hasWebGl2() ? <RoomPicture /> : <FlatPicture />}
      busy={isOld || !isRefined}
      isOld={isOld && room !== null}
      note={darkness ? PICTURE.dark[darkness] : standNote}
      shown={<ShownNotice />}
      message={contextLost ? PICTURE.contextLost : hasWebGl2() ? null : PICTURE.noWebGl}
      halves={halves && [halves[0].name, halves[1].name]}
      foot={
        <PictureFoot
          viewpoints={hasWebGl2() ? (room?.viewpoints ?? []).map((one) => ({ ...one, name: retold(one.name) })) : []}
          viewpoint={viewpoint?.id ?? ''}
          onViewpoint={(id) => goTo(store, id)}
          scene={scene}
          onScene={(next) => store.setState({ ...sceneChanged(next), movedEye: null })}
          stand={
            scene === 'stand'
              ? {
                  choice: standChoice,
                  onChoice: (choice) => store.setState((before) => standChanged(before, choice)),
                }
              : null
          }
          settings={settings}
          setting={setting}
          onSetting={(id) => chooseLight(store, id)}
          onHoldSetting={(id) => holdLight(store, id)}
          onReleaseSetting={() => releaseLight(store)}
          groups={groups}
          lamps={lamps}
          onLamp={(light, continues) => actions.setLamp(light, continues)}
          panel={panel === 'look' ? null : panel}
          onPanel={(next) => store.setState({ panel: next })}
        />
      }
    />
  );
}

/** What lying down or standing up does to the samples; null while the room is on screen. */
function useStandNote(): string | null {
  const readings = useAppState((state) =>
    drawnScene(state).id === 'stand' ? (state.stand?.readings[shownOption(state).id] ?? null) : null,
  );
  const arrangement = useAppState((state) => state.standChoice.arrangement);
  const reading = useAppState((state) => state.reading);
  return readings && standSentence(readings, arrangement, reading);
}

/** What is not as usual in the picture: gray, marks, another option or light for as long as it is held. */
function ShownNotice() {
  const { store } = useApp();
  const shownAs = useAppState((state) => state.shownAs);
  const marksClipped = useAppState((state) => state.marksClipped);
  const held = useAppState((state) => (state.holding ? shownOption(state).name : null));
  const heldLight = useAppState((state) => (state.heldLight === null ? null : shownSetting(state).name));
  return (
    <ModeNotice
      shownAs={hasWebGl2() ? shownAs : 'color'}
      marksClipped={hasWebGl2() && marksClipped}
      held={held ?? heldLight}
      onUsual={() => store.setState({ shownAs: 'color', marksClipped: false })}
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
  const scene = useAppState((state) => drawnScene(state).id);
  const room = useAppState((state) => drawnScene(state).room);
  const light = useAppState((state) => drawnScene(state).light);
  const looks = useAppState((state) => drawnScene(state).looks);
  const arrangement = useAppState((state) => state.standChoice.arrangement);
  const option = useAppState(shownOption);
  const chosen = useAppState((state) => drawnScene(state).viewpoint);
  const viewpointVersion = useAppState((state) => state.viewpointVersion);
  const sheen = useAppState((state) => state.sheen);
  const seenBy = useAppState((state) => state.seenBy);
  const setting = useAppState(shownSetting);
  const halves = useHalves();
  const wanted = useOutlined();
  const split = halves && looks[halves[0].id] && looks[halves[1].id] ? halves : null;
  const look = looks[split ? split[0].id : option.id];
  const beside = split ? looks[split[1].id] : null;
  const picked = useAppState((state) => state.picked);
  const point = useAppState((state) => state.point);
  const heldCard = useAppState((state) => state.heldCard);
  const pressedRight = useRef(false);
  const picker = useRef<((clientX: number, clientY: number) => PickedPoint | null) | null>(null);
  const eyes = useAppState((state) => state.eyes);
  const heightVersion = useAppState((state) => state.heightVersion);
  const shownAs = useAppState((state) => state.shownAs);
  const marksClipped = useAppState((state) => state.marksClipped);
  const place = room?.viewpoints.find((one) => one.id === chosen);
  const isNarrow = useMedia('(max-width: 63.99em)');
  const widening = split ? HALF_WIDENING : isNarrow ? TABLET_WIDENING : 1;
  const viewpoint = useMemo(() => {
    if (!place) return undefined;
    if (scene === 'stand') return widened(place, widening);
    return atEyeHeight(eyes, place);
  }, [place, widening, scene, eyes]);
  const outlined = useMemo(
    () => wanted.map((surface) => room?.surfaces.indexOf(surface) ?? -1).filter((index) => index >= 0),
    [wanted, room],
  );

  const onPick = (found: PickedPoint | null, isRight: boolean) => {
    const surface = found && room?.surfaces[found.surface];
    if (!found || !surface) return;
    const pressed = split ? split[isRight ? 1 : 0] : option;
    // There is nothing to read where nothing is chosen: one chooses.
    if (isEmpty(pressed.scheme[surface])) {
      store.setState({ option: pressed.id });
      openDrawer(store, surface);
      return;
    }
    store.setState({ option: pressed.id, reading: surface, picked: found, panel: null });
  };
  const { aim, said, onKeyDownCapture } = useAim(picker, split !== null, onPick);

  if (!room || !light || !look || !viewpoint) return <PicturePlaceholder text={PICTURE.working} />;
  const settingName = settingShortName(setting.name);
  const placed = SAMPLE_STAND.arrangements[arrangement];
  const standLabel = split
    ? SAMPLE_STAND.pictureBeside(split[0].name, split[1].name, settingName, placed)
    : SAMPLE_STAND.picture(option.name, settingName, placed);
  const roomLabel = split
    ? PICTURE.labelBeside(split[0].name, split[1].name, settingName, retold(viewpoint.name))
    : PICTURE.label(option.name, settingName, retold(viewpoint.name));
  return (
    <Suspense fallback={<PicturePlaceholder text={PICTURE.loading} />}>
      <div
        className="stage-fill"
        onKeyDownCapture={onKeyDownCapture}
        onPointerDownCapture={(event) => {
          if (aim) store.setState({ aim: null });
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
          heightVersion={heightVersion}
          mode={shownAs}
          marksClipped={marksClipped}
          reducedMotion={reducedMotion}
          sheen={sheen}
          outlined={outlined}
          mark={picked}
          cardColor={point?.white_srgb8 ?? null}
          card={heldCard?.paint ?? null}
          markIsRight={split?.[1].id === option.id}
          picker={picker}
          onEye={(movedEye) => store.setState({ movedEye })}
          onPick={(found) => onPick(found, pressedRight.current)}
          onContextLost={() => store.setState({ contextLost: true })}
          onContextRestored={() => store.setState({ contextLost: false })}
          label={scene === 'stand' ? standLabel : roomLabel}
        />
        {aim && <AimCross x={aim.x} y={aim.y} />}
        <p className="hidden-visually" role="status">
          {said}
        </p>
        <SeenByNotice seenBy={seenBy} />
      </div>
    </Suspense>
  );
}

/**
 * Half a picture is about as wide as high, one on a tablet little wider: the samples of a stand are to be seen whole all the same, by
 * an angle whose tangent is this many times as large.
 */
const HALF_WIDENING = 1.35;
const TABLET_WIDENING = 1.2;

const widened = (viewpoint: Viewpoint, by: number): Viewpoint =>
  by === 1
    ? viewpoint
    : { ...viewpoint, fov_deg: (360 / Math.PI) * Math.atan(by * Math.tan((viewpoint.fov_deg * Math.PI) / 360)) };

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
  const surfaces = useAppState((state) => state.room?.surfaces) ?? NO_SURFACES;
  const outlined = useOutlined();
  const paintOf = useOptionPaints(option);
  return (
    <FlatElevation
      kitchen={kitchen}
      surfaces={surfaces}
      paintOf={paintOf}
      outlined={outlined}
      onPick={(reading) => store.setState({ option: option.id, reading, picked: null })}
    />
  );
}
