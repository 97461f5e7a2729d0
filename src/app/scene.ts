import type { Look, RoomLight } from '../kitchen/look';
import type { StandChoice } from '../kitchen/stand/types';
import type { StandReadings } from '../kitchen/study/stand-samples';
import type { Room } from '../kitchen/types';
import type { SeenStand } from '../workers/studio';

/** What the picture is of: the room, or its finishes as samples on a stand in the same light. */
export type SceneId = 'room' | 'stand';

/** The sample stand as the workers last said, looks and readings by option. */
interface Stand {
  readonly room: Room;
  readonly light: RoomLight;
  readonly looks: Readonly<Record<string, Look>>;
  readonly readings: Readonly<Record<string, StandReadings | null>>;
}

/** What the page knows of the two scenes. */
export interface SceneState {
  readonly scene: SceneId;
  readonly standChoice: StandChoice;
  readonly standViewpoint: string | null;
  readonly stand: Stand | null;
  /** The stand on screen is not what is asked for. */
  readonly isStandOld: boolean;
}

export const SCENE_AT_START: SceneState = {
  scene: 'room',
  standChoice: { backing: 'gray', arrangement: 'as-in-room' },
  standViewpoint: null,
  stand: null,
  isStandOld: false,
};

/** The page's state as far as scenes go. */
interface Scenes extends SceneState {
  readonly room: Room | null;
  readonly light: RoomLight | null;
  readonly looks: Readonly<Record<string, Look>>;
  readonly viewpoint: string | null;
  readonly viewpointVersion: number;
}

/** The scene to draw: the stand where that is chosen and there is one. */
export function drawnScene(state: Scenes): {
  readonly id: SceneId;
  readonly room: Room | null;
  readonly light: RoomLight | null;
  readonly looks: Readonly<Record<string, Look>>;
  readonly viewpoint: string | null;
} {
  const { stand } = state;
  if (state.scene === 'stand' && stand) return { id: 'stand', ...stand, viewpoint: state.standViewpoint };
  const { room, light, looks, viewpoint } = state;
  return { id: 'room', room, light, looks, viewpoint };
}

/**
 * The room on screen is that of before, and the workers have the next: a place picked on it is none of theirs, and goes with it.
 */
export const isRoomOutdated = (state: Scenes & { readonly isRoomComing: boolean }): boolean =>
  state.isRoomComing && drawnScene(state).id === 'room';

/** Looks from another place of the scene on screen, or from the same once more. */
export const lookedFrom = (state: Scenes, viewpoint: string): Partial<Scenes> => ({
  ...(drawnScene(state).id === 'stand' ? { standViewpoint: viewpoint } : { viewpoint }),
  viewpointVersion: state.viewpointVersion + 1,
});

/** Goes to the other scene: a place chosen in one is none of the other. */
export const sceneChanged = (scene: SceneId) => ({
  scene,
  picked: null,
  point: null,
  aim: null,
  isStandOld: scene === 'stand',
});

/** Another backing or arrangement. */
export const standChanged = (state: Scenes, choice: Partial<StandChoice>): Partial<SceneState> => ({
  standChoice: { ...state.standChoice, ...choice },
  isStandOld: true,
});

/** Takes over what the workers say of the stand. */
export function standSeen(
  state: Scenes,
  { room, light, look, readings }: SeenStand,
  isCurrent: boolean,
): Partial<Scenes> & { readonly picked?: null } {
  const before = state.stand?.room === room ? state.stand : null;
  const isNew = before === null;
  return {
    stand: {
      room,
      light,
      looks: { ...before?.looks, [look.option]: look },
      readings: { ...before?.readings, [look.option]: readings },
    },
    isStandOld: state.isStandOld && !isCurrent,
    standViewpoint: room.viewpoints.some(({ id }) => id === state.standViewpoint)
      ? state.standViewpoint
      : room.viewpoints[0]!.id,
    ...(isNew && state.scene === 'stand' ? { picked: null, viewpointVersion: state.viewpointVersion + 1 } : {}),
  };
}
