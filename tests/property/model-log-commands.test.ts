import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseProject, projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import type { Command } from '../../src/model/commands';
import { record, redo, startHistory, undo } from '../../src/model/history';
import type { Finish, Project } from '../../src/model/project';
import { demoProject } from '../io/demo';

const whole = demoProject();
/** The demo with few finishes, so that many documents are checked in little time. */
const demo: Project = {
  ...whole,
  settings: whole.settings.slice(0, 1),
  options: whole.options.slice(0, 1),
  library: whole.library.filter(({ id }) =>
    Object.values(whole.options[0]!.scheme).some(({ finish, laying }) => finish === id || laying.grout === id),
  ),
};
const AT = '2026-05-04T16:30:00.000Z';
const [some] = demo.library;
const called = (id: string, more: Partial<Finish> = {}): Finish => ({ ...some!, id, ...more });

const at = fc.constantFrom(AT, '2026-05-04T18:30+02:00', '2026-02-30T00:00:00Z', 'yesterday', '');
const words = fc.constantFrom('The sample came', 'Neu: größer', '', '  ');
const optional = { requiredKeys: ['at', 'kind', 'text'] } as { requiredKeys: ('at' | 'kind' | 'text')[] };
const entry = fc.record(
  {
    at,
    kind: fc.constantFrom('note' as const, 'decision' as const, 'revision' as const),
    text: words,
    option: fc.constantFrom('copied-look', 'gone'),
    surface: fc.constantFrom('floor' as const, 'counter' as const),
  },
  optional,
);
const revision = fc.constantFrom('R1', 'R2', 'R3', 'r1', '');
const command: fc.Arbitrary<Command> = fc.oneof(
  entry.map((one): Command => ({ kind: 'add-log', entry: one })),
  fc.integer({ min: -1, max: 4 }).map((n): Command => ({ kind: 'remove-log', entry: n })),
  words.map((note): Command => ({ kind: 'set-note', what: 'project', note })),
  fc
    .record({ option: fc.constantFrom('copied-look', 'gone'), note: words })
    .map((one): Command => ({ kind: 'set-note', what: 'option', ...one })),
  fc
    .record({ id: revision, name: words, at: fc.constantFrom(AT, AT, 'yesterday'), note: words })
    .map((one): Command => ({ kind: 'freeze-revision', ...one })),
  fc.record({ revision, name: words }).map((one): Command => ({ kind: 'rename-revision', ...one })),
  revision.map((one): Command => ({ kind: 'go-back-to-revision', revision: one })),
  revision.map((one): Command => ({ kind: 'remove-revision', revision: one })),
  fc.array(fc.constantFrom('N-1', 'N-2', 'N-3', some!.id, ''), { maxLength: 3 }).map(
    (ids): Command => ({
      kind: 'add-finishes',
      finishes: ids.map((id) =>
        called(id, { tags: ['warm', 'sample here'], origin: { library: 'own', name: 'Own range', finish: '7' } }),
      ),
    }),
  ),
  // Something else between them, or going back would change nothing.
  words.map((name): Command => ({ kind: 'rename', what: 'option', id: 'copied-look', name })),
);

