import type { ComponentRecord } from '../../engine/judge/assessment';
import { averageRecord } from '../../engine/judge/component-record';
import { type Result, success } from '../../engine/result';
import { layFinish } from '../../kitchen/study/lay-finish';
import type { Finish } from '../../model/project';
import { foundFacts, keepFacts } from './known-facts';

/** What a finish is by its numbers: the area mean of its colors, named, with provenance and uncertainty. Worked out once. */
export function finishFacts(finish: Finish): Result<ComponentRecord> {
  const before = foundFacts(finish);
  if (before) return before;
  const laid = layFinish(new Map([[finish.id, finish]]), {
    finish: finish.id,
    state: 'open',
    laying: { layout: 'plain' },
  });
  const facts = laid.ok ? success(averageRecord(laid.value.components)) : laid;
  keepFacts(finish, facts);
  return facts;
}
