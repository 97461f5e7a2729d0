import type { LaidFinish } from '../../engine/finish/types';
import type { PatternSpec } from '../../engine/pattern/types';
import type { Finish, Placement } from '../../model/project';

/** A baked pattern is shared by all surfaces with the same key. */
export interface KeyedPattern {
  readonly key: string;
  readonly spec: PatternSpec;
}

/**
 * What to bake for a finish as laid on a surface; null where it is one plain colour without joints, boards or variation.
 */
export function patternSpecFor(finish: Finish, placement: Placement, laid: LaidFinish): KeyedPattern | null {
  const { layout, joint_mm } = placement.laying;
  const hasJoint = laid.components.at(-1)?.role === 'grout';
  const pieces = layout !== 'plain' && finish.piece_mm !== undefined;
  if (laid.components.length === 1 && finish.pattern.kind === 'plain' && !pieces) return null;

  const spec: PatternSpec = {
    pattern: finish.pattern,
    layout: pieces || layout === 'planks' ? layout : 'plain',
    ...(finish.piece_mm ? { piece_mm: finish.piece_mm } : {}),
    ...(hasJoint && joint_mm ? { joint_mm } : {}),
    variation: finish.variation,
    shares: laid.components.map((component) => component.share),
    seed: seedFrom(finish.id),
    ...(placement.laying.direction_deg === 90 ? { turned: true } : {}),
  };
  return { key: `${finish.id}:${JSON.stringify(spec)}`, spec };
}

/** FNV-1a, so that a finish keeps its figure wherever it lies. */
function seedFrom(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
