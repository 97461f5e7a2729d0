import type { RefObject } from 'react';
import type { Vec3, Viewpoint } from '../engine/light/types';
import type { Look, RoomLight } from '../kitchen/look';
import type { PropPlace } from '../kitchen/study/place-light';
import type { Room } from '../kitchen/types';
import type { ViewMode } from './view-mode';

export interface PickedPoint {
  /** Of `room.light.fine`; -1 on a prop, whose place then is `onProp`. */
  readonly rect: number;
  readonly onProp: PropPlace | null;
  readonly surface: number;
  /** Along the rectangle's u and v edge, 0-1; 0 on a prop. */
  readonly u: number;
  readonly v: number;
  readonly point: Vec3;
  /** From where one looked. */
  readonly eye: Vec3;
}

/** A place on a rectangle of the room. */
export interface Mark {
  readonly rect: number;
  readonly u: number;
  readonly v: number;
}

/** What a card that is held shows: its size, and its colors in rows from its foot up, linear sRGB (1 = display white). */
export interface CardPaint {
  readonly size_m: readonly [width: number, height: number];
  readonly width: number;
  readonly height: number;
  readonly linear: Float32Array;
}

export interface PictureProps {
  readonly room: Room;
  readonly light: RoomLight;
  readonly look: Look;
  /** When given, the picture is split: `look` left, `beside` right, same camera. */
  readonly beside?: Look | null;
  readonly viewpoint: Viewpoint;
  /** Changes to re-fly to the viewpoint even when it is the same. */
  readonly viewpointVersion: number;
  /** Grows when the eye is to be brought to the viewpoint's height without going back there. */
  readonly heightVersion?: number;
  readonly reducedMotion: boolean;
  readonly sheen: boolean;
  /** Color, the gray of the same luminance, or lightness in ten steps; color where it is absent. */
  readonly mode?: ViewMode;
  /**
   * Hatches what the screen cannot show as bright as it is: sparse stripes where the picture darkens a place so that color and
   * pattern stay to be seen, close ones where a color still fades to white.
   */
  readonly marksClipped?: boolean;
  /** Surfaces to outline. */
  readonly outlined: readonly number[];
  /** The place that is read; null for none. */
  readonly mark?: Mark | null;
  /** What a perfect white looks like there, 8 bit sRGB: a card of it is held there. */
  readonly cardColor?: readonly [number, number, number] | null;
  /** A card held there in place of the white one. */
  readonly card?: CardPaint | null;
  /** The place that is read belongs to the right half of a split picture. */
  readonly markIsRight?: boolean;
  /** Where the eye stands after a hand or a key has moved it, m; null once the camera is brought to its viewpoint. */
  readonly onEye?: (eye: Vec3 | null) => void;
  readonly onPick?: (point: PickedPoint | null) => void;
  /** Is given a function that tells what lies under a point of the page (client px). */
  readonly picker?: RefObject<((clientX: number, clientY: number) => PickedPoint | null) | null>;
  readonly onContextLost?: () => void;
  readonly onContextRestored?: () => void;
  /** A frame was drawn; `due_ms`: after how many milliseconds another one follows by itself, null for none. */
  readonly onFrame?: (due_ms: number | null) => void;
  readonly label: string;
}
