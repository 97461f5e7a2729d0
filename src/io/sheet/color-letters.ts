import { bareHeading, headingKey } from './field-of-heading';
import type { Field } from './types';

/** Columns that make a color together; a letter alone means nothing. Of sets that overlap the first one counts. */
const SETS: readonly (readonly [letters: string, fields: readonly Field[]])[] = [
  ['x y z', ['xyz_x', 'xyz_y', 'xyz_z']],
  ['x y y', ['xyy_x', 'xyy_y', 'xyy_lum']],
  ['y x y', ['xyy_lum', 'xyy_x', 'xyy_y']],
  ['r g b', ['rgb_r', 'rgb_g', 'rgb_b']],
  ['l a b', ['lab_l', 'lab_a', 'lab_b']],
  ['l c h', ['lch_l', 'lch_c', 'lch_h']],
];

/** Amounts of ink, in English, German, French. */
const INKS: readonly (readonly string[])[] = [
  ['c', 'cyan', 'cmykc'],
  ['m', 'magenta', 'cmykm'],
  ['y', 'yellow', 'gelb', 'jaune', 'cmyky'],
  ['k', 'black', 'schwarz', 'noir', 'key', 'cmykk'],
];

/** What columns called by letters mean by what stands beside them. */
export interface LetterColumns {
  readonly fields: ReadonlyMap<number, Field>;
  /** Amounts of ink: no color without the profile of a device. */
  readonly inks: readonly number[];
  /** x and y without their Y, or Y with half of its set. */
  readonly halves: readonly number[];
}

/** Sets of letters that follow each other; Y is an LRV only where it stands with no other letter of its sets. */
export function letterColumns(headings: readonly string[]): LetterColumns {
  const keys = headings.map((heading) => headingKey(bareHeading(heading)));
  const inks = inksAmong(keys);
  const fields = new Map<number, Field>();
  for (const [letters, meant] of SETS) {
    const [first, second, third] = letters.split(' ');
    // One set may stand several times, under several lights.
    for (let at = 0; at + 2 < keys.length; at++) {
      const isSet = keys[at] === first && keys[at + 1] === second && keys[at + 2] === third;
      if (!isSet || [at, at + 1, at + 2].some((one) => fields.has(one) || inks.includes(one))) continue;
      for (const [k, field] of meant.entries()) fields.set(at + k, field);
    }
  }
  const open = (letter: string) =>
    keys.flatMap((key, at) => (key === letter && !fields.has(at) && !inks.includes(at) ? [at] : []));
  const [x, y, z] = [open('x'), open('y'), open('z')];
  if (x.length === 1 && y.length === 1 && z.length === 1) {
    for (const [k, field] of (['xyz_x', 'xyz_y', 'xyz_z'] as const).entries()) fields.set([x, y, z][k]![0]!, field);
    return { fields, inks, halves: [] };
  }
  return { fields, inks, halves: x.length + z.length > 0 ? [...x, ...y, ...z] : [] };
}

/** C and M side by side, with Y and K after them. */
function inksAmong(keys: readonly string[]): readonly number[] {
  const isInk = (ink: number, at: number) => INKS[ink]!.includes(keys[at] ?? '');
  const c = keys.findIndex((_, at) => isInk(0, at) && isInk(1, at + 1));
  return c < 0 ? [] : [c, c + 1, ...[c + 2, c + 3].filter((at) => isInk(2, at) || isInk(3, at))];
}
