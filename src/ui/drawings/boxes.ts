/** A rectangle on paper, mm: x to the right, y down. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place on paper, mm: x to the right, y down. */
export type Place = readonly [x: number, y: number];

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

export const holds = (outer: Box, inner: Box): boolean =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height;

export const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});

export const around = ([x, y]: Place, width: number, height: number): Box => ({
  x: x - width / 2,
  y: y - height / 2,
  width,
  height,
});

export const middleOf = ({ x, y, width, height }: Box): Place => [x + width / 2, y + height / 2];

/** The box that just holds some places. */
export function boxOf(places: readonly Place[]): Box {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** Whether a line comes into a box. */
export function meets([[x0, y0], [x1, y1]]: readonly [Place, Place], { x, y, width, height }: Box): boolean {
  let [from, to] = [0, 1];
  for (const [way, room] of [
    [x0 - x1, x0 - x],
    [x1 - x0, x + width - x0],
    [y0 - y1, y0 - y],
    [y1 - y0, y + height - y0],
  ] as const) {
    if (way === 0 && room < 0) return false;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  return from <= to;
}

/** Whether two lines cross. */
export function cross([a, b]: readonly [Place, Place], [c, d]: readonly [Place, Place]): boolean {
  const turn = (p: Place, q: Place, r: Place): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}
