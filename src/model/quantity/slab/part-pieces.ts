import { failure, type Problem, type Result, success } from '../../../engine/result';
import type { SlabPiece, SlabRules } from '../slab-types';
import { chooseSeams } from './choose-seams';
import { goesInto } from './packing';
import { saidFirst, saidName, saidSize } from './piece-words';
import type { Stretches } from './stretches';

/** Usable size of a slab, mm. */
export interface Usable {
  readonly length_mm: number;
  readonly width_mm: number;
}

type Ways = readonly (readonly number[])[];

/** A piece with the ways it may be seamed, the best first: places along it, mm; of one that follows others by the lines these leave on it. */
export interface SeamedPiece {
  readonly piece: SlabPiece;
  readonly waysAt: (lines_mm: readonly number[]) => Ways;
}

export const usableOf = ({ slab_mm: [length, width], trim_mm }: SlabRules): Usable => ({
  length_mm: length - 2 * trim_mm,
  width_mm: width - 2 * trim_mm,
});

/** The ways a piece may be seamed to come out of the slab; its own seams where they are given. */
export function seamsOf(
  piece: SlabPiece,
  rules: SlabRules,
  own: readonly number[] | undefined,
): Result<SeamedPiece, Problem> {
  const longest_mm = longestPart(piece, rules);
  const { length_mm, width_mm } = piece;
  if (longest_mm === null) {
    const { width_mm: usable } = usableOf(rules);
    return failure(
      tooSmall(
        rules,
        `${saidFirst(piece)} is ${saidSize(width_mm)} wide, and the ${rules.noun ?? 'slab'} gives ${saidSize(usable)}.`,
      ),
    );
  }
  if (own) return ownSeams(piece, rules, longest_mm, own);
  // Whatever is cut from what is left of slabs may be as short as it is high.
  const shortest_part_mm =
    piece.follows === 'pieces' ? Math.min(rules.shortest_part_mm, width_mm) : rules.shortest_part_mm;
  if (length_mm > longest_mm && shortest_part_mm > longest_mm) {
    const text = `${saidFirst(piece)} is ${saidSize(length_mm)} long, and the ${rules.noun ?? 'slab'} gives ${saidSize(longest_mm)}: less than the shortest part, ${saidSize(shortest_part_mm)}.`;
    return failure(tooSmall(rules, text));
  }
  const long = {
    length_mm,
    cutouts_mm: piece.cutouts_mm,
    better_clear: betterClear(piece, rules),
    longest_mm,
    shortest_mm: shortest_part_mm,
  };
  const waysAt = (lines_mm: readonly number[]): Ways => {
    const ways = chooseSeams({ ...long, lines_mm });
    return piece.follows === 'pieces' ? [...ways, ...inPieces(ways, lines_mm, long)] : ways;
  };
  if (waysAt([]).length > 0) return success({ piece, waysAt });
  return failure({
    code: 'no-seam-place',
    text: `${saidFirst(piece)} is ${saidSize(length_mm)} long, and the ${rules.noun ?? 'slab'} gives ${saidSize(longest_mm)}: no seam can be set that clears the cut-outs and leaves parts of ${saidSize(shortest_part_mm)} or more.`,
    remedy: `Take a larger ${rules.noun ?? 'slab'} or allow shorter parts, or ask the fabricator.`,
  });
}

/** Ways with more seams, for where a slab can be saved by them: at all lines, in halves, in thirds. */
function inPieces(
  [fewest = []]: Ways,
  lines_mm: readonly number[],
  { length_mm, longest_mm, shortest_mm }: { readonly [K in 'length_mm' | 'longest_mm' | 'shortest_mm']: number },
): Ways {
  const evenly = (parts: number): readonly number[] =>
    Array.from({ length: parts - 1 }, (_, i) => Math.round((10 * length_mm * (i + 1)) / parts) / 10);
  return [lines_mm, evenly(fewest.length + 2), evenly(fewest.length + 3)].filter(
    (way) =>
      way.length > fewest.length &&
      partLengths(length_mm, way).every((part) => part >= shortest_mm && goesInto(part, longest_mm)),
  );
}

