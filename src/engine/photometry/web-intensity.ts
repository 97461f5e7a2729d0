import type { PhotometricWeb } from './types';

/**
 * Luminous intensity of a web in cd, bilinear between its angles. `vertical_deg` 0-180 from straight down, any
 * `horizontal_deg`; the symmetry follows from the web's last horizontal angle. 0 beyond its vertical angles.
 */
export function intensityOf(web: PhotometricWeb, vertical_deg: number, horizontal_deg: number): number {
  const { vertical_deg: vertical, horizontal_deg: horizontal, candela } = web;
  const rows = vertical.length;
  if (!(vertical_deg >= vertical[0]! && vertical_deg <= vertical[rows - 1]!)) return 0;
  const i = intervalOf(vertical, vertical_deg);
  const fv = (vertical_deg - vertical[i]!) / (vertical[i + 1]! - vertical[i]!);
  const last = horizontal[horizontal.length - 1]!;
  if (last === 0) return candela[i]! + (candela[i + 1]! - candela[i]!) * fv;
  const folded = foldHorizontal(horizontal_deg, last);
  const j = intervalOf(horizontal, folded);
  const fh = (folded - horizontal[j]!) / (horizontal[j + 1]! - horizontal[j]!);
  const at = j * rows + i;
  const here = candela[at]! + (candela[at + 1]! - candela[at]!) * fv;
  const next = candela[at + rows]! + (candela[at + rows + 1]! - candela[at + rows]!) * fv;
  return here + (next - here) * fh;
}

/** Any horizontal angle as one of 0 to `last` (90, 180, 360) that has the same intensities by symmetry. */
function foldHorizontal(horizontal_deg: number, last: number): number {
  const full = horizontal_deg - 360 * Math.floor(horizontal_deg / 360);
  if (last > 180) return full;
  const half = full > 180 ? 360 - full : full;
  return last > 90 || half <= 90 ? half : 180 - half;
}

/** Index i of the interval angles[i] .. angles[i + 1] that holds `angle`: a guess for even steps, then bisection. */
function intervalOf(angles: Float64Array, angle: number): number {
  const end = angles.length - 2;
  const first = angles[0]!;
  const guess = Math.floor(((angle - first) / (angles[end + 1]! - first)) * (end + 1));
  const i = Math.max(0, Math.min(guess, end));
  if (angles[i]! <= angle && angle <= angles[i + 1]!) return i;
  let low = 0;
  let high = end;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (angles[middle]! <= angle) low = middle;
    else high = middle - 1;
  }
  return low;
}
