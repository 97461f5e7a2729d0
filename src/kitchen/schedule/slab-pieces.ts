import { surfaceName } from '../../engine/judge/surface-words';
import type { DecisionState, SurfaceId } from '../../engine/surface';
import type { RunWall } from '../../model/kitchen';
import { panelSizeOf } from '../../model/panel';
import type { Finish, Laying, Option } from '../../model/project';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import { layOnSlabs } from '../../model/quantity/slab/lay-on-slabs';
import { linesOn } from '../../model/quantity/slab/line-up';
import type { SlabPiece, SlabRules } from '../../model/quantity/slab-types';
import { slabOf, slabSizeOf } from '../../model/slab';
import type { SurfaceTakeoff, Takeoff } from '../takeoff/types';
import { WALLS } from './place-words';
import { purchaseKind } from './purchase-kind';
import type { ScheduleItem } from './types';

/** How the slabs of a finish, or its panels where it is wood, are cut. */
export function cutRules(finish: Finish, laying: Laying, assumptions: QuantityAssumptions): SlabRules {
  const panel = panelSizeOf(finish);
  const hasFigure = slabOf(finish) !== null;
  return {
    slab_mm: panel ?? slabSizeOf(finish)!.size_mm,
    trim_mm: panel ? 0 : assumptions.slab_trim_mm,
    kerf_mm: assumptions.kerf_mm,
    shortest_part_mm: assumptions.shortest_part_mm,
    seam_clear_mm: assumptions.seam_clear_mm,
    // Veins and grain run on through all pieces.
    may_turn: !panel && !hasFigure,
    // What shows no figure has nothing to match, and no panel of wood is the mirror of another.
    match: panel || !hasFigure ? null : (laying.slab?.match ?? 'bookmatch'),
    always_match: assumptions.match_seams,
    noun: panel ? 'panel' : 'slab',
  };
}

/** What seams of an item may go by besides its own pieces. */
interface Around {
  readonly option: Option;
  readonly takeoff: Takeoff;
  readonly assumptions: QuantityAssumptions;
}

/** The pieces of an item; what follows the counter knows its seams even where the counter is another item, ordered apart. */
export function slabPieces(
  item: ScheduleItem,
  finish: Finish,
  surfaces: readonly SurfaceTakeoff[],
  around: Around,
): readonly SlabPiece[] {
  const pieces = surfaces.flatMap(piecesOf);
  if (item.surfaces.includes('counter') || !pieces.some(({ follows }) => follows !== undefined)) return pieces;
  const counter = counterApart(finish, around);
  return pieces.map((piece) =>
    piece.follows && counter ? { ...piece, lines_mm: linesOn(piece, counter.pieces, counter.seams) } : piece,
  );
}

const CUT: readonly SurfaceId[] = ['counter', 'island-counter', 'upstand', 'backsplash'];

/** What is open and what is decided is still one item. */
const settledAs = (state: DecisionState): DecisionState => (state === 'decided' ? 'open' : state);

/** The item of a counter of the same finish, as it is cut; null where it is of another, or stays and is not cut at all. */
function counterApart(
  finish: Finish,
  { option: { scheme }, takeoff, assumptions }: Around,
): { readonly pieces: readonly SlabPiece[]; readonly seams: readonly (readonly number[])[] } | null {
  const { counter } = scheme;
  const isCutWith = (surface: SurfaceId): boolean => {
    const { finish: id, state, laying } = scheme[surface];
    const isOneItem = settledAs(state) === settledAs(counter.state);
    return id === finish.id && isOneItem && purchaseKind(finish, laying, surface) === 'slab';
  };
  if (counter.state === 'fixed' || !isCutWith('counter')) return null;
  const pieces = CUT.filter(isCutWith)
    .flatMap((surface) => takeoff.get(surface) ?? [])
    .flatMap(piecesOf);
  const laid = layOnSlabs(pieces, cutRules(finish, counter.laying, assumptions));
  if (!laid.ok) return null;
  const seamsOf = ({ id }: SlabPiece): readonly number[] =>
    laid.value.seams.filter(({ piece }) => piece === id).map(({ at_mm }) => at_mm);
  return { pieces, seams: pieces.map(seamsOf) };
}

const piecesOf = ({ surface, parts }: SurfaceTakeoff): readonly SlabPiece[] =>
  parts.flatMap(({ kind, length_mm, width_mm, count, cutouts_mm = [], avoid, along }, i) =>
    Array.from({ length: count }, (_, k) => ({
      id: `${surface} ${kind} ${i + 1}${count > 1 ? `.${k + 1}` : ''}`,
      name: nameOf(surface, along?.line),
      length_mm,
      width_mm,
      cutouts_mm,
      ...(avoid && { avoid }),
      ...(along && { along }),
      ...(surface === 'upstand' && { follows: 'pieces' as const }),
      ...(surface === 'backsplash' && { follows: 'seams' as const }),
    })),
  );

/** "the counter on the back wall". */
const nameOf = (surface: SurfaceId, wall: RunWall | undefined): string =>
  `the ${surfaceName(surface).toLowerCase()}${wall ? ` on the ${WALLS[wall]}` : ''}`;
