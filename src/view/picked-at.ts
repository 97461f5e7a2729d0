import type { CameraRig } from './camera-rig';
import { pickProp, pickRect } from './pick';
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
  const { eye } = pose;
  const onFace = pickRect(room.light.fine, eye, direction);
  const onProp = pickProp(room.light.props, eye, direction, onFace?.distance);
  const at = (distance: number): PickedPoint['point'] => [
    eye[0] + distance * direction[0],
    eye[1] + distance * direction[1],
    eye[2] + distance * direction[2],
  ];
  if (onProp) {
    const { prop, vertices, weights, distance } = onProp;
    const { surface } = room.light.props[prop]!;
    return { rect: -1, onProp: { prop, vertices, weights }, surface, u: 0, v: 0, point: at(distance), eye };
  }
  const surface = onFace ? room.light.fine[onFace.rect]!.surface : -1;
  if (!onFace || surface < 0) return null;
  return { rect: onFace.rect, onProp: null, surface, u: onFace.u, v: onFace.v, point: at(onFace.distance), eye };
}
