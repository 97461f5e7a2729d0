import { SURFACES } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import { planKitchen } from '../plan/plan-kitchen';
import { measureCounters } from './counters';
import { drawParts } from './drawn';
import { measureAppliances, measureHardware, measureSink } from './fittings';
import { measureCeiling, measureFloor, measurePlinths } from './floor';
import { measureFronts } from './fronts';
import { measureJoinery } from './joinery';
import type { SurfaceTakeoff, Takeoff } from './types';
import { measureBacksplash, measureUpstand, measureWalls } from './walls';

/** What of the assumptions decides how much there is, before waste and packs. */
export type TakeoffRules = Pick<QuantityAssumptions, 'floor_reach' | 'least_opening_m2' | 'paint_behind_units'>;

/**
 * Measures every surface that a kitchen has, from the same plan and parts that draw it. Expects a kitchen whose parts fit its room
 * (see checkKitchen). Nothing is added for waste.
 */
export function takeOff(kitchen: Kitchen, rules: TakeoffRules): Takeoff {
  const plan = planKitchen(kitchen);
  const drawn = drawParts(plan);
  const measured: readonly (SurfaceTakeoff | null)[] = [
    ...measureCounters(plan),
    measureFloor(drawn, rules.floor_reach),
    ...measureFronts(drawn),
    measurePlinths(drawn),
    measureBacksplash(drawn, rules),
    measureUpstand(drawn),
    measureWalls(drawn, rules),
    measureCeiling(drawn),
    measureHardware(drawn),
    ...measureSink(),
    measureAppliances(plan),
    measureJoinery(drawn),
  ];
  const there = measured.filter((one) => one !== null);
  return new Map(
    SURFACES.flatMap((id) => there.filter(({ surface }) => surface === id).map((one) => [id, one] as const)),
  );
}
