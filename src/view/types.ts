import type { Vec3, Viewpoint } from '../engine/light/types';
import type { Look, RoomLight } from '../kitchen/look';
import type { Room } from '../kitchen/types';

export interface PickedPoint {
  readonly rect: number;
  readonly surface: number;
  /** Along the rectangle's u and v edge, 0-1. */
  readonly u: number;
  readonly v: number;
  readonly point: Vec3;
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
  readonly reducedMotion: boolean;
  readonly sheen: boolean;
  /** Surfaces to outline. */
  readonly outlined: readonly number[];
  readonly onPick?: (point: PickedPoint | null) => void;
  readonly onContextLost?: () => void;
  readonly onContextRestored?: () => void;
  readonly onFrame?: () => void;
  readonly label: string;
}
