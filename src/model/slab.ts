import type { Finish } from './project';

/** Usual sizes of whole slabs, mm: natural stone 2700-3050 x 1400-1800, engineered 3050 x 1400, jumbo 3200 x 1600 (trade guidance). */
const SLAB_MM: { readonly [C in Finish['class']]?: readonly [number, number] } = {
  stone: [2900, 1600],
  engineered: [3050, 1400],
  porcelain: [3200, 1600],
};

/** Flecks finer than this look alike everywhere, mm: the slab's own figure does not show. */
const SHOWN_FLECK_MM = 10;

/** Size of the slab or sheet a finish comes in, mm, and whether that is only usual for its class; null where nothing is known. */
export function slabSizeOf({ slab_mm, piece_mm, class: kind }: Finish): {
  readonly size_mm: readonly [length: number, width: number];
  readonly isUsual: boolean;
} | null {
  if (slab_mm) return { size_mm: slab_mm, isUsual: false };
  const usual = SLAB_MM[kind];
  return usual && !piece_mm ? { size_mm: usual, isUsual: true } : null;
}

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
