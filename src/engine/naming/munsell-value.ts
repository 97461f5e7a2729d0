import { lightnessFromY } from '../color/lab';

/** Luminance factor Y 0-100 of Munsell value (ASTM D1535-14, quintic against the perfect diffuser); held inside 0-10. */
export function yFromMunsellValue(value: number): number {
  const v = Math.min(10, Math.max(0, value));
  return v * (1.1914 + v * (-0.22533 + v * (0.23352 + v * (-0.020484 + v * 0.00081939))));
}

/** Munsell value 0-10 of luminance factor Y 0-100 (ASTM D1535-14); held inside. */
export function munsellValueFromY(y: number): number {
  const held = Math.min(100, Math.max(0, y));
  // A tenth of L* is within 0.15 of the value; Newton's method doubles the digits from there.
  let v = lightnessFromY(held) / 10;
  for (let step = 0; step < 4; step++) {
    const slope = 1.1914 + v * (-0.45066 + v * (0.70056 + v * (-0.081936 + v * 0.00409695)));
    v = Math.min(10, Math.max(0, v - (yFromMunsellValue(v) - held) / slope));
  }
  return v;
}
