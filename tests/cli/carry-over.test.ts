import { beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { lookText, parseLook } from '../../src/io/look-file';
import { projectText } from '../../src/io/project-file';
import { lookOfOption } from '../../src/kitchen/carry/look-of-option';
import type { CopiedLook } from '../../src/model/look';
import { DEMO_PATH, demoProject } from '../io/demo';
import { smallProject } from '../workers/small-project';
import { fileWith } from './upstand';

const small = fileWith('small.project.json', projectText(smallProject));
const byEye: CopiedLook = {
  id: 'by-eye',
  name: 'By eye',
  source: 'scheme',
  surfaces: [
    {
      surface: 'floor',
      colors: [{ role: 'base', share: 1, color: { kind: 'hex', hex: '#cdb188' }, provenance: 'by-eye' }],
    },
    {
      surface: 'base-fronts',
      colors: [{ role: 'base', share: 1, color: { kind: 'hex', hex: '#145454' }, provenance: 'by-eye' }],
    },
  ],
};
const lookFile = fileWith('by-eye.look.json', lookText(byEye));

/** The report of a command that succeeds; everything but the JSON goes to messages. */
function report(...args: readonly string[]) {
  const { exit, out, messages } = run([...args, '--json']);
  expect(exit, messages).toBe(0);
  return JSON.parse(out);
}

describe('carry-over of the demo', () => {
  let found: {
    holds: { id: string; kind: string; text: string; holds_in: number }[];
    breaks: {
      relation: { id: string; surfaces: string[] };
      by: { value: number; unit: string; text: string };
      kept: string[];
    }[];
    repairs: { changes: { surfaces: string[]; finish: string }[]; mends: string[] }[];
    views: string;
  };
  beforeAll(() => {
    found = report('carry-over', 'copied-look', DEMO_PATH, '--option', 'our-floor', '--setting', 'day');
  });
  it('tells what holds, what breaks and by how much, and what would mend it', () => {
    expect(found.views).toBe('own');
    const ids = found.breaks.map(({ relation }) => relation.id);
    expect(ids).toContain('balance');
    expect(ids).toContain('edge:floor+base-fronts');
    for (const { by, kept } of found.breaks) {
      expect(by.value).toBeGreaterThan(0);
      expect(by.unit).not.toBe('');
      expect(kept).toEqual(['floor']);
    }
    expect(found.holds.map(({ id }) => id)).toContain('pattern');
    expect(found.repairs.length).toBeGreaterThan(0);
    for (const { changes, mends } of found.repairs) {
      expect(changes.flatMap(({ surfaces }) => surfaces)).not.toContain('floor');
      for (const id of mends) expect(ids).toContain(id);
    }
  });
});

it('carries a look file, as the option stands, in words', () => {
  const { exit, out } = run(['carry-over', lookFile, small, '--option', 'our-floor', '--setting', 'day', '--as-is']);
  expect(exit).toBe(0);
  expect(out).toContain('Look "By eye" (from a scheme) against');
  expect(out).toContain('Breaks:');
  expect(out).toContain('Here the floor is');
});

it('compares two options: finishes, colors in place, findings gained and lost', () => {
  const found = report('compare', small, '--option', 'copied-look', '--option', 'our-floor', '--setting', 'day');
  expect(found.changed).toEqual([{ surface: 'floor', from: 'WD-01', to: 'ST-01', shift_de00: expect.closeTo(39, 0) }]);
  const codes = found.gained.map(({ code }: { code: string }) => code);
  expect(codes).toContain('lacks-warm');
  expect(codes).toContain('weak-edge');
});

it('reads a look file as it was written', () => {
  const look = lookOfOption(demoProject(), 'copied-look');
  if (!look.ok) throw new Error(look.problem.text);
  expect(parseLook(lookText(look.value))).toEqual({ ok: true, value: look.value });
});

const broken = (change: (look: { [field: string]: unknown }) => void): string => {
  const look = JSON.parse(lookText(byEye));
  change(look);
  return fileWith(
    `broken-${Math.abs(JSON.stringify(look).length)}-${String(change).length}.json`,
    JSON.stringify(look, null, 2),
  );
};
const surfaceOf = (look: { [field: string]: unknown }, i: number) =>
  (look['surfaces'] as { [field: string]: unknown }[])[i]!;

// Each message has to name file and place, what is wrong, and what to do; nothing goes to standard output.
it.each<[string, () => readonly string[], readonly RegExp[]]>([
  ['no look', () => ['carry-over'], [/The look is missing/, /Usage/]],
  ['no project', () => ['carry-over', 'copied-look'], [/The project file is missing/, /Usage/]],
  ['a look that is nowhere', () => ['carry-over', 'nix', DEMO_PATH], [/no file "nix"/, /copied-look, our-floor/]],
  [
    'no JSON',
    () => ['carry-over', fileWith('cut.json', '{"type": "upstand-look",'), DEMO_PATH],
    [/cut\.json:1/, /file ends/],
  ],
  [
    'another kind of file',
    () => ['carry-over', fileWith('odd.json', '{"type": "recipe"}'), DEMO_PATH],
    [/odd\.json/, /is no look/],
  ],
  [
    'a newer look',
    () => ['carry-over', broken((look) => Object.assign(look, { version: 9 })), DEMO_PATH],
    [/version 9/, /newer program/],
  ],
  [
    'no surfaces',
    () => ['carry-over', broken((look) => Object.assign(look, { surfaces: [] })), DEMO_PATH],
    [/surfaces is empty/, /at least one/],
  ],
  [
    'a surface without a color',
    () => ['carry-over', broken((look) => Object.assign(surfaceOf(look, 1), { colors: [] })), DEMO_PATH],
    [/surfaces\[1\]\.colors/, /Give it a color/],
  ],
  [
    'a surface twice',
    () => ['carry-over', broken((look) => Object.assign(surfaceOf(look, 1), { surface: 'floor' })), DEMO_PATH],
    [/"floor" stands already at surfaces\[0\]/],
  ],
  [
    'an unknown surface',
    () => ['carry-over', broken((look) => Object.assign(surfaceOf(look, 0), { surface: 'moon' })), DEMO_PATH],
    [/surfaces\[0\]\.surface is "moon"/, /Write one of/],
  ],
  [
    'a color no surface can have',
    () => [
      'carry-over',
      broken((look) => {
        const color = { kind: 'lab', lab: [50, 150, 150], illuminant: 'D65', observer_deg: 2 };
        Object.assign(surfaceOf(look, 0), { colors: [{ role: 'base', share: 1, color, provenance: 'declared' }] });
      }),
      DEMO_PATH,
    ],
    [/surfaces\[0\]\.colors\[0\]\.color/],
  ],
  [
    'an option of a look file',
    () => ['carry-over', lookFile, DEMO_PATH, '--look-option', 'a'],
    [/has no options/, /--look-option/],
  ],
  [
    'an unknown option of the look',
    () => ['carry-over', DEMO_PATH, DEMO_PATH, '--look-option', 'a'],
    [/no option "a"/],
  ],
  ['an unknown setting', () => ['carry-over', 'copied-look', DEMO_PATH, '--setting', 'noon'], [/no setting "noon"/]],
  ['one option to compare', () => ['compare', DEMO_PATH, '--option', 'our-floor'], [/stands once/, /copied-look/]],
  [
    'the same option twice',
    () => ['compare', DEMO_PATH, '--option', 'our-floor', '--option', 'our-floor'],
    [/Both options are "our-floor"/],
  ],
  [
    'an unknown option to compare',
    () => ['compare', DEMO_PATH, '--option', 'our-floor', '--option', 'x'],
    [/no option "x"/, /copied-look/],
  ],
])('refuses %s with exit 2', (_, args, said) => {
  const { exit, out, messages } = run(args());
  expect(exit).toBe(2);
  expect(out).toBe('');
  for (const words of said) expect(messages).toMatch(words);
});
