const float = new Float32Array(1);
const bits = new Uint32Array(float.buffer);

/** IEEE 754 binary16 of a finite number, rounded to nearest; beyond its range it saturates at 65504. */
export function halfFromFloat(value: number): number {
  float[0] = value;
  const word = bits[0]!;
  const sign = (word >>> 16) & 0x8000;
  const exponent = ((word >>> 23) & 0xff) - 112;
  const mantissa = word & 0x7fffff;
  if (exponent >= 31) return sign | 0x7bff;
  if (exponent > 0) {
    const rounded = (exponent << 10) + (mantissa >>> 13) + ((mantissa >>> 12) & 1);
    return sign | Math.min(rounded, 0x7bff);
  }
  if (exponent < -10) return sign;
  const subnormal = (mantissa | 0x800000) >>> (14 - exponent);
  return sign | subnormal;
}

/** Back to a number; used where the processor must read what the picture reads. */
export function floatFromHalf(half: number): number {
  const sign = half & 0x8000 ? -1 : 1;
  const exponent = (half >>> 10) & 0x1f;
  const fraction = half & 0x3ff;
  if (exponent === 0) return sign * fraction * 2 ** -24;
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}