/** Where seams are better not set, the strictest first; what is cut out weakens a counter more than a dishwasher below it. */
function betterClear({ cutouts_mm, avoid = [] }: SlabPiece, { seam_clear_mm }: SlabRules): readonly Stretches[] {
  const wide = ([from, to]: readonly [number, number]) => [from - seam_clear_mm, to + seam_clear_mm] as const;
  const beside = cutouts_mm.map(wide);
  const over = avoid.map(({ what, span_mm }) => (what === 'cooktop' ? wide(span_mm) : span_mm));
  return [[...beside, ...over], beside, over];
}

/** The longest part of a piece that a slab holds: along it, else, where it may turn, across it; null where it is too wide for both. */
function longestPart({ width_mm }: SlabPiece, rules: SlabRules): number | null {
  const usable = usableOf(rules);
  if (goesInto(width_mm, usable.width_mm) && usable.length_mm > 0) return usable.length_mm;
  return rules.may_turn && goesInto(width_mm, usable.length_mm) && usable.width_mm > 0 ? usable.width_mm : null;
}

/** Seams that somebody set: kept where the parts come out of the slab; what is against the rules is told. */
function ownSeams(
  piece: SlabPiece,
  rules: SlabRules,
  longest_mm: number,
  own: readonly number[],
): Result<SeamedPiece, Problem> {
  const { length_mm, cutouts_mm } = piece;
  const { shortest_part_mm } = rules;
  const seams = [...new Set(own)].sort((a, b) => a - b);
  const outside = seams.find((at) => !(at > 0 && at < length_mm));
  if (outside !== undefined) {
    return failure({
      code: 'seam-outside',
      text: `A seam at ${saidSize(outside)} is not on ${saidName(piece)}, which is ${saidSize(length_mm)} long.`,
      remedy: `Give a place between 0 and ${saidSize(length_mm)}.`,
    });
  }
  const parts = partLengths(length_mm, seams);
  const long = parts.find((part) => !goesInto(part, longest_mm));
  if (long !== undefined) {
    return failure({
      code: 'part-too-long',
      text: `The seams leave a part of ${saidName(piece)} ${saidSize(long)} long, and the ${rules.noun ?? 'slab'} gives ${saidSize(longest_mm)}.`,
      remedy: 'Set one more seam, or move them.',
    });
  }
  const short = seams.length > 0 ? parts.find((part) => part < shortest_part_mm) : undefined;
  const cut = seams.find((at) => cutouts_mm.some(([from, to]) => at > from && at < to));
  return success({ piece, waysAt: () => [seams] }, [
    ...(short === undefined
      ? []
      : [
          {
            code: 'part-short',
            text: `The seams leave a part of ${saidName(piece)} ${saidSize(short)} long, shorter than ${saidSize(shortest_part_mm)}.`,
            remedy: 'Ask the fabricator whether such a part can be made and carried.',
          },
        ]),
    ...(cut === undefined
      ? []
      : [
          {
            code: 'seam-in-cutout',
            text: `The seam at ${saidSize(cut)} of ${saidName(piece)} goes through a cut-out.`,
            remedy: 'Ask the fabricator: little material is left beside a cut-out to hold a seam.',
          },
        ]),
  ]);
}

/** Lengths of the parts between seams and ends. */
const partLengths = (length_mm: number, seams: readonly number[]): readonly number[] =>
  [...seams, length_mm].map((to, i) => to - (seams[i - 1] ?? 0));

const tooSmall = ({ noun }: SlabRules, text: string): Problem => ({
  code: 'slab-too-small',
  text,
  remedy:
    noun === 'panel' ? 'Ask for a larger panel, or for one glued up to size.' : 'Take a larger slab or less trim.',
});
