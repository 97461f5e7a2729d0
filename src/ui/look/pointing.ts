import type { SurfaceId } from '../../engine/surface';

/** Outlines surfaces in the picture while something is pointed at or has the focus. */
export const pointing = (surfaces: readonly SurfaceId[], onPoint: (surfaces: readonly SurfaceId[]) => void) => ({
  onPointerEnter: () => onPoint(surfaces),
  onPointerLeave: () => onPoint([]),
  onFocus: () => onPoint(surfaces),
  onBlur: () => onPoint([]),
});
