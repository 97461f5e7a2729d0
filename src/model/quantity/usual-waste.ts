import type { Layout, Turn } from '../../engine/pattern/types';

/** What is bought: it says how a quantity is found. */
export type PurchaseKind = 'slab' | 'tiles' | 'boards' | 'sheet' | 'strip' | 'coat' | 'grout' | 'fronts' | 'count';

/** What waste depends on. Sizes in mm. */
export interface WasteCase {
  readonly kind: PurchaseKind;
  readonly layout?: Layout;
  readonly turn_deg?: Turn;
  readonly piece_mm?: readonly [number, number];
}

// Public trade guidance, two or more pages agreeing; where it gives a span, the value of it that stands here is our choice.
/** Stacked (10 %), half or third offset (10 to 12 %), boards laid straight (5 to 10 %). */
const STRAIGHT_PERCENT = 10;
/** Laid at 45 degrees: 15 %, to 20. */
const DIAGONAL_PERCENT = 15;
/** Herringbone and what else is cut at every edge: 15 to 20 %. */
const HERRINGBONE_PERCENT = 20;
/** Hexagons count as complex (15 to 20 %); no piece of theirs is turned, so the lower end (our judgment). */
const HEXAGON_PERCENT = 15;
/** Tiles 600 mm (24 in) and more: 12 to 15 %. One that breaks is much of the whole, so the upper end (our judgment). */
const LARGE_TILE_PERCENT = 15;
const LARGE_TILE_MM = 600;
/** 24 in is 609.6 mm; a nominal 600 is often a little less. */
const SIZE_DUST_MM = 5;
/** Paint that stays in tins and rollers, grout that is washed off (common practice, no source). */
const WET_PERCENT = 10;
/** Sheets and strips are cut to length (common practice, no source). */
const CUT_PERCENT = 10;

/**
 * Waste that is usual, percent of the net quantity: 0 for slabs, which are laid out piece by piece, and for what is made to measure or
 * counted.
 */
export function usualWaste(of: WasteCase): number {
  switch (of.kind) {
    case 'tiles':
      return Math.max(bondPercent(of), isLarge(of.piece_mm) ? LARGE_TILE_PERCENT : 0);
    case 'boards':
      return bondPercent(of);
    case 'sheet':
    case 'strip':
      return CUT_PERCENT;
    case 'coat':
    case 'grout':
      return WET_PERCENT;
    default:
      return 0;
  }
}

function bondPercent({ layout, turn_deg }: WasteCase): number {
  if (layout === 'herringbone') return HERRINGBONE_PERCENT;
  if (layout === 'hexagon') return HEXAGON_PERCENT;
  return turn_deg === 45 ? DIAGONAL_PERCENT : STRAIGHT_PERCENT;
}

const isLarge = (piece_mm: WasteCase['piece_mm']): boolean =>
  piece_mm !== undefined && Math.max(...piece_mm) >= LARGE_TILE_MM - SIZE_DUST_MM;
