import type { RunRows } from '../../model/layout/types';
import { neighbor } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { hollowAll } from './cut-holes';
import { tileHoles } from './opening-leaves';
import { type Coordinates, onWall } from './pattern-coordinates';
import { boxAt, type Extent, rightward, type Side, solidAt, wallSide } from './side';

/** Tile and its bed; the upstand's slab, m. */
export const BACKSPLASH_THICKNESS = 0.008;
const UPSTAND_THICKNESS = 0.015;

/**
 * Where the wall over a run's counter is finished with something else than the wall's paint, as fields of its plane: an
 * upstand; or tile from the counter to the wall units and up to the hood, or up to the ceiling wherever no wall units hang.
 */
export function splashFields(plan: Plan, { wall, splash, over }: RunRows): Extent[] {
  const { top } = plan.counter;
  const field = (from: number, to: number, z0: number, z1: number): Extent => ({
    a: [from, to],
    d: [0, 0],
    z: [z0, z1],
  });
  if (splash.kind === 'upstand') {
    return plan.upstand > 0 ? [field(splash.from, splash.to, top, top + plan.upstand)] : [];
  }
  const { bottom } = plan.wallUnits;
  const fields = [field(splash.from, splash.to, top, bottom)];
  if (splash.kind === 'backsplash-to-ceiling') {
    let at = splash.from;
    for (const row of [...over].sort((a, b) => a.from - b.from)) {
      if (row.from > at) fields.push(field(at, Math.min(row.from, splash.to), bottom, plan.height));
      at = Math.max(at, row.to);
    }
    if (splash.to > at) fields.push(field(at, splash.to, bottom, plan.height));
  } else if (plan.hood?.run === wall && plan.hood.bottom > bottom) {
    fields.push(field(plan.hood.from, plan.hood.to, bottom, plan.hood.bottom));
  }
  return fields;
}

/** The fields of `splashFields` as thick as they are, and as long as the finish of the wall across leaves them. */
export function laidFields(plan: Plan, run: RunRows): Extent[] {
  const thickness = thicknessOf(plan, run);
  return splashFields(plan, run).flatMap((extent) => besideTheOther(plan, run, { ...extent, d: [0, thickness] }));
}

/** Tile on the walls behind the counters, round any window. Whole tiles start on the counter; one field a run. */
export function addBacksplash(parts: Assembly, plan: Plan): void {
  for (const run of plan.runs) {
    if (run.splash.kind === 'upstand') continue;
    const side = wallSide(plan, run.wall);
    const coordinates = onWall(side, leftEnd(side, run), plan.counter.top, BACKSPLASH_THICKNESS);
    const skin = { surface: 'backsplash', coordinates, piece: parts.newField() } as const;
    for (const tile of laidFields(plan, run)) {
      for (const part of hollowAll(solidAt(side, tile), tileHoles(plan))) parts.box(skin, part.min, part.max);
    }
  }
}

/** Strips of counter material on the walls. Their pattern turns over the top edge. */
export function addUpstand(parts: Assembly, plan: Plan): void {
  for (const run of plan.runs) {
    if (run.splash.kind !== 'upstand') continue;
    const side = wallSide(plan, run.wall);
    const coordinates = turnedOver(side, leftEnd(side, run), plan.counter.top);
    const skin = { surface: 'upstand', coordinates, piece: parts.newPiece() } as const;
    for (const strip of laidFields(plan, run)) parts.box(skin, ...boxAt(side, strip));
  }
}

/** The end of a run's finished wall that is on one's left when one faces it. */
const leftEnd = (side: Side, { splash }: RunRows): number => (rightward(side) > 0 ? splash.from : splash.to);

/**
 * In a corner the finish of a side wall stops at that of the back wall, as high as that is: over an upstand tile goes on to the wall.
 * As fields from below to above.
 */
function besideTheOther(plan: Plan, run: RunRows, extent: Extent): Extent[] {
  const back = run.ends.to === 'meets' && extent.a[1] === run.splash.to ? neighbor(plan, run, 'to') : undefined;
  if (!back) return [extent];
  const [from, to] = extent.a;
  const isInCorner = ({ a }: Extent): boolean => (run.wall === 'left' ? a[0] <= 0 : a[1] >= plan.width - NEAR);
  const across = splashFields(plan, back).filter(isInCorner);
  const [low, high] = extent.z;
  const between = across.flatMap(({ z }) => z).filter((z) => z > low + NEAR && z < high - NEAR);
  const levels = [low, ...new Set(between.sort((p, q) => p - q)), high];
  const parts: Extent[] = [];
  for (const [i, top] of levels.slice(1).entries()) {
    const bottom = levels[i]!;
    const isBeside = across.some(({ z }) => z[0] < top - NEAR && z[1] > bottom + NEAR);
    const end = isBeside ? to - thicknessOf(plan, back) : to;
    const below = parts.at(-1);
    if (below?.a[1] === end) parts[parts.length - 1] = { ...below, z: [below.z[0], top] };
    else parts.push({ ...extent, a: [from, end], z: [bottom, top] });
  }
  return parts;
}

/** Nearer than this is at, m. */
const NEAR = 1e-6;

/** Of what a run's wall is finished with, m; an upstand of no height has none. */
function thicknessOf({ upstand }: Plan, { splash }: RunRows): number {
  if (splash.kind !== 'upstand') return BACKSPLASH_THICKNESS;
  return upstand > 0 ? UPSTAND_THICKNESS : 0;
}

/** From the lower left corner of the strip's face; top and ends turn over their edges. */
function turnedOver(side: Side, left: number, bottom: number): Coordinates {
  const right = rightward(side);
  return (point, normal) => {
    const turned = UPSTAND_THICKNESS - side.outward * (point[side.along === 0 ? 1 : 0] - side.wall);
    const s = right * (point[side.along] - left);
    return [normal === side.along ? s - turned : s, point[2] - bottom + (normal === 2 ? turned : 0)];
  };
}
