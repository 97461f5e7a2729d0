import type { Vec3 } from '../../engine/light/types';
import { TURNS } from '../../engine/pattern/place';
import type { Turn } from '../../engine/pattern/types';
import { dot } from './mirror-frame';

/** Two edges of a face, m, and how far its pattern goes along each: (s, t) in m. */
export interface PatternEdges {
  readonly edges: readonly [Vec3, Vec3];
  readonly onPattern: readonly [readonly [s: number, t: number], readonly [s: number, t: number]];
}

/** Unit vector along the brush lines on a face: where the turned pattern's t stays as it is. The twin of `brushLine` in brushed.glsl. */
export function brushLine({ edges: [a, b], onPattern }: PatternEdges, normal: Vec3, turn: Turn): Vec3 {
  const [cosine, sine] = TURNS[turn];
  const [ta, tb] = onPattern.map(([s, t]) => cosine * t - sine * s) as [number, number];
  const raw = a.map((x, k) => x * tb - b[k]! * ta) as unknown as Vec3;
  const out = dot(raw, normal);
  const line = raw.map((x, k) => x - out * normal[k]!) as unknown as Vec3;
  const length = Math.hypot(...line);
  // Faces without a place on the pattern are brushed upright.
  if (length === 0) return Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  return line.map((x) => x / length) as unknown as Vec3;
}
