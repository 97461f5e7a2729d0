import type { Rect, Solid, Vec3 } from './types';

/** Two planes or lines nearer than this are one: joinery is not drawn finer than 0.1 mm. */
const CONTACT_M = 1e-4;
/** How far in front of a rectangle something must be clear of solids for the rectangle to see light. */
const CLEARANCE_M = 5e-4;

/** The part of a rectangle between fractions u0-u1 along its u edge and v0-v1 along its v edge. */
export function cutRect(rect: Rect, u0: number, u1: number, v0: number, v1: number): Rect {
  const { origin: o, u, v } = rect;
  const at = (k: 0 | 1 | 2): number => o[k] + u[k] * u0 + v[k] * v0;
  return {
    origin: [at(0), at(1), at(2)],
    u: scaled(u, u1 - u0),
    v: scaled(v, v1 - v0),
    surface: rect.surface,
  };
}

/**
 * Cuts each rectangle along the edge lines of the solids that touch or cross its plane on its front side, drops what
 * they bury and joins the rest back into few large rectangles. A rectangle that nothing touches comes back itself.
 * A rectangle's own solid lies behind it and so never buries it. `cut` builds a piece from fractions 0-1 along u and v,
 * so that the caller's own fields (pattern frame, piece number) can follow.
 */
export function splitContacts<T extends Rect>(
  rects: readonly T[],
  solids: readonly Solid[],
  cut: (rect: T, u0: number, u1: number, v0: number, v1: number) => T,
): T[] {
  return rects.flatMap((rect) => splitOne(rect, solids, cut));
}

function splitOne<T extends Rect>(rect: T, solids: readonly Solid[], cut: Parameters<typeof splitContacts<T>>[2]): T[] {
  const covers = coversOf(rect, solids);
  if (covers.length === 0) return [rect];
  const us = cutLines(covers, 0, CONTACT_M / length(rect.u));
  const vs = cutLines(covers, 2, CONTACT_M / length(rect.v));
  const columns = us.length - 1;
  const rows = vs.length - 1;
  const free = new Uint8Array(columns * rows);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const u = (us[i]! + us[i + 1]!) / 2;
      const v = (vs[j]! + vs[j + 1]!) / 2;
      free[j * columns + i] = covers.some((c) => u > c[0] && u < c[1] && v > c[2] && v < c[3]) ? 0 : 1;
    }
  }
  const along = joinCells(free, columns, rows, false);
  const across = joinCells(free, columns, rows, true);
  const best = along.length <= across.length ? along : across;
  return best.map(([i0, i1, j0, j1]) => cut(rect, us[i0]!, us[i1]!, vs[j0]!, vs[j1]!));
}

type Cover = readonly [u0: number, u1: number, v0: number, v1: number];

/** The solids in contact with a rectangle's front, as ranges of its u and v fractions. */
function coversOf(rect: Rect, solids: readonly Solid[]): Cover[] {
  const ua = axisOf(rect.u);
  const va = axisOf(rect.v);
  const na = (3 - ua - va) as 0 | 1 | 2;
  const plane = rect.origin[na];
  const front = normalSign(rect, na);
  const covers: Cover[] = [];
  for (const solid of solids) {
    const near = front > 0 ? solid.min[na] - plane : plane - solid.max[na];
    const far = front > 0 ? solid.max[na] - plane : plane - solid.min[na];
    if (near > CLEARANCE_M || far <= CONTACT_M) continue;
    const [u0, u1] = fractions(rect.origin[ua], rect.u[ua], solid.min[ua], solid.max[ua]);
    const [v0, v1] = fractions(rect.origin[va], rect.v[va], solid.min[va], solid.max[va]);
    if ((u1 - u0) * length(rect.u) > CONTACT_M && (v1 - v0) * length(rect.v) > CONTACT_M) covers.push([u0, u1, v0, v1]);
  }
  return covers;
}

function fractions(origin: number, edge: number, min: number, max: number): [number, number] {
  const a = (min - origin) / edge;
  const b = (max - origin) / edge;
  const clamp = (x: number): number => Math.min(1, Math.max(0, x));
  return [clamp(Math.min(a, b)), clamp(Math.max(a, b))];
}

function cutLines(covers: readonly Cover[], first: 0 | 2, tolerance: number): number[] {
  const lines = [0, 1, ...covers.flatMap((c) => [c[first], c[first + 1]!])].sort((a, b) => a - b);
  const kept = [0];
  for (const line of lines) if (line - kept[kept.length - 1]! > tolerance) kept.push(line);
  if (1 - kept[kept.length - 1]! <= tolerance && kept.length > 1) kept[kept.length - 1] = 1;
  else if (kept[kept.length - 1]! < 1) kept.push(1);
  return kept;
}

/** Greedy: from each first free cell, grow a run one way, then as far as the whole run goes the other way. */
function joinCells(
  free: Uint8Array,
  columns: number,
  rows: number,
  transposed: boolean,
): [number, number, number, number][] {
  const left = free.slice();
  const [runs, lanes] = transposed ? [rows, columns] : [columns, rows];
  const at = (run: number, lane: number): number => (transposed ? run * columns + lane : lane * columns + run);
  const blocks: [number, number, number, number][] = [];
  for (let lane = 0; lane < lanes; lane++) {
    for (let run = 0; run < runs; run++) {
      if (!left[at(run, lane)]) continue;
      let runEnd = run + 1;
      while (runEnd < runs && left[at(runEnd, lane)]) runEnd++;
      let laneEnd = lane + 1;
      const whole = (l: number): boolean => {
        for (let r = run; r < runEnd; r++) if (!left[at(r, l)]) return false;
        return true;
      };
      while (laneEnd < lanes && whole(laneEnd)) laneEnd++;
      for (let l = lane; l < laneEnd; l++) for (let r = run; r < runEnd; r++) left[at(r, l)] = 0;
      blocks.push(transposed ? [lane, laneEnd, run, runEnd] : [run, runEnd, lane, laneEnd]);
    }
  }
  return blocks;
}

function axisOf(edge: Vec3): 0 | 1 | 2 {
  const [x, y, z] = edge.map(Math.abs) as [number, number, number];
  return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
}

function normalSign(rect: Rect, axis: 0 | 1 | 2): number {
  const { u, v } = rect;
  const b = (axis + 1) % 3;
  const c = (axis + 2) % 3;
  return u[b]! * v[c]! - u[c]! * v[b]! > 0 ? 1 : -1;
}

const length = (edge: Vec3): number => Math.hypot(edge[0], edge[1], edge[2]);

const scaled = (edge: Vec3, k: number): Vec3 => [edge[0] * k, edge[1] * k, edge[2] * k];
