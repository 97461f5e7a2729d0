import type { Vec3 } from '../../engine/light/types';

/** The stage: a table before a panel, in a closed booth of the same gray. m; x to the right, y to the panel, z up from the table. */
export const BOOTH = { width: 3.2, depth: 2.4, height: 2.6 } as const;

/** A rectangle of the booth's shell that a lamp fills, by its least and its greatest corner; `towards` is its front. */
interface LampPlace {
  readonly min: Vec3;
  readonly max: Vec3;
  readonly towards: 'x+' | 'y+' | 'z-';
}

const onLeft = (y: readonly [number, number], z: readonly [number, number]): LampPlace => ({
  min: [0, y[0], z[0]],
  max: [0, y[1], z[1]],
  towards: 'x+',
});
const overhead = (x: readonly [number, number], y: readonly [number, number]): LampPlace => ({
  min: [x[0], y[0], BOOTH.height],
  max: [x[1], y[1], BOOTH.height],
  towards: 'z-',
});

/**
 * The chief face of each light group, in the order of GROUPS: the sky wide and soft from above left, the sun small, what lies outside
 * from the left, lamps overhead. All are placed so that they light what lies more than what stands, and all samples about alike.
 */
export const CHIEF_FACES: readonly LampPlace[] = [
  overhead([0.1, 1.7], [1.75, 2.2]),
  overhead([0.5, 0.62], [2.22, 2.34]),
  onLeft([1.5, 2.3], [0.8, 1.3]),
  onLeft([1.5, 2.3], [1.3, 1.8]),
  overhead([0.9, 2.3], [1.3, 1.74]),
  overhead([0.8, 2.4], [2.35, 2.38]),
  overhead([1.45, 1.75], [0.95, 1.2]),
  overhead([1.2, 2], [2.22, 2.32]),
];

const FILL = { from: 1, to: 2.4, gap: 0.004, x: [0.5, 2.7] } as const;
/** Groups from the lowest fill up: pendants light what stands most, strips under cabinets least. */
const FILLS_UPWARD = [6, 4, 2, 0, 3, 1, 7, 5];

/** The second face of each group, behind one's head: what it sends meets what stands more than what lies. */
export const FILL_FACES: readonly LampPlace[] = CHIEF_FACES.map((_, group) => {
  const step = (FILL.to - FILL.from) / CHIEF_FACES.length;
  const low = FILL.from + FILLS_UPWARD.indexOf(group) * step;
  return {
    min: [FILL.x[0], 0, low],
    max: [FILL.x[1], 0, low + step - FILL.gap],
    towards: 'y+',
  };
});

/** Where the light of the stand is set: just over the table, and just before the panel. Points and the way they face. */
export const REFERENCE_POINTS: { readonly [P in 'up' | 'upright']: readonly Vec3[] } = {
  up: [-0.45, 0, 0.45].map((dx) => [BOOTH.width / 2 + dx, BOOTH.depth - 0.35, 0.05]),
  upright: [-0.45, 0, 0.45].map((dx) => [BOOTH.width / 2 + dx, BOOTH.depth - 0.05, 0.2]),
};
