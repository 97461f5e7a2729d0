import type { FrameParts, Half } from './frame-parts';
import type { MirrorView } from './plane-mirrors';

/** Draws the mirrors of one half for the camera as it stands now; `area` is where on the output that half will be drawn. */
export function drawPlanes(
  { renderer, scene, camera, sheen }: FrameParts,
  { slot, group }: Half,
  area: MirrorView['area'],
): void {
  if (sheen) slot.planes.draw({ renderer, scene, camera, shown: group, area });
  else slot.planes.clear();
}
