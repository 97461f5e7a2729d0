/** What the filters of a row look back at: the byte a pixel to the left, the one above, the one above that to the left. */
type Predict = (left: number, up: number, upLeft: number) => number;

/** Filter types 0-4 of the PNG specification, third edition, section 9.2. */
const FILTERS: readonly Predict[] = [
  () => 0,
  (left) => left,
  (_, up) => up,
  (left, up) => (left + up) >> 1,
  (left, up, upLeft) => {
    const p = left + up - upLeft;
    const [a, b, c] = [Math.abs(p - left), Math.abs(p - up), Math.abs(p - upLeft)];
    return a <= b && a <= c ? left : b <= c ? up : upLeft;
  },
];

/**
 * Rows of bytes with the type of their filter before each: per row the filter whose differences, taken as signed bytes, have the
 * least sum of sizes (the heuristic of section 12.7). `bytes` holds `height` rows; `perPixel` bytes make a pixel.
 */
export function filteredRows(bytes: Uint8Array, height: number, perPixel: number): Uint8Array {
  const stride = bytes.length / height;
  const out = new Uint8Array(height * (1 + stride));
  const trial = new Uint8Array(stride);
  for (let row = 0; row < height; row++) {
    const from = row * stride;
    let least = Number.POSITIVE_INFINITY;
    for (const [type, predict] of FILTERS.entries()) {
      let sum = 0;
      for (let i = 0; i < stride; i++) {
        const left = i >= perPixel ? bytes[from + i - perPixel]! : 0;
        const up = row > 0 ? bytes[from + i - stride]! : 0;
        const upLeft = row > 0 && i >= perPixel ? bytes[from + i - stride - perPixel]! : 0;
        const value = (bytes[from + i]! - predict(left, up, upLeft)) & 0xff;
        trial[i] = value;
        sum += value < 128 ? value : 256 - value;
      }
      if (sum >= least) continue;
      least = sum;
      out[row * (1 + stride)] = type;
      out.set(trial, row * (1 + stride) + 1);
    }
  }
  return out;
}
