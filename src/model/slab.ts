import type { Finish } from './project';

/** Usual sizes of whole slabs, mm: natural stone 2700-3050 x 1400-1800, engineered 3050 x 1400, jumbo 3200 x 1600 (trade guidance). */
const SLAB_MM: { readonly [C in Finish['class']]?: readonly [number, number] } = {
  stone: [2900, 1600],
  engineered: [3050, 1400],
  porcelain: [3200, 1600],
};

/** Flecks finer than this look alike everywhere, mm: the slab's own figure does not show. */
const SHOWN_FLECK_MM = 10;

/** Size of the slab a finish comes in where its slab has a figure of its own; null for what has none, and for tiles. */
export function slabOf(finish: Finish): readonly [length: number, width: number] | null {
  if (finish.piece_mm && !finish.slab_mm) return null;
  const size = finish.slab_mm ?? SLAB_MM[finish.class];
  return size && hasFigure(finish) ? size : null;
}

function hasFigure({ pattern }: Finish): boolean {
  switch (pattern.kind) {
    case 'veined':
    case 'linear':
    case 'cloud':
    case 'cleft':
      return true;
    case 'fleck':
      return pattern.size_mm >= SHOWN_FLECK_MM;
    default:
      return false;
  }
}
