import type { SurfaceId } from '../../engine/surface';
import type { HandoverItem } from './handover-items';

/** Surfaces as they stand in a room, from the ceiling down; those of one tier beside each other. */
const TIERS: readonly (readonly SurfaceId[])[] = [
  ['ceiling', 'wall', 'frame'],
  ['wall-fronts', 'tall-fronts', 'appliance'],
  ['backsplash', 'upstand', 'tap'],
  ['counter', 'island-counter', 'sink'],
  ['base-fronts', 'island-fronts', 'hardware', 'plinth'],
  ['floor'],
];

const tierOf = ({ surfaces }: HandoverItem): number => TIERS.findIndex((tier) => tier.includes(surfaces[0]!));

/** The items of each tier that has any, from the ceiling down to the floor. */
export const inTiers = (items: readonly HandoverItem[]): readonly (readonly HandoverItem[])[] =>
  TIERS.map((_, tier) => items.filter((item) => tierOf(item) === tier)).filter((tier) => tier.length > 0);

/** From the ceiling down to the floor. */
export const downTheRoom = (items: readonly HandoverItem[]): readonly HandoverItem[] => inTiers(items).flat();
