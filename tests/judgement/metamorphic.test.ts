import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assessment, Warning } from '../../src/engine/judge/assessment';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { scenarioFiles } from './scenario';
import { inputOf } from './scenario-input';

const inputs = scenarioFiles().flatMap(({ finishes, scenarios }) => scenarios.map((s) => inputOf(s, finishes)));
const DRAWS = 40;
const assessed = (input: JudgeInput): Assessment => holdsIn(input, judge(input), { draws: DRAWS });

/** All that an assessment says, without the names of the finishes. */
const said = ({ warnings, pairs, balance }: Assessment) => ({ warnings, pairs, balance });

/** Every finish by another name: what it is called and in which order names come may change nothing. */
function renamed(input: JudgeInput, names: readonly string[]): JudgeInput {
  const given = [...new Set(input.surfaces.map((s) => s.finish.id))];
  const nameOf = (id: string) => `${names[given.indexOf(id) % names.length]}${given.indexOf(id)}`;
  return {
    ...input,
    surfaces: input.surfaces.map((s) => ({
      ...s,
      finish: { ...s.finish, id: nameOf(s.finish.id), label: nameOf(s.finish.id) },
    })),
  };
}

describe('what is said of a scheme', () => {
  it('does not depend on what finishes are called nor in which order surfaces come', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...inputs),
        fc.array(fc.string({ minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 4 }),
        fc.nat(),
        (input, names, turn) => {
          const k = turn % input.surfaces.length;
          const turned = [...input.surfaces.slice(k), ...input.surfaces.slice(0, k)].reverse();
          expect(said(assessed(renamed({ ...input, surfaces: turned }, names)))).toEqual(said(assessed(input)));
        },
      ),
      { numRuns: 40 },
    );
  });
});

/** The same colors, each known that many times as roughly. */
const rougher = (input: JudgeInput, times: number): JudgeInput => ({
  ...input,
  surfaces: input.surfaces.map((s) => ({
    ...s,
    finish: {
      ...s.finish,
      components: s.finish.components.map((c) => ({ ...c, uncertaintyDe00: c.uncertaintyDe00 * times })),
    },
  })),
});

const keyOf = (w: Warning): string => `${w.code} ${w.basis} ${w.severity} ${w.surfaces.join()}`;

describe('more uncertainty', () => {
  it('never makes a finding hold in more of the tries', () => {
    const raised = inputs.flatMap((input) => {
      const shares = [0.5, 1.5, 4, 10].map(
        (times) => new Map(assessed(rougher(input, times)).warnings.map((w) => [keyOf(w), w])),
      );
      return shares.slice(1).flatMap((rough, i) =>
        [...rough].flatMap(([key, w]) => {
          const before = shares[i]!.get(key);
          const step = (w.holds_in ?? 0) - (before?.holds_in ?? Number.POSITIVE_INFINITY);
          return step > 0.03 ? [`${input.option}: ${key}: ${before!.holds_in} to ${w.holds_in}: ${w.text}`] : [];
        }),
      );
    });
    expect(raised).toEqual([]);
  });
});
