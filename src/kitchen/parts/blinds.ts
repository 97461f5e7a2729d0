import { SASH } from '../../model/layout/measures';
import type { Plan, PlannedOpening } from '../plan/types';
import type { Assembly } from './assembly';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, wallSide } from './side';

/** A roller blind, rolled up: its cassette, what hangs of its cloth, its bottom bar, clear of the reveal's sides, m. Common practice, no source. */
const CASSETTE = 0.062;
const CLOTH = { drop: 0.12, thickness: 0.002 };
const BAR = { height: 0.022, thickness: 0.01 };
const CLEAR = 0.004;

/** Roller blinds at the heads of their openings: in the reveal where its depth allows, else on the wall above. */
export function addBlinds(parts: Assembly, plan: Plan): void {
  for (const opening of plan.openings) if (opening.blind === 'roller') addBlind(parts, plan, opening);
}

function addBlind(parts: Assembly, plan: Plan, opening: PlannedOpening): void {
  const { from, to, head, reveal } = opening;
  const side = wallSide(plan, opening.wall);
  const isInside = reveal - SASH.depth / 1000 >= CASSETTE + 2 * CLEAR;
  const above = head + CASSETTE + CLEAR;
  if (!isInside && above > plan.height) return;
  const front = isInside ? -CLEAR : CASSETTE;
  const top = isInside ? head : above;
  const cassette: Extent = {
    a: [from + CLEAR, to - CLEAR],
    d: [front - CASSETTE, front],
    z: [top - CASSETTE, top],
  };
  const middle = front - CASSETTE / 2;
  const inner: Extent['a'] = [from + 3 * CLEAR, to - 3 * CLEAR];
  const low = top - CASSETTE - CLOTH.drop;
  const add = (extent: Extent, grain: 0 | 1 | 2): void => {
    const piece = parts.newPiece();
    parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
  };
  const thick = (thickness: number): Extent['d'] => [middle - thickness / 2, middle + thickness / 2];
  add(cassette, side.along);
  add({ a: inner, d: thick(CLOTH.thickness), z: [low + BAR.height, top - CASSETTE] }, 2);
  add({ a: inner, d: thick(BAR.thickness), z: [low, low + BAR.height] }, side.along);
}
