import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { turnedDown } from './pattern-coordinates';
import { islandSlab } from './slabs';

/** The ends of the island where its counter turns down to the floor: as thick as the slab, as far as its body leaves room. */
export function waterfallEnds(plan: Plan): Solid[] {
  const { island, counter } = plan;
  if (!island) return [];
  const { counter: top, body, waterfall } = island;
  const z = [0, counter.bottom] as const;
  const left = Math.min(counter.thickness, body.x0 - top.x0);
  const right = Math.min(counter.thickness, top.x1 - body.x1);
  const ends: Solid[] = [];
  if (waterfall === 'left' || waterfall === 'both') {
    ends.push({ min: [top.x0, top.y0, z[0]], max: [top.x0 + left, top.y1, z[1]] });
  }
  if (waterfall === 'right' || waterfall === 'both') {
    ends.push({ min: [top.x1 - right, top.y0, z[0]], max: [top.x1, top.y1, z[1]] });
  }
  return ends;
}

/** Slabs from the counter down to the floor; the pattern of the counter runs on over the corner. */
export function addWaterfall(parts: Assembly, plan: Plan): void {
  const { island } = plan;
  if (!island) return;
  for (const { min, max } of waterfallEnds(plan)) {
    const coordinates = turnedDown(...islandSlab(plan, island), 0, min[0] > island.counter.x0 ? 1 : -1);
    parts.box({ surface: 'island-counter', coordinates, piece: parts.newPiece() }, min, max);
  }
}
