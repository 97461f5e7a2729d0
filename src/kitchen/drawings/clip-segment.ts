import type { Coursing, Point } from './types';

/** What lies of a line within a rectangle; none where it is outside (Liang and Barsky 1984). */
export function clipped(
  [[x0, y0], [x1, y1]]: readonly [Point, Point],
  { x, y, width, height }: Coursing['field'],
): (readonly [Point, Point])[] {
  const [dx, dy] = [x1 - x0, y1 - y0];
  let [from, to] = [0, 1];
  for (const [way, room] of [
    [-dx, x0 - x],
    [dx, x + width - x0],
    [-dy, y0 - y],
    [dy, y + height - y0],
  ] as const) {
    if (way === 0) {
      if (room < 0) return [];
    } else if (way < 0) from = Math.max(from, room / way);
    else to = Math.min(to, room / way);
  }
  if (to - from < 1e-9) return [];
  const at = (share: number): Point => [x0 + share * dx, y0 + share * dy];
  return [[at(from), at(to)]];
}
