import type { Solid, Viewpoint } from '../../engine/light/types';
import { BOOTH } from './booth';
import type { Arrangement } from './types';

/** Eyes over the table: a person seated at a counter, and one who stands at it, m. */
const SEATED_M = 0.32;
const STANDING_M = 0.72;
/** From the foremost sample to the eye, m. */
const AWAY_M = 0.85;
/** A picture this many times as wide as high takes in all samples with a margin. */
const ASPECT = 1.35;
const MARGIN = 1.15;

/** Where one sits or stands before the stand, and how one looks straight down on what lies. */
export function standViewpoints(solids: readonly Solid[], arrangement: Arrangement): Viewpoint[] {
  const low = (k: 0 | 1 | 2) => Math.min(...solids.map(({ min }) => min[k]));
  const high = (k: 0 | 1 | 2) => Math.max(...solids.map(({ max }) => max[k]));
  const { width, depth } = BOOTH;
  const across = high(0) - low(0);
  const middle = width / 2;
  const front = low(1);
  const look = (id: string, name: string, height: number, away: number): Viewpoint => {
    const eye = [middle, Math.max(0.2, front - away), height] as const;
    // Between the front edge of what lies and the top of what stands.
    const target = [middle, (front + depth) / 2, arrangement === 'all-flat' ? 0 : high(2) * 0.42] as const;
    const distance = Math.hypot(target[1] - eye[1], target[2] - eye[2]);
    const pitch = Math.atan2(eye[2] - target[2], target[1] - eye[1]);
    const tall = (depth - front) * Math.sin(pitch) + high(2) * Math.cos(pitch);
    const shown = Math.max(across / ASPECT, tall) * MARGIN;
    return {
      id: `stand-${id}`,
      name,
      eye,
      target,
      fov_deg: (360 / Math.PI) * Math.atan(shown / 2 / distance),
      overview: true,
    };
  };
  return [
    look('standing', 'Standing', STANDING_M, AWAY_M),
    look('seated', 'Seated', SEATED_M, AWAY_M),
    look('above', 'From above', 1.25, 0.3),
  ];
}
