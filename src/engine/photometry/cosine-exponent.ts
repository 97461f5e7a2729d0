/**
 * Exponent n of I = I0 cos^n whose intensity is half its peak at half the beam angle (the full angle between the directions
 * of half the peak intensity, CIE e-ILV 17-27-088, from memory). 120 degrees is Lambert, n = 1. Over 0, under 180 degrees.
 */
export function cosineExponent(beam_angle_deg: number): number {
  if (!(beam_angle_deg > 0 && beam_angle_deg < 180)) throw new RangeError(`beam angle ${beam_angle_deg}`);
  return -Math.LN2 / Math.log(Math.cos((beam_angle_deg * Math.PI) / 360));
}
