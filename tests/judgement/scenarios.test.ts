import { describe, expect, it } from 'vitest';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { mutated, type Scenario, scenarioFiles } from './scenario';
import { unmet } from './scenario-checks';
import { inputOf } from './scenario-input';

const files = scenarioFiles();
const scenarios = files.flatMap((file) => file.scenarios);

function assessed(input: JudgeInput) {
  const pending = judge(input);
  return { pending, done: holdsIn(input, pending) };
}

for (const { about, finishes, scenarios } of files) {
  describe(about, () => {
    for (const scenario of scenarios) {
      it(`${scenario.id}: ${scenario.what} (${scenario.source.kind}: ${scenario.source.cite})`, () => {
        const check = (of: Scenario) => unmet(of.expect, assessed(inputOf(of, finishes)));
        expect(check(scenario)).toEqual([]);
        for (const mutation of scenario.then ?? []) {
          expect(check(mutated(scenario, mutation)), `then ${mutation.what}`).toEqual([]);
        }
      });
    }
  });
}

describe('the scenarios', () => {
  const share = (some: readonly Scenario[]) => some.length / scenarios.length;

  it('are many, each with a name and a source of its own kind', () => {
    expect(scenarios.length).toBeGreaterThanOrEqual(60);
    expect(new Set(scenarios.map((s) => s.id)).size).toBe(scenarios.length);
    expect(scenarios.filter((s) => s.source.kind === 'published').length).toBeGreaterThanOrEqual(20);
  });

  it('leave a quarter in which nothing may be warned of', () => {
    expect(share(scenarios.filter((s) => s.expect.quiet === true))).toBeGreaterThanOrEqual(0.25);
  });
});
