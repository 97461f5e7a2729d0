const clipped = new Float64Array(3 * 8);

/**
 * Form factor from a point with unit normal n to a flat convex quadrilateral (12 numbers: four corners in order), the
 * part below the point's horizon clipped away: C = 1/(2 pi) sum of Theta_k (n . Gamma_k), Lambert's formula. 0 to 1.
 */
export function quadFactor(
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  corners: Float64Array,
): number {
  let count = 0;
  let px = corners[9]! - x;
  let py = corners[10]! - y;
  let pz = corners[11]! - z;
  let ph = px * nx + py * ny + pz * nz;
  for (let k = 0; k < 12; k += 3) {
    const qx = corners[k]! - x;
    const qy = corners[k + 1]! - y;
    const qz = corners[k + 2]! - z;
    const qh = qx * nx + qy * ny + qz * nz;
    if (qh > 0 !== ph > 0) {
      const t = ph / (ph - qh);
      clipped[count] = px + (qx - px) * t;
      clipped[count + 1] = py + (qy - py) * t;
      clipped[count + 2] = pz + (qz - pz) * t;
      count += 3;
    }
    if (qh > 0) {
      clipped[count] = qx;
      clipped[count + 1] = qy;
      clipped[count + 2] = qz;
      count += 3;
    }
    px = qx;
    py = qy;
    pz = qz;
    ph = qh;
  }
  if (count < 9) return 0;
  let sum = 0;
  let ax = clipped[count - 3]!;
  let ay = clipped[count - 2]!;
  let az = clipped[count - 1]!;
  for (let k = 0; k < count; k += 3) {
    const bx = clipped[k]!;
    const by = clipped[k + 1]!;
    const bz = clipped[k + 2]!;
    const cx = ay * bz - az * by;
    const cy = az * bx - ax * bz;
    const cz = ax * by - ay * bx;
    const sine = Math.sqrt(cx * cx + cy * cy + cz * cz);
    if (sine > 1e-300) {
      const angle = Math.atan2(sine, ax * bx + ay * by + az * bz);
      sum += (angle * (cx * nx + cy * ny + cz * nz)) / sine;
    }
    ax = bx;
    ay = by;
    az = bz;
  }
  return Math.abs(sum) / (2 * Math.PI);
}
