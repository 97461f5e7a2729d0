import type { Chain } from '../../kitchen/drawings/types';
import { type LengthUnit, lengthText, MM_PER_INCH } from '../../model/length-text';
import { digitsWide } from './sizes';

/** A length of a chain: between which of its marks it stands, and where its words do, mm on paper along the chain. */
export interface ChainLabel {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly at: number;
  /** The words have no room between the marks: they stand on the other side of the line, led to their part. */
  readonly isLed: boolean;
}

/** Free space beside words, mm on paper. */
const CLEAR = 0.9;

/** The least length that is written: a tenth of a millimeter, a sixteenth of an inch. */
const STEP: { readonly [U in LengthUnit]: number } = { mm: 0.1, in: MM_PER_INCH / 16 };

/**
 * Lengths as they are written, in whole steps, that add up to the whole as it is written: what is lost in rounding is given to those that were
 * rounded most, so that what is a whole number of steps stays it.
 */
export function writtenLengths(marks: readonly number[], unit: LengthUnit): readonly number[] {
  const step = STEP[unit];
  const lengths = marks.slice(1).map((mark, i) => (mark - marks[i]!) / step);
  const written = lengths.map((length) => Math.round(length + 1e-6));
  const whole = Math.round((marks.at(-1)! - marks[0]!) / step + 1e-6);
  let off = whole - written.reduce((sum, one) => sum + one, 0);
  const order = lengths
    .map((length, i) => ({ i, by: length - written[i]! }))
    .sort((a, b) => (off > 0 ? b.by - a.by : a.by - b.by));
  for (const { i } of order) {
    if (off === 0) break;
    const way = Math.sign(off);
    written[i] = written[i]! + way;
    off -= way;
  }
  return written.map((one) => one * step);
}

/** Heights are told from the floor too: each mark is rounded, so that a chain and its levels say the same. */
export function writtenHeights(marks: readonly number[], unit: LengthUnit): readonly number[] {
  const step = STEP[unit];
  const levels = marks.map((mark) => Math.round(mark / step + 1e-6) * step);
  return levels.slice(1).map((level, i) => level - levels[i]!);
}

/** Where the words of a chain stand at a scale; led words are moved apart, and stay between the ends of the chain. */
export function chainLabels({ what, side, marks }: Chain, ratio: number, unit: LengthUnit): readonly ChainLabel[] {
  const isUpright = side === 'left' || side === 'right';
  const lengths = what === 'heights' ? writtenHeights(marks, unit) : writtenLengths(marks, unit);
  // Upright chains are read from below, and so are their places: up is less.
  const top = marks.at(-1)!;
  const toPaper = (mark: number): number => (isUpright ? top - mark : mark) / ratio;
  const labels = lengths.map((length, i): ChainLabel => {
    const [from, to] = [toPaper(marks[i]!), toPaper(marks[i + 1]!)].sort((a, b) => a - b) as [number, number];
    const text = lengthText(length, unit);
    return { from, to, text, at: (from + to) / 2, isLed: digitsWide(text) + CLEAR > to - from };
  });
  const ordered = isUpright ? [...labels].reverse() : labels;
  const ends = [ordered[0]!.from, ordered.at(-1)!.to] as const;
  const led = spread(
    ordered.filter(({ isLed }) => isLed),
    ends,
  );
  return ordered.map((label) => (label.isLed ? led.shift()! : label));
}

/** Moved apart as little as it takes, in their order. */
function spread(labels: readonly ChainLabel[], [least, most]: readonly [number, number]): ChainLabel[] {
  const half = labels.map(({ text }) => (digitsWide(text) + CLEAR) / 2);
  const at = labels.map((label) => label.at);
  for (let round = 0; round < 60; round++) {
    for (let i = 1; i < at.length; i++) {
      const lack = at[i - 1]! + half[i - 1]! + half[i]! - at[i]!;
      if (lack <= 0) continue;
      at[i - 1] = at[i - 1]! - lack / 2;
      at[i] = at[i]! + lack / 2;
    }
    for (const [i, place] of at.entries()) at[i] = Math.min(Math.max(place, least + half[i]!), most - half[i]!);
  }
  return labels.map((label, i) => ({ ...label, at: at[i]! }));
}
