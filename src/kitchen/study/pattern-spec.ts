import type { LaidFinish } from '../../engine/finish/types';
import type { Layout, PatternSpec, Turn } from '../../engine/pattern/types';
import { isBoard } from '../../model/layouts';
import type { Finish, Laying, Placement } from '../../model/project';
import { slabOf } from '../../model/slab';

/** A baked pattern is shared by all surfaces with the same key. */
export interface KeyedPattern {
  readonly key: string;
  readonly spec: PatternSpec;
}

/**
 * What to bake for a finish as laid on a surface; null where it is one plain colour without joints, boards or variation.
 */
export function patternSpecFor(finish: Finish, placement: Placement, laid: LaidFinish): KeyedPattern | null {
  const { joint_mm, slab } = placement.laying;
  const layout = laidLayout(finish, placement.laying);
  const hasJoint = laid.components.at(-1)?.role === 'grout';
  const isOneColor = laid.components.length === 1 && finish.pattern.kind === 'plain' && layout === 'plain';
  if (isOneColor && finish.variation === 'V0') return null;
  const size = layout === 'plain' ? slabOf(finish) : null;
  const turn = turnOf(layout, placement.laying);
  const spec: PatternSpec = {
    pattern: finish.pattern,
    layout,
    ...(finish.piece_mm ? { piece_mm: finish.piece_mm } : {}),
    ...(hasJoint && joint_mm ? { joint_mm } : {}),
    variation: finish.variation,
    shares: laid.components.map((component) => component.share),
    seed: seedFrom(finish.id),
    ...(turn ? { turn_deg: turn } : {}),
    ...(size ? { slab: { size_mm: size, match: slab?.match ?? 'bookmatch' } } : {}),
  };
  return { key: `${finish.id}:${JSON.stringify(spec)}`, spec };
}

/** The layout a finish can have: what comes in no pieces lies as one. */
const laidLayout = (finish: Finish, { layout }: Laying): Layout =>
  layout === 'plain' || finish.piece_mm || isBoard(finish) ? layout : 'plain';

/** An upright stack is a stack turned by a quarter. */
const turnOf = (layout: Layout, { direction_deg = 0 }: Laying): Turn =>
  layout === 'stack-upright' ? 90 : direction_deg;

/** FNV-1a, so that a finish keeps its figure wherever it lies. */
function seedFrom(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
