const LARGEST_HALF = 0x7bff;

/**
 * Writes `floats` into `halves` as IEEE 754 binary16, rounded to nearest even. Magnitudes over 65504 become 65504 and NaN
 * becomes 0: in a light texture an infinity would spread over whole triangles.
 */
export function halvesFromFloats(halves: Uint16Array, floats: Float32Array): void {
  const bits = new Uint32Array(floats.buffer, floats.byteOffset, floats.length);
  for (let i = 0; i < bits.length; i++) {
    const word = bits[i]!;
    const sign = (word >>> 16) & 0x8000;
    const magnitude = word & 0x7fffffff;
    if (magnitude >= 0x477ff000) {
      halves[i] = magnitude > 0x7f800000 ? 0 : sign | LARGEST_HALF;
    } else if (magnitude >= 0x38800000) {
      // Rebias the exponent by 112 and drop 13 mantissa bits; a carry of the rounding moves into the exponent as it should.
      halves[i] = sign | ((magnitude - 0x38000000 + 0xfff + ((magnitude >>> 13) & 1)) >>> 13);
    } else {
      // Subnormal: units of 2^-24. The detour over the value is slow, but only darkness takes it.
      halves[i] = sign | roundedHalfToEven(Math.abs(floats[i]!) * 16777216);
    }
  }
}

function roundedHalfToEven(value: number): number {
  const floor = Math.floor(value);
  const rest = value - floor;
  return rest > 0.5 || (rest === 0.5 && floor % 2 === 1) ? floor + 1 : floor;
}
