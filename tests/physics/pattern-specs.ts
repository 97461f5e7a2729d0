import { jointShare } from '../../src/engine/pattern/joint-share';
import type { FinishPattern, Layout, PatternSpec, Variation } from '../../src/engine/pattern/types';

export interface DrawnFinish {
  readonly name: string;
  readonly pattern: FinishPattern;
  readonly shares: readonly number[];
  readonly layout: Layout;
  readonly piece_mm?: readonly [number, number];
  readonly joint_mm?: number;
  readonly variation: Variation;
  /** CIELAB D65 of each component, the joint's last. */
  readonly lab: readonly (readonly [number, number, number])[];
}

const GROUT = [74, 0, 1.5] as const;

/** Invented finishes, one or more of every pattern. */
export const FINISHES: readonly DrawnFinish[] = [
  {
    name: 'veined slab',
    pattern: { kind: 'veined', spacing_mm: 260, direction_deg: 28 },
    shares: [0.84, 0.16],
    layout: 'plain',
    variation: 'V1',
    lab: [
      [88.5, -0.8, -0.3],
      [62, -1.3, -4.3],
    ],
  },
  {
    name: 'thin white veins',
    pattern: { kind: 'veined', spacing_mm: 300, direction_deg: 20 },
    shares: [0.94, 0.06],
    layout: 'plain',
    variation: 'V1',
    lab: [
      [27, 0.2, -0.8],
      [84, -0.3, 0.8],
    ],
  },
  {
    name: 'veined tile',
    pattern: { kind: 'veined', spacing_mm: 200, direction_deg: 40 },
    shares: [0.88, 0.12],
    layout: 'running-bond',
    piece_mm: [600, 300],
    joint_mm: 3,
    variation: 'V2',
    lab: [[87, -0.6, 1], [65, -0.8, -1], GROUT],
  },
  {
    name: 'split-face slate',
    pattern: { kind: 'cleft', size_mm: 120 },
    shares: [0.88, 0.12],
    layout: 'stack',
    piece_mm: [400, 400],
    joint_mm: 3,
    variation: 'V3',
    lab: [[37, -1.5, -5.5], [43, -1.2, -4.2], GROUT],
  },
  {
    name: 'birch boards',
    pattern: { kind: 'grain', board_mm: [120, 1800] },
    shares: [0.82, 0.18],
    layout: 'planks',
    variation: 'V2',
    lab: [
      [74, 6, 26],
      [68, 8, 27],
    ],
  },
  {
    name: 'walnut veneer',
    pattern: { kind: 'grain' },
    shares: [0.7, 0.3],
    layout: 'plain',
    variation: 'V2',
    lab: [
      [44, 8, 15],
      [36, 7.5, 12],
    ],
  },
  {
    name: 'beech veneer',
    pattern: { kind: 'grain', figure: 'ray-fleck' },
    shares: [0.8, 0.2],
    layout: 'plain',
    variation: 'V1',
    lab: [
      [69, 9.5, 25],
      [62, 11, 26],
    ],
  },
  {
    name: 'white tile',
    pattern: { kind: 'plain' },
    shares: [1],
    layout: 'running-bond',
    piece_mm: [200, 100],
    joint_mm: 2,
    variation: 'V1',
    lab: [[93, -0.3, 1.8], GROUT],
  },
  {
    name: 'hand glaze',
    pattern: { kind: 'cloud', size_mm: 22 },
    shares: [0.85, 0.15],
    layout: 'running-bond',
    piece_mm: [130, 65],
    joint_mm: 2,
    variation: 'V3',
    lab: [[50, 25, 30], [43, 24, 26], GROUT],
  },
  {
    name: 'concrete look',
    pattern: { kind: 'cloud', size_mm: 260 },
    shares: [0.8, 0.2],
    layout: 'stack',
    piece_mm: [600, 600],
    joint_mm: 3,
    variation: 'V2',
    lab: [[70, 0.2, 2], [63, 0.2, 1.8], GROUT],
  },
  {
    name: 'terrazzo',
    pattern: { kind: 'fleck', size_mm: 14 },
    shares: [0.7, 0.18, 0.12],
    layout: 'plain',
    variation: 'V1',
    lab: [
      [80, 4, 4.5],
      [58, 14, 10],
      [48, 0.5, 0.5],
    ],
  },
  {
    name: 'granite',
    pattern: { kind: 'fleck', size_mm: 7 },
    shares: [0.5, 0.3, 0.2],
    layout: 'plain',
    variation: 'V2',
    lab: [
      [50, 10, 9],
      [62, 0.5, 1.5],
      [27, 0.5, 0.5],
    ],
  },
  {
    name: 'terrazzo tile',
    pattern: { kind: 'fleck', size_mm: 12 },
    shares: [0.7, 0.18, 0.12],
    layout: 'stack',
    piece_mm: [300, 300],
    joint_mm: 3,
    variation: 'V1',
    lab: [[80, 4, 4.5], [58, 14, 10], [48, 0.5, 0.5], GROUT],
  },
  {
    name: 'fabric print',
    pattern: { kind: 'thread', size_mm: 1.6 },
    shares: [0.7, 0.3],
    layout: 'plain',
    variation: 'V0',
    lab: [
      [78, 0.5, 7],
      [72, 1, 8],
    ],
  },
  { name: 'paint', pattern: { kind: 'plain' }, shares: [1], layout: 'plain', variation: 'V0', lab: [[92, -0.4, 1.6]] },
];

/** The spec of a finish as laid: the finish's own shares make room for the joint. */
export function specOf(finish: DrawnFinish, seed = 7): PatternSpec {
  const joint = finish.piece_mm && finish.joint_mm ? jointShare(finish.piece_mm, finish.joint_mm) : 0;
  const own = finish.shares.map((share) => share * (1 - joint));
  return {
    pattern: finish.pattern,
    layout: finish.layout,
    piece_mm: finish.piece_mm,
    joint_mm: finish.joint_mm,
    variation: finish.variation,
    shares: joint > 0 ? [...own, joint] : own,
    seed,
  };
}
