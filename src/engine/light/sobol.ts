// The (0, 2)-sequence of van der Corput and Sobol: every first 2^k points have one in each cell of all grids of 2^k
// equal cells (T. Kollig and A. Keller, Efficient multidimensional sampling, 2002). Flipping fixed bits keeps that.

/** First coordinate of point i, as 32 bits. */
export function reverseBits(i: number): number {
  let bits = i >>> 0;
  bits = (bits << 16) | (bits >>> 16);
  bits = ((bits & 0x00ff00ff) << 8) | ((bits & 0xff00ff00) >>> 8);
  bits = ((bits & 0x0f0f0f0f) << 4) | ((bits & 0xf0f0f0f0) >>> 4);
  bits = ((bits & 0x33333333) << 2) | ((bits & 0xcccccccc) >>> 2);
  bits = ((bits & 0x55555555) << 1) | ((bits & 0xaaaaaaaa) >>> 1);
  return bits >>> 0;
}

/** Second coordinate of point i, as 32 bits. */
export function sobolSecond(i: number): number {
  let bits = 0;
  let direction = 0x80000000;
  for (let n = i >>> 0; n !== 0; n >>>= 1) {
    if (n & 1) bits ^= direction;
    direction = (direction ^ (direction >>> 1)) >>> 0;
  }
  return bits >>> 0;
}

/** 32 bits as a fraction 0-1, in the middle of its step. */
export const unitInterval = (bits: number): number => ((bits >>> 0) + 0.5) / 2 ** 32;
