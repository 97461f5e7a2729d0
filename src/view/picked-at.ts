import type { CameraRig } from './camera-rig';
import { pickRect } from './pick';
import { rayThrough } from './projection';
import type { PickedPoint, PictureProps } from './types';

/** What lies under a point of the canvas (client px); null = nothing with a finish (an opening, a lamp, a window). */
export function pickedAt(
  canvas: HTMLCanvasElement,
  rig: CameraRig,
  { room, beside }: Pick<PictureProps, 'room' | 'beside'>,
  clientX: number,
  clientY: number,
): PickedPoint | null {
  const box = canvas.getBoundingClientRect();
  const halves = beside ? 2 : 1;
  const width = box.width / halves;
  const x = ((clientX - box.left) % width) / width;
  const y = (clientY - box.top) / box.height;
  const pose = rig.poseAt(performance.now());
  const direction = rayThrough(pose, width / box.height, 2 * x - 1, 1 - 2 * y);
  const hit = pickRect(room.light.fine, pose.eye, direction);
  if (!hit) return null;
  const surface = room.light.fine[hit.rect]!.surface;
  if (surface < 0) return null;
  const { eye } = pose;
  return {
    rect: hit.rect,
    surface,
    u: hit.u,
    v: hit.v,
    point: [
      eye[0] + hit.distance * direction[0],
      eye[1] + hit.distance * direction[1],
      eye[2] + hit.distance * direction[2],
    ],
    eye,
  };
}
