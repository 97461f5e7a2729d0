import type { PatternSpec } from '../../engine/pattern/types';
import { layFinish } from '../../kitchen/study/lay-finish';
import { patternSpecFor } from '../../kitchen/study/pattern-spec';
import type { Finish, Laying } from '../../model/project';

/** A finish as laid: the colors of its components (CIELAB D65, joint last) and the pattern to bake, null when plain. */
export interface LaidSample {
  readonly labs: readonly (readonly [number, number, number])[];
  readonly pattern: { readonly key: string; readonly spec: PatternSpec } | null;
}

/** Null when the finish cannot be laid like that; the workers say why. */
export function laidSample(library: ReadonlyMap<string, Finish>, finish: Finish, laying: Laying): LaidSample | null {
  const placement = { finish: finish.id, laying, state: 'open' as const };
  const laid = layFinish(library, placement);
  if (!laid.ok) return null;
  return {
    labs: laid.value.components.map(({ labD65 }) => [labD65.l, labD65.a, labD65.b]),
    pattern: patternSpecFor(finish, placement, laid.value),
  };
}
