import type { BlindCloth } from '../../engine/light/types';
import type { Plan, PlannedOpening } from '../plan/types';
import { type Assembly, faceRect } from './assembly';
import { type BlindPlace, blindPlace, CASSETTE, CLEAR } from './blind-place';
import { plainRect } from './cut-holes';
import { blank, grained } from './pattern-coordinates';
import { boxAt, type Extent, faceAt } from './side';
import { windowApertures } from './window';

/** A roller blind, rolled up: what hangs of its cloth, its bottom bar, m. Common practice, no source. */
const CLOTH = { drop: 0.12, thickness: 0.002 };
const BAR = { height: 0.022, thickness: 0.01 };

/** Roller blinds at the heads of their openings: in the reveal where its depth allows, else on the wall above. */
export function addBlinds(parts: Assembly, plan: Plan): void {
  for (const opening of plan.openings) {
    const place = blindPlace(plan, opening);
    if (place) addBlind(parts, opening, place);
  }
}

/** The cloth of every roller blind as it is let down all the way, before its bar and all else that hangs there rolled up. */
export const blindCloths = (plan: Plan): BlindCloth[] =>
  plan.openings.flatMap((opening) => {
    const place = blindPlace(plan, opening);
    if (!place) return [];
    const { side, front, top, a } = place;
    const d = front - CASSETTE / 2 + BAR.thickness / 2 + 0.001;
    const extent: Extent = { a, d: [d, d], z: [opening.sill + CLEAR, top - CASSETTE] };
    const rect = faceRect({ surface: 'black', coordinates: blank }, ...boxAt(side, extent), faceAt(side, 'd+'));
    const [pane] = windowApertures({ ...plan, openings: [opening] });
    return pane ? [{ rect: plainRect(rect), rolled_m: CLOTH.drop, pane }] : [];
  });

function addBlind(parts: Assembly, { from, to }: PlannedOpening, { side, front, top, a }: BlindPlace): void {
  const cassette: Extent = { a: [from + CLEAR, to - CLEAR], d: [front - CASSETTE, front], z: [top - CASSETTE, top] };
  const middle = front - CASSETTE / 2;
  const low = top - CASSETTE - CLOTH.drop;
  const add = (extent: Extent, grain: 0 | 1 | 2): void => {
    const piece = parts.newPiece();
    parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
  };
  const thick = (thickness: number): Extent['d'] => [middle - thickness / 2, middle + thickness / 2];
  add(cassette, side.along);
  add({ a, d: thick(CLOTH.thickness), z: [low + BAR.height, top - CASSETTE] }, 2);
  add({ a, d: thick(BAR.thickness), z: [low, low + BAR.height] }, side.along);
}
