import type { Kitchen } from './kitchen';
import { refit } from './new-kitchen/fit-to-room';
import type { LayoutId } from './new-kitchen/layout-drafts';

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

/**
 * The kitchen in another layout: room, sizes, fronts, appliances, windows, door and lamps are kept as far as they fit.
 * Null when the layout does not go into its room.
 */
export const changeLayout = (kitchen: Kitchen, layout: LayoutId): Kitchen | null =>
  layoutOf(kitchen) === layout ? kitchen : refit(kitchen, layout);
