import { failure, type Problem, type Result, success } from '../../../engine/result';
import type { SlabPiece, SlabRules } from '../slab-types';
import { chooseSeams } from './choose-seams';
import { goesInto } from './packing';

/** Usable size of a slab, mm. */
export interface Usable {
  readonly length_mm: number;
  readonly width_mm: number;
}

/** A piece with the ways it may be seamed, the best first: places along it, mm. */
export interface SeamedPiece {
  readonly piece: SlabPiece;
  readonly ways: readonly (readonly number[])[];
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
  const { length_mm, width_mm, cutouts_mm, id } = piece;
  if (longest_mm === null) {
    const { width_mm: usable } = usableOf(rules);
    return failure(tooSmall(`"${id}" is ${said(width_mm)} wide, and the slab gives ${said(usable)}.`));
  }
  if (own) return ownSeams(piece, rules, longest_mm, own);
  const { shortest_part_mm } = rules;
  if (length_mm > longest_mm && shortest_part_mm > longest_mm) {
    const text = `"${id}" is ${said(length_mm)} long, and the slab gives ${said(longest_mm)}: less than the shortest part, ${said(shortest_part_mm)}.`;
    return failure(tooSmall(text));
  }
  const ways = chooseSeams({ length_mm, cutouts_mm, longest_mm, shortest_mm: shortest_part_mm });
  if (ways.length > 0) return success({ piece, ways });
  return failure({
    code: 'no-seam-place',
    text: `"${id}" is ${said(length_mm)} long, and the slab gives ${said(longest_mm)}: no seam can be set that clears the cut-outs and leaves parts of ${said(shortest_part_mm)} or more.`,
    remedy: 'Take a larger slab or allow shorter parts, or ask the fabricator.',
  });
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
  { shortest_part_mm }: SlabRules,
  longest_mm: number,
  own: readonly number[],
): Result<SeamedPiece, Problem> {
  const { id, length_mm, cutouts_mm } = piece;
  const seams = [...new Set(own)].sort((a, b) => a - b);
  const outside = seams.find((at) => !(at > 0 && at < length_mm));
  if (outside !== undefined) {
    return failure({
      code: 'seam-outside',
      text: `A seam at ${said(outside)} is not on "${id}", which is ${said(length_mm)} long.`,
      remedy: `Give a place between 0 and ${said(length_mm)}.`,
    });
  }
  const parts = partLengths(length_mm, seams);
  const long = parts.find((part) => !goesInto(part, longest_mm));
  if (long !== undefined) {
    return failure({
      code: 'part-too-long',
      text: `The seams leave a part of "${id}" ${said(long)} long, and the slab gives ${said(longest_mm)}.`,
      remedy: 'Set one more seam, or move them.',
    });
  }
  const short = seams.length > 0 ? parts.find((part) => part < shortest_part_mm) : undefined;
  const cut = seams.find((at) => cutouts_mm.some(([from, to]) => at > from && at < to));
  return success({ piece, ways: [seams] }, [
    ...(short === undefined
      ? []
      : [
          {
            code: 'part-short',
            text: `The seams leave a part of "${id}" ${said(short)} long, shorter than ${said(shortest_part_mm)}.`,
            remedy: 'Ask the fabricator whether such a part can be made and carried.',
          },
        ]),
    ...(cut === undefined
      ? []
      : [
          {
            code: 'seam-in-cutout',
            text: `The seam at ${said(cut)} of "${id}" goes through a cut-out.`,
            remedy: 'Ask the fabricator: little material is left beside a cut-out to hold a seam.',
          },
        ]),
  ]);
}

/** Lengths of the parts between seams and ends. */
const partLengths = (length_mm: number, seams: readonly number[]): readonly number[] =>
  [...seams, length_mm].map((to, i) => to - (seams[i - 1] ?? 0));

const tooSmall = (text: string): Problem => ({
  code: 'slab-too-small',
  text,
  remedy: 'Take a larger slab or less trim.',
});

const said = (mm: number): string => `${Math.round(mm * 10) / 10} mm`;
