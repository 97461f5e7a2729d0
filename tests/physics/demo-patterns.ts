import type { FinishComponent } from '../../src/engine/finish/types';
import type { PatternSpec } from '../../src/engine/pattern/types';
import { SURFACES } from '../../src/engine/surface';
import { layFinish } from '../../src/kitchen/study/lay-finish';
import { patternSpecFor } from '../../src/kitchen/study/pattern-spec';
import { canGoOn } from '../../src/model/finish-candidates';
import { layingFor } from '../../src/model/laying';
import type { Laying } from '../../src/model/project';
import { demoProject } from '../io/demo';

export interface DemoPattern {
  readonly name: string;
  readonly spec: PatternSpec;
  readonly components: readonly FinishComponent[];
}

const demo = demoProject();
const library = new Map(demo.library.map((finish) => [finish.id, finish]));

/** The pattern of a finish of the demo in a laying; null where it is one plain color. */
export function demoPattern(id: string, laying: Laying): DemoPattern | null {
  const finish = library.get(id)!;
  const placement = { finish: id, state: 'open', laying } as const;
  const laid = layFinish(library, placement);
  if (!laid.ok) throw new Error(laid.problem.text);
  const pattern = patternSpecFor(finish, placement, laid.value);
  const name = `${id}, ${laying.layout}`;
  return pattern && { name, spec: pattern.spec, components: laid.value.components };
}

/** Every pattern the demo's finishes make as they are usually laid, each once. */
export function demoPatterns(): readonly DemoPattern[] {
  const found = new Map<string, DemoPattern>();
  for (const finish of demo.library) {
    for (const surface of SURFACES.filter((one) => canGoOn(finish, one))) {
      const pattern = demoPattern(finish.id, layingFor(finish, surface, demo.library));
      if (pattern) found.set(pattern.name, pattern);
    }
  }
  return [...found.values()];
}
