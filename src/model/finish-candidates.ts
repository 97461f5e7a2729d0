import type { FinishClass } from '../engine/finish/types';
import type { SurfaceId } from '../engine/surface';
import type { Finish } from './project';

/**
 * Which classes are usually offered for a surface (common practice, no source). Wood stands apart: boards go on floors,
 * veneer on fronts; a veneer makes no counter. Grout is never laid by itself.
 */
const SLABS: readonly FinishClass[] = ['stone', 'engineered', 'solid surface', 'laminate', 'porcelain'];
const FRONTS: readonly FinishClass[] = ['paint', 'laminate', 'wood'];
const FLOORS: readonly FinishClass[] = ['stone', 'engineered', 'porcelain', 'laminate', 'wood', 'vinyl'];
const FITTINGS: readonly FinishClass[] = ['metal'];

const CLASSES: { readonly [S in SurfaceId]: readonly FinishClass[] } = {
  counter: SLABS,
  'island-counter': SLABS,
  upstand: [...SLABS, 'glazed', 'glass'],
  floor: FLOORS,
  'base-fronts': FRONTS,
  'wall-fronts': FRONTS,
  'tall-fronts': FRONTS,
  'island-fronts': FRONTS,
  plinth: [...FRONTS, 'metal'],
  backsplash: [...SLABS, 'glazed', 'glass', 'metal'],
  wall: ['paint'],
  ceiling: ['paint'],
  frame: ['paint', 'wood', 'metal'],
  hardware: FITTINGS,
  tap: FITTINGS,
  appliance: FITTINGS,
  sink: ['metal', 'engineered', 'solid surface', 'glazed'],
};

/** Made to be walked on: sold as boards or planks, or as floor tiles. */
const comesAsBoards = (finish: Finish): boolean =>
  finish.pattern.kind === 'grain' && finish.pattern.board_mm !== undefined;

/** Slabs: one sheet covers a counter, so small floor and wall tiles are no counter (shorter side 900 mm or no size at all). */
const COUNTER_PIECE_MM = 900;

/** Can this finish usually go on this surface? A guide for lists and repairs; a person may lay anything anywhere. */
export function canGoOn(finish: Finish, surface: SurfaceId): boolean {
  if (!CLASSES[surface].includes(finish.class)) return false;
  switch (surface) {
    case 'floor':
      return finish.piece_mm !== undefined || comesAsBoards(finish);
    case 'counter':
    case 'island-counter':
      return finish.class !== 'porcelain' || !finish.piece_mm || Math.min(...finish.piece_mm) >= COUNTER_PIECE_MM;
    default:
      return !comesAsBoards(finish);
  }
}

/**
 * Could it go on this surface, for all that is said of it? Lists of suppliers often leave sizes out, and only a size tells floor boards
 * from a veneer: a finish of a kept library is not to be out of reach for that. For lists that a person chooses from; what the program
 * proposes by itself goes by `canGoOn`.
 */
export const mayGoOn = (finish: Finish, surface: SurfaceId): boolean =>
  surface === 'floor' &&
  finish.origin !== undefined &&
  CLASSES.floor.includes(finish.class) &&
  finish.piece_mm === undefined &&
  !comesAsBoards(finish);

/** Gloss units at 60 degrees up to which a paint is flat: MPI level G1. */
const FLAT_GU = 5;
const TOUCHED: readonly SurfaceId[] = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'];

/**
 * Flat paint marks and does not wash, so fronts are painted in a sheen (common practice, no source). Its color may still be the
 * right one: lists put it behind, repairs leave it out.
 */
export const isTooFlatFor = (
  { class: kind, gloss_gu }: Pick<Finish, 'class' | 'gloss_gu'>,
  surface: SurfaceId,
): boolean => kind === 'paint' && gloss_gu <= FLAT_GU && TOUCHED.includes(surface);

/** The finishes of a library that can usually go on a surface, in library order. */
export const candidatesFor = (library: readonly Finish[], surface: SurfaceId): readonly Finish[] =>
  library.filter((finish) => canGoOn(finish, surface));
