import type { Kitchen } from './kitchen';
import { refit } from './new-kitchen/fit-to-room';
import type { LayoutId } from './new-kitchen/layout-drafts';
import { type Loss, lossesOf, type Refitted } from './new-kitchen/losses';

/** Which of the offered layouts a kitchen has; null for one of its own. */
export function layoutOf({ runs, island }: Pick<Kitchen, 'runs' | 'island'>): LayoutId | null {
  const walls = runs.map(({ wall }) => wall).join(' ');
  const isL = walls === 'left back' || walls === 'back right';
  if (island?.joined) return isL ? 'peninsula' : null;
  if (island) return isL ? 'l-island' : null;
  if (isL) return 'l';
  if (walls === 'left right') return 'galley';
  if (walls === 'left back right') return 'u';
  return runs.length === 1 ? 'one-wall' : null;
}

/** What another layout changes by itself: whoever chooses it asks for that. */
const isNotAskedFor = ({ part, id }: Loss): boolean => part !== 'single' || (id !== 'island' && id !== 'seats');

/**
 * The kitchen in another layout: room, sizes, fronts, appliances, windows, door and lamps are kept as far as they fit; what does
 * not is told. Null when the layout does not go into its room.
 */
export function changeLayout(kitchen: Kitchen, layout: LayoutId): Refitted | null {
  if (layoutOf(kitchen) === layout) return { kitchen, losses: [] };
  const changed = refit(kitchen, layout);
  return changed && { kitchen: changed, losses: lossesOf(kitchen, changed).filter(isNotAskedFor) };
}
