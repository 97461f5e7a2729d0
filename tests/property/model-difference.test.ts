import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { commandLabel } from '../../src/model/command-label';
import { applyDifference, differenceOf } from '../../src/model/difference';
import { record, startHistory, undo } from '../../src/model/history';
import type { Project } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { randomCommand } from './random-commands';
import { randomLightCommand } from './random-light-commands';

/** Goes there through JSON, as a difference is plain data. */
const through = (from: unknown, to: unknown): unknown => {
  const difference = differenceOf(from, to);
  return difference === null ? from : applyDifference(from, JSON.parse(JSON.stringify(difference)));
};

/** JSON trees as a parser gives them, with names that objects have by themselves. */
const tree = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4, depthSize: 'small' },
    fc.constantFrom<unknown>(null, true, false, 0, 1, -1.5, '', 'a', 'b'),
    fc.array(tie('value'), { maxLength: 5 }),
    fc
      .uniqueArray(fc.tuple(fc.constantFrom('a', 'b', 'c', '1', '__proto__', 'constructor', 'length'), tie('value')), {
        maxLength: 5,
        selector: ([name]) => name,
      })
      .map((members) => JSON.parse(`{${members.map(([n, v]) => `${JSON.stringify(n)}:${JSON.stringify(v)}`).join()}}`)),
  ),
})).value;

describe('the difference between two JSON trees', () => {
  it('leads from one to the other and back, to the byte', () => {
    fc.assert(
      fc.property(tree, tree, (one, other) => {
        expect(JSON.stringify(through(one, other))).toBe(JSON.stringify(other));
        expect(JSON.stringify(through(other, one))).toBe(JSON.stringify(one));
        expect(differenceOf(one, JSON.parse(JSON.stringify(one)))).toBeNull();
      }),
      { numRuns: 800 },
    );
  });

  it('sets no prototype and changes neither of them', () => {
    const from = Object.freeze(JSON.parse('{"a": 1}'));
    const to = JSON.parse('{"a": 1, "__proto__": {"isAdmin": true}}');
    const after = through(from, to) as Record<string, unknown>;
    expect(Object.getPrototypeOf(after)).toBe(Object.prototype);
    expect(after['isAdmin']).toBeUndefined();
    expect(JSON.stringify(after)).toBe('{"a":1,"__proto__":{"isAdmin":true}}');
    expect(({} as Record<string, unknown>)['isAdmin']).toBeUndefined();
  });

  it('is one small splice where one of 10,000 items goes, and shares the others', () => {
    const items = Array.from({ length: 10_000 }, (_, n) => ({ n }));
    for (const at of [0, 5000, 9999]) {
      const less = items.filter((_, i) => i !== at);
      expect(differenceOf({ items }, { items: less })).toEqual({ members: [['items', { at, cut: 1, put: [] }]] });
      const after = through({ items }, { items: less }) as { items: typeof items };
      expect(after.items.every((item, i) => item === less[i])).toBe(true);
      expect(JSON.stringify(differenceOf(less, items)).length).toBeLessThan(60);
    }
  });

  it('takes a member that is undefined for one that is not there', () => {
    expect(differenceOf({ a: 1, b: undefined }, { a: 1 })).toBeNull();
    expect(differenceOf({ a: 1 }, { a: undefined })).toEqual({ members: [], gone: ['a'] });
  });
});

describe('a difference that does not fit', () => {
  it('leads nowhere instead of to something wrong', () => {
    const wrong: readonly (readonly [unknown, unknown])[] = [
      [{}, null],
      [{}, 'set'],
      [{}, {}],
      [[], { members: [] }],
      [{}, { members: [['a']] }],
      [{}, { members: [[1, { set: 1 }]] }],
      [{}, { members: [], gone: ['a'] }],
      [{}, { members: [], gone: 'a' }],
      [{ a: 1 }, { members: [], order: ['b'] }],
      [{ a: 1 }, { members: [['a', { items: [] }]] }],
      [{}, { items: [] }],
      [[1], { items: [[1, { set: 2 }]] }],
      [[1], { items: [[-1, { set: 2 }]] }],
      [[1], { at: 0, cut: 2, put: [] }],
      [[1], { at: 0.5, cut: 0, put: [] }],
      [[1], { at: 0, cut: 0, put: {} }],
    ];
    for (const [from, difference] of wrong) expect(applyDifference(from, difference)).toBeUndefined();
  });

  it('never throws, whatever it is', () => {
    fc.assert(
      fc.property(tree, tree, fc.constantFrom('members', 'items', 'put', 'set', 'order'), (from, part, name) => {
        applyDifference(from, part);
        applyDifference(from, { at: 0, cut: 0, members: [], [name]: part });
      }),
      { numRuns: 1000 },
    );
  });
});

it('an order that names a member twice fits nothing', () => {
  const order = (names: readonly string[]) => applyDifference({ a: 1, b: 2 }, { members: [], order: names });
  expect(order(['a', 'a'])).toBeUndefined();
  expect(Object.keys(order(['b', 'a']) as object)).toEqual(['b', 'a']);
});

describe('differences of documents', () => {
  it('of any commands lead back step by step to the same files, and forward again', () => {
    const demo = demoProject();
    let steps = 0;
    fc.assert(
      fc.property(
        fc.array(fc.oneof(randomCommand, randomLightCommand), { minLength: 10, maxLength: 15 }),
        (commands) => {
          let history = startHistory<Project>(demo);
          for (const one of commands) {
            const result = applyCommand(history.present, one);
            if (result.ok) history = record(history, result.value, commandLabel(history.present, one));
          }
          const last = history.present;
          const forward: (readonly [Project, Project])[] = [];
          let kept: unknown = last;
          while (history.past.length > 0) {
            const before = undo(history);
            forward.unshift([before.present, history.present]);
            kept = through(kept, before.present);
            expect(projectText(kept as Project)).toBe(projectText(before.present));
            history = before;
            steps++;
          }
          for (const [from, to] of forward) {
            expect(kept).toEqual(from);
            kept = through(kept, to);
          }
          expect(projectText(kept as Project)).toBe(projectText(last));
        },
      ),
      { numRuns: 12 },
    );
    expect(steps).toBeGreaterThan(20);
  });

  it('are small for a small change', () => {
    const demo = demoProject();
    const laid = applyCommand(demo, { kind: 'lay-finish', option: 'our-floor', surface: 'counter', finish: 'EN-03' });
    if (!laid.ok) throw new Error(laid.problem.text);
    expect(JSON.stringify(differenceOf(demo, laid.value)).length).toBeLessThan(500);
  });
});
