import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import type { Command } from '../../src/model/commands';
import type { Project } from '../../src/model/project';
import { isSameValue } from '../../src/model/same-value';
import { whatChanged } from '../../src/model/what-changed';
import { changeSentence } from '../../src/ui/words/what-changed';
import { demoProject } from '../io/demo';

const demo = demoProject();
const done = (project: Project, ...commands: readonly Command[]): Project =>
  commands.reduce((before, one) => {
    const result = applyCommand(before, one);
    if (!result.ok) throw new Error(result.problem.text);
    return result.value;
  }, project);
const said = (...commands: readonly Command[]) =>
  whatChanged(demo, done(demo, ...commands)).map((change) => changeSentence(change, false));

const surface = fc.constantFrom(...SURFACES);
const option = fc.constantFrom('copied-look', 'our-floor', 'second');
const name = fc.constantFrom('A name', 'Another');
const command: fc.Arbitrary<Command> = fc.oneof(
  fc
    .record({ option, surface, finish: fc.constantFrom('PT-01', 'PT-02', 'TL-01', 'TL-04', 'ST-02', 'WD-07') })
    .map((one): Command => ({ kind: 'lay-finish', ...one })),
  fc
    .record({ option, surface, state: fc.constantFrom('open' as const, 'decided' as const) })
    .map((one): Command => ({ kind: 'set-state', ...one })),
  fc.record({ option, name }).map((one): Command => ({ kind: 'copy-option', id: 'second', ...one })),
  option.map((one): Command => ({ kind: 'remove-option', option: one })),
  fc
    .record({ what: fc.constantFrom('project' as const, 'option' as const, 'setting' as const), name })
    .map((one): Command => ({ kind: 'rename', id: one.what === 'option' ? 'our-floor' : 'day', ...one })),
  fc.constantFrom('', 'Ask again').map((note): Command => ({ kind: 'set-note', what: 'project', note })),
  fc
    .constantFrom('', 'Ask again')
    .map((note): Command => ({ kind: 'set-note', what: 'option', option: 'our-floor', note })),
  fc
    .constantFrom('Other', demo.library[0]!.label)
    .map((label): Command => ({ kind: 'edit-finish', finish: demo.library[0]!.id, changes: { label } })),
  fc.constantFrom(0.2, 1).map((level): Command => ({ kind: 'set-group', setting: 'day', group: 'ceiling', level })),
  fc.constantFrom(1931, null).map((year): Command => ({ kind: 'set-year', year_built: year })),
  fc
    .constantFrom(...demo.library.slice(-3).map(({ id }) => id))
    .map((id): Command => ({ kind: 'remove-finish', finish: id })),
  fc.constant<Command>({ kind: 'set-openings', openings: [] }),
  fc.constant<Command>({ kind: 'set-users', users: ['children'] }),
);

describe('what changed', () => {
  it('is empty exactly where two documents make the same file, and says each thing in a sentence', () => {
    fc.assert(
      fc.property(fc.array(command, { maxLength: 6 }), fc.boolean(), (commands, backwards) => {
        const other = commands.reduce((before, one) => {
          const result = applyCommand(before, one);
          return result.ok ? result.value : before;
        }, demo);
        const changes = backwards ? whatChanged(other, demo) : whatChanged(demo, other);
        expect(changes.length === 0).toBe(projectText(other) === projectText(demo));
        for (const change of changes) expect(changeSentence(change, true)).toMatch(/^\S.*\S\.$/);
      }),
      { numRuns: 60 },
    );
  });

  it('does not mind in which order the members of an object came', () => {
    const turned = (value: unknown): unknown =>
      typeof value !== 'object' || value === null
        ? value
        : Array.isArray(value)
          ? value.map(turned)
          : Object.fromEntries(
              Object.entries(value)
                .reverse()
                .map(([key, one]) => [key, turned(one)]),
            );
    expect(whatChanged(demo, turned(demo) as Project)).toEqual([]);
  });

  it('leaves log, revisions and the id out', () => {
    const entry = { at: '2026-05-04T16:30Z', kind: 'note', text: 'Came' } as const;
    const later = done(demo, { kind: 'add-log', entry });
    expect(whatChanged(demo, { ...later, id: 'a-copy' })).toEqual([]);
  });
});

describe('the sentences', () => {
  const label = (id: string) => demo.library.find((finish) => finish.id === id)!.label;
  const lies = (at: 'backsplash' | 'base-fronts') => label(demo.options[1]!.scheme[at].finish);

  it('name what lies where and what lay there, surfaces that changed alike together', () => {
    const lay = (at: 'backsplash' | 'base-fronts' | 'wall-fronts', finish: string): Command => ({
      kind: 'lay-finish',
      option: 'our-floor',
      surface: at,
      finish,
    });
    expect(said(lay('backsplash', 'TL-04'))).toEqual([
      `Backsplash: ${label('TL-04')} instead of ${lies('backsplash')}.`,
    ]);
    expect(said(lay('base-fronts', 'WD-07'), lay('wall-fronts', 'WD-07'))).toEqual([
      `Base and wall-cabinet fronts: ${label('WD-07')} instead of ${lies('base-fronts')}.`,
    ]);
  });

  it('tell states, layings, finishes, kitchen and light', () => {
    const { laying } = demo.options[1]!.scheme.backsplash;
    expect(
      said(
        { kind: 'set-state', option: 'our-floor', surface: 'backsplash', state: 'ordered' },
        { kind: 'set-laying', option: 'our-floor', surface: 'backsplash', laying: { ...laying, layout: 'stack' } },
        { kind: 'edit-finish', finish: 'TL-04', changes: { gloss_gu: 20 } },
        { kind: 'set-openings', openings: [] },
        { kind: 'set-group', setting: 'day', group: 'ceiling', level: 0.3 },
      ),
    ).toEqual([
      'Backsplash: ordered, was open; laid in another way.',
      `Finish changed: ${label('TL-04')}.`,
      'Kitchen changed: windows.',
      `Light changed: ${demo.settings[0]!.name}.`,
    ]);
  });

  it('count what would make a list too long', () => {
    const finishes = Array.from({ length: 9 }, (_, i) => ({ ...demo.library[0]!, id: `N-${i}`, label: `N${i}` }));
    expect(said({ kind: 'add-finishes', finishes })).toEqual(['Finishes added: N0, N1, N2, N3, N4, and 4 more.']);
  });
});

it('compares by value: what is undefined is absent, and lists keep their order', () => {
  expect(isSameValue({ a: 1, b: undefined }, { a: 1 })).toBe(true);
  expect(isSameValue({ a: [1, 2] }, { a: [2, 1] })).toBe(false);
  expect(isSameValue([], {})).toBe(false);
  expect(isSameValue(null, {})).toBe(false);
});
