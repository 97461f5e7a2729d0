import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { backSide, leftSide } from './base-units';
import { hollowAll } from './cut-holes';
import { tileHoles } from './opening-leaves';
import { inPlane } from './pattern-coordinates';
import { boxAt, type Extent } from './side';

/** Tile and its bed; the upstand's slab, m. */
export const BACKSPLASH_THICKNESS = 0.008;
const UPSTAND_THICKNESS = 0.015;

/** Tile on the back wall from counter to wall units, behind the cooktop up to the hood, round any window. Whole tiles start on the counter. */
export function addBacksplash(parts: Assembly, plan: Plan): void {
  const side = backSide(plan);
  const d = [0, BACKSPLASH_THICKNESS] as const;
  const skin = { surface: 'backsplash', coordinates: inPlane([0, 0, plan.counter.top]) } as const;
  const { bottom } = plan.wallUnits;
  const tile = (extent: Extent): void => {
    const [min, max] = boxAt(side, extent);
    for (const part of hollowAll({ min, max }, tileHoles(plan))) parts.box(skin, part.min, part.max);
  };
  tile({ a: [0, plan.back.to], d, z: [plan.counter.top, bottom] });
  if (plan.hood.bottom > bottom) {
    tile({ a: [plan.hood.from, plan.hood.to], d, z: [bottom, plan.hood.bottom] });
  }
}

/** The strip of counter material on the window wall. Its pattern turns over the top edge. */
export function addUpstand(parts: Assembly, plan: Plan): void {
  const from = plan.left.end - plan.counter.overhang;
  const [min, max] = boxAt(leftSide, {
    a: [from, plan.depth - BACKSPLASH_THICKNESS],
    d: [0, UPSTAND_THICKNESS],
    z: [plan.counter.top, plan.counter.top + plan.upstand],
  });
  const piece = parts.newPiece();
  parts.box(
    {
      surface: 'upstand',
      coordinates: ([x, y, z], normal) => {
        const turned = UPSTAND_THICKNESS - x;
        return [normal === 1 ? y - from - turned : y - from, z - min[2] + (normal === 2 ? turned : 0)];
      },
      piece,
    },
    min,
    max,
  );
}
