import { type Frame, texelSize } from './frame';
import { HEXAGON_ROW, type PieceGrid } from './pieces';

/** Outward normals of a hexagon's sides, flat sides upright. */
const NORMALS = [
  [1, 0],
  [0.5, HEXAGON_ROW],
  [-0.5, HEXAGON_ROW],
  [-1, 0],
  [-0.5, -HEXAGON_ROW],
  [0.5, -HEXAGON_ROW],
] as const;

/** Part of each texel's area that lies on the hexagons of a grid: the texel clipped by each hexagon's sides, exactly. */
export function coverHexagons(frame: Frame, grid: PieceGrid): Float32Array {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const [ms, mt] = grid.module_mm;
  const reach = (ms - grid.joint_mm) / 2;
  const corner = reach / HEXAGON_ROW;
  const cover = new Float32Array(width * height);
  for (let r = 0; r < grid.rows; r++) {
    for (let c = 0; c < grid.columns; c++) {
      const s = (c + 0.5 * (r % 2)) * ms;
      const t = r * mt;
      const right = Math.ceil((s + reach) / ds);
      const top = Math.ceil((t + corner) / dt);
      for (let y = Math.floor((t - corner) / dt); y < top; y++) {
        const row = (((y % height) + height) % height) * width;
        for (let x = Math.floor((s - reach) / ds); x < right; x++) {
          const part = coveredPart(x * ds - s, y * dt - t, ds, dt, reach);
          if (part > 0) cover[row + (((x % width) + width) % width)]! += part;
        }
      }
    }
  }
  return cover;
}

let corners = new Float64Array(32);
let clipped = new Float64Array(32);

/** Part of the rectangle from (s, t) that lies in the hexagon round the origin with flats at distance `reach`. */
function coveredPart(s: number, t: number, ds: number, dt: number, reach: number): number {
  const [cs, ct] = [s + ds / 2, t + dt / 2];
  let crossing = 0;
  for (let n = 0; n < 6; n++) {
    const [a, b] = NORMALS[n]!;
    const inside = reach - a * cs - b * ct;
    const half = (Math.abs(a) * ds + Math.abs(b) * dt) / 2;
    if (inside <= -half) return 0;
    if (inside < half) crossing |= 1 << n;
  }
  if (crossing === 0) return 1;
  let count = 4;
  corners.set([s, t, s + ds, t, s + ds, t + dt, s, t + dt]);
  for (let n = 0; n < 6; n++) {
    if (!(crossing & (1 << n))) continue;
    count = clip(count, NORMALS[n]![0], NORMALS[n]![1], reach);
    [corners, clipped] = [clipped, corners];
  }
  let area = 0;
  for (let k = 0; k < count; k++) {
    const next = (k + 1) % count;
    area += corners[2 * k]! * corners[2 * next + 1]! - corners[2 * next]! * corners[2 * k + 1]!;
  }
  return area / 2 / (ds * dt);
}

/** Cuts the polygon in `corners` at a s + b t = reach, keeps the inner side in `clipped` and returns its corner count. */
function clip(count: number, a: number, b: number, reach: number): number {
  let kept = 0;
  for (let k = 0; k < count; k++) {
    const [s, t] = [corners[2 * k]!, corners[2 * k + 1]!];
    const next = (k + 1) % count;
    const [s1, t1] = [corners[2 * next]!, corners[2 * next + 1]!];
    const here = reach - a * s - b * t;
    const there = reach - a * s1 - b * t1;
    if (here >= 0) {
      clipped[2 * kept] = s;
      clipped[2 * kept++ + 1] = t;
    }
    if (here * there < 0) {
      const f = here / (here - there);
      clipped[2 * kept] = s + f * (s1 - s);
      clipped[2 * kept++ + 1] = t + f * (t1 - t);
    }
  }
  return kept;
}
