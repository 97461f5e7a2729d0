import type { StoreApi } from 'zustand/vanilla';
import type { Viewpoint } from '../engine/light/types';
import { atEyeHeight, type EyeHeights, withEyeHeight } from './eye-height';
import { lookedFrom } from './scene';
import type { AppState } from './state';

/** Goes to a viewpoint, also back to the one that is chosen. */
export function goTo(store: StoreApi<AppState>, viewpoint: string): void {
  store.setState((state) => ({ ...lookedFrom(state, viewpoint), movedEye: null }));
}

/** Changes how high eyes are; the camera rises or sinks where it is. */
export function setEyes(store: StoreApi<AppState>, eyes: EyeHeights): void {
  store.setState(({ heightVersion, movedEye, room, viewpoint }) => {
    const place = room?.viewpoints.find((one) => one.id === viewpoint);
    const height = place && atEyeHeight(eyes, place).eye[2];
    return {
      eyes,
      heightVersion: heightVersion + 1,
      movedEye: movedEye && height !== undefined ? [movedEye[0], movedEye[1], height] : movedEye,
    };
  });
}

/** Another height, mm, for whom it is set now. */
export function setEyeHeight(store: StoreApi<AppState>, viewpoint: Viewpoint, height_mm: number): void {
  setEyes(store, withEyeHeight(store.getState().eyes, viewpoint, height_mm));
}
