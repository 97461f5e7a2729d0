// Formulas: J. R. Howell, A Catalog of Radiation Heat Transfer Configuration Factors, C-11 and C-14, and the two
// differential-element factors to a rectangle seen from a corner.

/** C-11: from a rectangle a x b to an equal one that faces it at distance c. */
export function parallel(a: number, b: number, c: number): number {
  const x = a / c;
  const y = b / c;
  const sx = Math.sqrt(1 + x * x);
  const sy = Math.sqrt(1 + y * y);
  const log = 0.5 * Math.log(((1 + x * x) * (1 + y * y)) / (1 + x * x + y * y));
  const arcs = x * sy * Math.atan(x / sy) + y * sx * Math.atan(y / sx) - x * Math.atan(x) - y * Math.atan(y);
  return (2 / (Math.PI * x * y)) * (log + arcs);
}

/** C-14: from a rectangle of that depth to one of that height at a right angle, along their common edge. */
export function perpendicular(depth: number, height: number, edge: number): number {
  const w = depth / edge;
  const h = height / edge;
  const w2 = w * w;
  const h2 = h * h;
  const r = Math.sqrt(h2 + w2);
  const arcs = w * Math.atan(1 / w) + h * Math.atan(1 / h) - r * Math.atan(1 / r);
  const log =
    Math.log(((1 + w2) * (1 + h2)) / (1 + w2 + h2)) +
    w2 * Math.log((w2 * (1 + w2 + h2)) / ((1 + w2) * (w2 + h2))) +
    h2 * Math.log((h2 * (1 + w2 + h2)) / ((1 + h2) * (w2 + h2)));
  return (arcs + log / 4) / (Math.PI * w);
}

/** From a point to a rectangle a x b that it faces at distance c, one corner straight ahead. */
export const cornerParallel = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const sx = Math.sqrt(1 + x * x);
  const sy = Math.sqrt(1 + y * y);
  return ((x / sx) * Math.atan(y / sx) + (y / sy) * Math.atan(x / sy)) / (2 * Math.PI);
};

/** From a point on a plane to an upright rectangle w x h at distance d, one lower corner straight ahead on the plane. */
export const cornerUpright = (w: number, h: number, d: number): number => {
  const r = Math.hypot(d, h);
  return (Math.atan(w / d) - (d / r) * Math.atan(w / r)) / (2 * Math.PI);
};