/** Any write to the document throws in strict mode, so a command that changes its input cannot pass. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const member of Object.values(value)) frozen(member);
  }
  return value;
}
const done = (project: Project, ...commands: readonly Command[]): Project =>
  commands.reduce((before, one) => {
    const result = applyCommand(before, one);
    if (!result.ok) throw new Error(result.problem.text);
    return result.value;
  }, project);
const refused = (one: Command, from: Project = demo) => {
  const result = applyCommand(frozen(from), one);
  if (result.ok) throw new Error('it was done');
  return result.problem.code;
};
const freeze = (id: string): Command => ({ kind: 'freeze-revision', id, name: 'As shown', at: AT, note: '' });

describe('commands about log, notes and revisions, whatever they bring', () => {
  it('leave a sound document sound, are undone and redone exactly, are saved and read back, and say what they did', () => {
    let changes = 0;
    let refusals = 0;
    fc.assert(
      fc.property(fc.array(command, { maxLength: 15 }), (commands) => {
        let history = startHistory<Project>(frozen(demo));
        const documents = [history.present];
        for (const one of commands) {
          const result = applyCommand(history.present, one);
          if (!result.ok) {
            refusals++;
            expect(result.problem.remedy).not.toBe('');
            continue;
          }
          const label = commandLabel(history.present, one);
          expect(label.trim()).not.toBe('');
          if (result.value === history.present) continue;
          changes++;
          history = record(history, frozen(result.value), label);
          documents.push(result.value);
        }
        expect(checkProject(history.present)).toEqual([]);
        for (let i = documents.length - 1; i > 0; i--) {
          expect(history.present).toBe(documents[i]);
          history = undo(history);
        }
        expect(history.present).toBe(demo);
        for (let i = 1; i < documents.length; i++) history = redo(history);
        expect(history.present).toBe(documents.at(-1));
      }),
      { numRuns: 60 },
    );
    // Both ways happen often, or nothing was tested.
    expect(Math.min(changes, refusals)).toBeGreaterThan(50);
  });

  it('are saved and read back to the same document and the same text', () => {
    fc.assert(
      fc.property(fc.array(command, { maxLength: 12 }), (commands) => {
        const project = commands.reduce((before, one) => {
          const result = applyCommand(before, one);
          return result.ok ? result.value : before;
        }, demo);
        const text = projectText(project);
        const read = parseProject(text);
        expect(read).toEqual({ ok: true, value: project });
        expect(projectText(read.ok ? read.value : demo)).toBe(text);
      }),
      { numRuns: 15 },
    );
  });
});

describe('a revision', () => {
  it('is gone back to exactly, with log and revisions as they are now, also from a copy of the project', () => {
    const first = done(demo, freeze('R1'), {
      kind: 'add-log',
      entry: { at: AT, kind: 'note', text: 'Measured again' },
    });
    const moved = done(
      { ...first, id: 'a-copy' },
      { kind: 'rename', what: 'project', name: 'Another' },
      { kind: 'add-finishes', finishes: [called('N-1')] },
      freeze('R2'),
    );
    const { log, revisions, ...document } = done(moved, { kind: 'go-back-to-revision', revision: 'R1' });
    expect(document).toEqual({ ...demo, id: 'a-copy' });
    expect(log).toBe(moved.log);
    expect(revisions).toBe(moved.revisions);
    // A frozen copy holds no log and no frozen copies of its own.
    expect(Object.keys(revisions![1]!.document)).not.toContain('revisions');
    expect(Object.keys(revisions![1]!.document)).not.toContain('log');
  });

  it('has a number nobody else has, a name and a time', () => {
    const once = done(demo, freeze('R1'));
    expect(refused(freeze('R1'), once)).toBe('duplicate-id');
    expect(refused(freeze('first'))).toBe('bad-revision-id');
    expect(refused({ kind: 'rename-revision', revision: 'R1', name: ' ' }, once)).toBe('empty-text');
    expect(refused({ kind: 'go-back-to-revision', revision: 'R2' }, once)).toBe('unknown-revision');
    expect(refused({ kind: 'go-back-to-revision', revision: 'R1' })).toBe('unknown-revision');
  });

  it('is told by its number where a file spoils it, with the place in the file', () => {
    const [one] = done(demo, freeze('R1')).revisions!;
    const spoiled = { ...demo, revisions: [{ ...one!, document: { ...one!.document, options: [] } }] };
    const read = parseProject(projectText(spoiled));
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'empty-list', at: { path: 'revisions[0].document.options' } },
    });
    expect(!read.ok && read.problem.text).toMatch(/^In revision R1: /);
  });
});

describe('many finishes', () => {
  it('come in all or not at all', () => {
    const two = done(demo, { kind: 'add-finishes', finishes: [called('N-1'), called('N-2')] });
    expect(two.library.slice(-2).map(({ id }) => id)).toEqual(['N-1', 'N-2']);
    for (const wrong of [
      [called('N-1'), called('N-1')],
      [called('N-1'), called(some!.id)],
      [called('N-1'), called('N-2', { gloss_gu: -1 })],
      [called('N-1', { tags: ['warm', 'warm'] })],
      [called('N-1', { tags: ['x'.repeat(41)] })],
      [called('N-1', { tags: Array.from({ length: 21 }, (_, i) => `${i}`) })],
      [called('N-1', { origin: { library: '', name: 'Own', finish: '7' } })],
    ]) {
      expect(applyCommand(demo, { kind: 'add-finishes', finishes: wrong })).toMatchObject({ ok: false });
    }
  });
});

describe('a line of the log', () => {
  // Days and months of the Gregorian calendar; forms of ISO 8601 with offset.
  it.each(['2026-02-28T23:59:59Z', '2028-02-29T00:00Z', '2026-05-04T16:30:00.123+05:45'])('takes %s', (moment) => {
    const entry = { at: moment, kind: 'note', text: 'x' } as const;
    expect(done(demo, { kind: 'add-log', entry }).log).toEqual([entry]);
  });

  it.each(['2026-02-29T00:00Z', '2026-13-01T00:00Z', '2026-04-31T00:00Z', '2026-05-04T24:00Z', '2026-05-04', ''])(
    'refuses "%s"',
    (moment) => {
      expect(refused({ kind: 'add-log', entry: { at: moment, kind: 'note', text: 'x' } })).toBe('no-such-time');
    },
  );

  it('is taken out by its number, and an empty log is none', () => {
    const line = (text: string): Command => ({ kind: 'add-log', entry: { at: AT, kind: 'note', text } });
    const three = done(demo, line('a'), line('a'), line('b'));
    const two = done(three, { kind: 'remove-log', entry: 1 });
    expect(two.log!.map(({ text }) => text)).toEqual(['a', 'b']);
    expect(refused({ kind: 'remove-log', entry: 3 }, three)).toBe('unknown-entry');
    const none = done(two, { kind: 'remove-log', entry: 0 }, { kind: 'remove-log', entry: 0 });
    expect('log' in none).toBe(false);
  });
});
