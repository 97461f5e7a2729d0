/**
 * Roughness of a face by its gloss: [gloss units at 60 degrees, roughness]. Gloss bands follow the paint trade's names
 * (matte to 10, low sheen 25, satin 35, semi-gloss to 70, gloss to 85, high gloss over; common practice, no source); the
 * roughness and the share of a clear mirror, third, are ours, chosen by eye. They only decide how reflections look, never a finding.
 */
const ROUGHNESS_BY_GU: readonly (readonly [number, number, number])[] = [
  [5, 1, 0],
  [10, 0.75, 0.35],
  [25, 0.55, 0.6],
  [35, 0.42, 0.8],
  [70, 0.28, 1],
  [85, 0.15, 1],
  [100, 0.05, 1],
];

export interface Sheen {
  /** 0 = mirror, 1 = matte. */
  readonly roughness: number;
  /** How much of the mirrored light is shown, 0-1. */
  readonly strength: number;
  /** Half-angle of the cone that is mirrored together, rad. */
  readonly cone: number;
}

/** The sheen of a face of `gloss` gloss units at 60 degrees; null = none (5 GU and less). */
export function sheenOfGloss(gloss: number): Sheen | null {
  if (!(gloss > 5)) return null;
  const top = ROUGHNESS_BY_GU[ROUGHNESS_BY_GU.length - 1]!;
  const above = ROUGHNESS_BY_GU.findIndex(([gu]) => gloss <= gu);
  const [, roughness, strength] =
    above < 0 ? top : between(ROUGHNESS_BY_GU[above - 1]!, ROUGHNESS_BY_GU[above]!, gloss);
  // Width of the microfacet lobe: alpha = roughness squared.
  return { roughness, strength, cone: Math.atan(roughness * roughness) };
}

function between(
  low: readonly [number, number, number],
  high: readonly [number, number, number],
  gloss: number,
): readonly [number, number, number] {
  const f = (gloss - low[0]) / (high[0] - low[0]);
  return [gloss, low[1] + f * (high[1] - low[1]), low[2] + f * (high[2] - low[2])];
}
