import { failure, type Problem, type Result, success } from '../../../engine/result';
import { areaOfParts } from '../area-of-parts';
import { roundUp } from '../round-up';
import type { CutSlab, Matching, PlacedPart, SlabLayout, SlabPiece, SlabRules } from '../slab-types';
import { linesOn } from './line-up';
import { type Chain, packMatched } from './pack-matched';
import { packParts } from './pack-parts';
import { fits, type Lies, type Packing, type Room } from './packing';
import { type SeamedPiece, seamsOf, usableOf } from './part-pieces';
import { seamNotices } from './seam-notices';

/** Ways to set seams that are tried for fewer slabs. */
const MOST_WAYS = 16;

/** A part to cut: of which piece, and where on it. */
interface Part {
  readonly piece: number;
  readonly from_mm: number;
  readonly to_mm: number;
}

/** Seams of each piece. */
type Seams = readonly (readonly number[])[];

/**
 * Lays pieces on slabs: as few as are found, cut from edge to edge with a saw cut between parts. What is longer than a slab is seamed as
 * `chooseSeams` says; another place than the best is taken only where it saves a slab. `own` are seams that somebody set, mm along their
 * piece, by its id. Slabs come in the order of the pieces. Pieces without area need no slab. Problems: `no-size`, `slab-too-small`,
 * `no-seam-place`, `seam-outside`, `part-too-long`; notices on seams of one's own: `part-short`, `seam-in-cutout`; on all: those of
 * `seamNotices`.
 */
export function layOnSlabs(
  pieces: readonly SlabPiece[],
  rules: SlabRules,
  own: ReadonlyMap<string, readonly number[]> = new Map(),
): Result<SlabLayout> {
  const { slab_mm, trim_mm, kerf_mm, shortest_part_mm } = rules;
  const sizes = pieces.flatMap(({ length_mm, width_mm }) => [length_mm, width_mm]);
  const sized = [...sizes, ...slab_mm, trim_mm, kerf_mm, shortest_part_mm];
  if (!sized.every((size) => Number.isFinite(size) && size >= 0)) return failure(NO_SIZE);
  const cut = pieces.filter((piece) => piece.length_mm > 0 && piece.width_mm > 0);
  const seamed: SeamedPiece[] = [];
  const notices: Problem[] = [];
  for (const piece of cut) {
    const found = seamsOf(piece, rules, own.get(piece.id));
    if (!found.ok) return found;
    seamed.push(found.value);
    notices.push(...(found.notices ?? []));
  }
  const area_m2 = areaOfParts(cut);
  const slab_m2 = areaOfParts([{ length_mm: slab_mm[0], width_mm: slab_mm[1] }]);
  const lower_bound = area_m2 > 0 ? roundUp(area_m2 / slab_m2) : 0;
  const { seams, parts, packing, matching } = chosenOf(seamed, rules, lower_bound);
  const slabs = (matching?.isKept ? packing.map(fromCorner) : inOrder(packing)).map(
    (spots, i): CutSlab => ({
      parts: spots.map((spot) => placed(spot, parts[spot.part]!, cut, rules)),
      mirrored: matching?.isKept === true && rules.match === 'bookmatch' && i % 2 === 1,
    }),
  );
  const layout: SlabLayout = {
    slabs,
    seams: cut.flatMap(({ id }, i) => seams[i]!.map((at_mm) => ({ piece: id, at_mm }))),
    matching,
    yield: slabs.length === 0 ? 0 : area_m2 / (slabs.length * slab_m2),
    lower_bound,
  };
  return success(layout, [...notices, ...seamNotices(cut, seams, rules)]);
}

const NO_SIZE: Problem = {
  code: 'no-size',
  text: 'A piece, the slab or its trim has no size.',
  remedy: 'Give lengths and widths in mm, 0 or more.',
};

interface Chosen {
  readonly seams: Seams;
  readonly parts: readonly Part[];
  readonly packing: Packing;
}

