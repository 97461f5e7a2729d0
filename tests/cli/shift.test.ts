import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { shiftText } from '../../src/cli/text/shift-text';
import { DEMO_PATH } from '../io/demo';

const ran = run(['shift', DEMO_PATH, '--finish', 'PT-01', '--beside', 'TL-06', '--json']);
const fronts = JSON.parse(ran.out);
type Light = { id: string; kind: string; average: { shift_de00: number; verdict: string } };

it('gives every setting of the project, then the standard lights', () => {
  expect([ran.exit, ran.messages]).toEqual([0, '']);
  expect(fronts).toMatchObject({ project: 'terrace', finish: 'PT-01' });
  expect(fronts.lights.map(({ kind, id }: Light) => `${kind} ${id}`)).toEqual([
    'setting day',
    'setting clear-afternoon',
    'setting evening',
    'setting dinner',
    'reference D65',
    'reference A',
    'reference LED-B2',
    'reference FL11',
  ]);
  // The demo's evening burns LED-B2 on the worktop, with a hundredth of its light from pendants of another lamp.
  const of = (id: string) => fronts.lights.find((light: Light) => light.id === id);
  expect(of('evening').average.shift_de00).toBeCloseTo(of('LED-B2').average.shift_de00, 1);
  expect(Math.abs(of('evening').cct_k - 2998)).toBeLessThan(10);
});

it('says in words what the JSON says in fields', () => {
  const words = shiftText(fronts).replace(/\s+/g, ' ');
  expect(words).toContain(fronts.label);
  expect(words).toContain(fronts.beside.label);
  expect(words).toContain(fronts.beside.sentence);
  for (const { name, average } of fronts.lights) {
    expect(words).toContain(name);
    expect(words).toContain(`shift ${average.shift_de00.toFixed(1)}`);
  }
});

it.each<[string, readonly string[], RegExp]>([
  ['no finish', [DEMO_PATH], /--finish is missing.*Usage: upstand shift PROJECT/],
  ['an unknown finish', [DEMO_PATH, '--finish', 'XX-1'], /terrace\.project\.json: .*"XX-1".*PT-01/],
  ['an unknown finish beside it', [DEMO_PATH, '--finish', 'PT-01', '--beside', 'XX-2'], /"XX-2".*PT-01/],
  ['no project', ['--finish', 'PT-01'], /project file is missing/],
  ['a missing file', ['nowhere.json', '--finish', 'PT-01'], /^nowhere\.json: /],
])('ends with 2 and says what to do for %s', (_, args, message) => {
  const { exit, out, messages } = run(['shift', ...args]);
  expect([exit, out]).toEqual([2, '']);
  expect(messages).toMatch(message);
});
