import type { ComponentRecord } from '../../engine/judge/assessment';
import { averageRecord } from '../../engine/judge/component-record';
import type { Result } from '../../engine/result';
import { success } from '../../engine/result';
import { layFinish } from '../../kitchen/study/lay-finish';
import type { Finish } from '../../model/project';

const known = new WeakMap<Finish, Result<ComponentRecord>>();

/** What a finish is by its numbers: the area mean of its colors, named, with provenance and uncertainty. Worked out once. */
export function finishFacts(finish: Finish): Result<ComponentRecord> {
  const before = known.get(finish);
  if (before) return before;
  const laid = layFinish(new Map([[finish.id, finish]]), {
    finish: finish.id,
    state: 'open',
    laying: { layout: 'plain' },
  });
  const facts = laid.ok ? success(averageRecord(laid.value.components)) : laid;
  known.set(finish, facts);
  return facts;
}

/** The facts if they are known already. */
export const knownFacts = (finish: Finish): ComponentRecord | null => {
  const facts = known.get(finish);
  return facts?.ok ? facts.value : null;
};
