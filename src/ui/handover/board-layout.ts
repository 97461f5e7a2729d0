/** A row of pieces on the board, mm. */
export interface BoardTier {
  readonly height: number;
  readonly widths: readonly number[];
}

/** Room for the label of a piece, between pieces and between rows, mm. */
const LABEL_MM = 15;
const GAP_MM = 3;
/** A label needs this width, and a piece this height to be seen at all. */
const LEAST_WIDTH_MM = 35;
const LEAST_HEIGHT_MM = 9;

/**
 * Rows of pieces that fill a board of `width` by `height` mm: each row as high, in it each piece as wide, as its share of the view asks, but
 * none so small that one could not see it or read its label.
 */
export function boardTiers(
  shares: readonly (readonly number[])[],
  width: number,
  height: number,
): readonly BoardTier[] {
  const sums = shares.map((tier) => tier.reduce((sum, share) => sum + share, 0));
  const room = height - shares.length * LABEL_MM - (shares.length - 1) * GAP_MM;
  const heights = portions(sums, room, LEAST_HEIGHT_MM);
  return shares.map((tier, i) => ({
    height: heights[i]!,
    widths: portions(tier, width - GAP_MM * (tier.length - 1), LEAST_WIDTH_MM),
  }));
}

/** Parts of a length by share, none below `least` as long as all have room for that. */
function portions(shares: readonly number[], length: number, least: number): readonly number[] {
  const low = Math.min(least, length / shares.length);
  const raised = new Set<number>();
  for (;;) {
    const free = shares.reduce((sum, share, i) => (raised.has(i) ? sum : sum + share), 0);
    const left = length - raised.size * low;
    const part = (i: number) => (raised.has(i) ? low : free > 0 ? (left * shares[i]!) / free : left / shares.length);
    const short = shares.findIndex((_, i) => !raised.has(i) && part(i) < low - 1e-9);
    if (short < 0) return shares.map((_, i) => part(i));
    raised.add(short);
  }
}