/** The fewest slabs; or those whose seams match, where that takes no more or is wanted whatever it takes. */
function chosenOf(seamed: readonly SeamedPiece[], rules: SlabRules, lower_bound: number) {
  const { length_mm, width_mm } = usableOf(rules);
  const room: Room = { along: length_mm + rules.kerf_mm, across: width_mm + rules.kerf_mm };
  const liesFor = (parts: readonly Part[]) => parts.map((part) => liesOf(part, seamed, rules, room));
  const ways = waysToSeam(seamed);
  const fewest = fewestOf(ways, lower_bound, (seams, under) => {
    const parts = partsOf(seamed, seams);
    const packing = packParts(liesFor(parts), room, under);
    return packing && { seams, parts, packing };
  })!;
  const { match, kerf_mm } = rules;
  if (match === null || chainsOf(fewest.parts, seamed).length === 0) return { ...fewest, matching: null };
  const matched = fewestOf(ways, fewest.packing.length, (seams, under) => {
    const parts = partsOf(seamed, seams);
    const packing = packMatched(liesFor(parts), chainsOf(parts, seamed), match, kerf_mm, room);
    return packing && packing.length < under ? { seams, parts, packing } : null;
  });
  const slabs = matched ? matched.packing.length : null;
  const isKept = slabs !== null && (slabs <= fewest.packing.length || rules.always_match === true);
  const matching: Matching = { match, isKept, slabs, fewest: fewest.packing.length };
  return { ...(isKept ? matched! : fewest), matching };
}

/** The best seams, or the first others that need fewer slabs. */
function fewestOf(
  ways: readonly Seams[],
  least: number,
  lay: (seams: Seams, under: number) => Chosen | null,
): Chosen | null {
  let best: Chosen | null = null;
  for (const seams of ways) {
    const under: number = best?.packing.length ?? Number.POSITIVE_INFINITY;
    best = lay(seams, under) ?? best;
    if (best !== null && best.packing.length <= least) break;
  }
  return best;
}

/** Parts that go on in each other over seams; of what is cut from what is left, none has to. */
const chainsOf = (parts: readonly Part[], seamed: readonly SeamedPiece[]): readonly Chain[] =>
  seamed.flatMap(({ piece }, i) => {
    const own = parts.flatMap((part, k) => (part.piece === i ? [k] : []));
    return own.length > 1 && piece.follows !== 'pieces' ? [own] : [];
  });

/** All pieces seamed the best way, then ways that differ from it, those of the first pieces changing first. */
function waysToSeam(seamed: readonly SeamedPiece[]): readonly Seams[] {
  let all: readonly Seams[] = [[]];
  const pieces = seamed.map(({ piece }) => piece);
  for (const [i, { piece, waysAt }] of seamed.entries()) {
    const ways = all.map((seams) => waysAt(piece.follows ? linesOn(piece, pieces.slice(0, i), seams) : []));
    const most = Math.max(...ways.map(({ length }) => length));
    const nth = (k: number): readonly Seams[] =>
      all.flatMap((seams, s) => (ways[s]![k] ? [[...seams, ways[s]![k]]] : []));
    all = Array.from({ length: most }, (_, k) => nth(k))
      .flat()
      .slice(0, MOST_WAYS);
  }
  return all;
}

const partsOf = (seamed: readonly SeamedPiece[], seams: Seams): readonly Part[] =>
  seamed.flatMap(({ piece }, i) => {
    const ends = [0, ...seams[i]!, piece.length_mm];
    return ends.slice(1).map((to_mm, k) => ({ piece: i, from_mm: ends[k]!, to_mm }));
  });

function liesOf({ piece, from_mm, to_mm }: Part, seamed: readonly SeamedPiece[], rules: SlabRules, room: Room): Lies {
  const [along, across] = [to_mm - from_mm + rules.kerf_mm, seamed[piece]!.piece.width_mm + rules.kerf_mm];
  const straight = { along, across, turned: false };
  const turned = { along: across, across: along, turned: true };
  return [straight, ...(rules.may_turn ? [turned] : [])].filter((lie) => fits(lie, room));
}

/** Slabs by the first part on them; on a slab from its lower left corner. */
const inOrder = (packing: Packing): Packing => packing.map(fromCorner).sort((a, b) => firstPart(a) - firstPart(b));

const fromCorner = (spots: Packing[number]): Packing[number] => [...spots].sort((a, b) => a.y - b.y || a.x - b.x);

const firstPart = (spots: Packing[number]): number => Math.min(...spots.map(({ part }) => part));

function placed(
  { x, y, lie }: Packing[number][number],
  { piece, from_mm, to_mm }: Part,
  pieces: readonly SlabPiece[],
  { trim_mm }: SlabRules,
): PlacedPart {
  const { id, width_mm } = pieces[piece]!;
  const at = { x_mm: trim_mm + x, y_mm: trim_mm + y };
  return { piece: id, from_mm, to_mm, ...at, length_mm: to_mm - from_mm, width_mm, turned: lie.turned };
}
