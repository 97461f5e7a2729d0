import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { withLibraryOf } from '../../src/cli/extra-library';
import { run } from '../../src/cli/run';
import { demoProject } from '../io/demo';
import { fileWith } from './upstand';

const SAMPLES = 'tests/io/sheet/samples';
const folder = mkdtempSync(join(tmpdir(), 'upstand-import-'));
const ANSWERS = ['--class', 'paint', '--gloss', '10', '--illuminant', 'D65', '--observer', '10'];

it('imports a table as JSON: kept, refused, questions, notices', () => {
  const { exit, out } = run(['import', `${SAMPLES}/finishes-hostile.csv`, ...ANSWERS, '--json']);
  const data = JSON.parse(out);
  expect(exit).toBe(0);
  expect(data.kept.map(({ row, id }: { row: number; id: string }) => [row, id])).toEqual([
    [1, 'EX-1'],
    [4, 'EX-4'],
    [6, 'EX-5'],
  ]);
  expect(data.refused[0]).toEqual({
    row: 2,
    line: 3,
    finish: 'EX-2',
    name: 'Too bright',
    code: 'out-of-range',
    reason: 'L* is 104, outside 0 to 100.',
    remedy: expect.any(String),
  });
  expect([data.questions, data.written]).toEqual([[], []]);
});

it('says in words what is refused and what is open, and ends with 2 where nothing was kept', () => {
  const { exit, out } = run(['import', `${SAMPLES}/finishes-hostile.csv`]);
  expect(exit).toBe(2);
  expect(out).toMatch(/0 kept, 6 refused/);
  expect(out).toMatch(/line 3 \(EX-2, Too bright\): L\* is 104/);
  expect(out.replace(/\s+/g, ' ')).toMatch(
    /4 rows without the light and observer .*--illuminant, --observer. Usual here: D65 and 10°/,
  );
});

it('writes a library and a table, which import again as the same finishes', () => {
  const [library, table] = [join(folder, 'range.json'), join(folder, 'range.csv')];
  const first = run([
    'import',
    `${SAMPLES}/finishes-canonical.csv`,
    '--name',
    'Spring',
    '--out',
    library,
    '--csv',
    table,
    '--json',
  ]);
  expect([first.exit, JSON.parse(first.out).written]).toEqual([0, [library, table]]);
  expect(JSON.parse(readFileSync(library, 'utf8'))).toMatchObject({
    type: 'upstand-library',
    id: 'spring',
    name: 'Spring',
  });
  const finishes = (file: string) =>
    JSON.parse(run(['import', file, '--json']).out).kept.map((one: { finish: object }) => one.finish);
  expect(finishes(library)).toEqual(JSON.parse(first.out).kept.map((one: { finish: object }) => one.finish));
  expect(finishes(table)).toEqual(finishes(library));
});

it('takes columns as they are said to be', () => {
  const file = fileWith('columns.csv', 'one,two,three,four,five\nA-1,50,1,2,x\n');
  const columns = ['1=code', '2=lab_l', '3=lab_a', '4=lab_b', '5=none'].flatMap((one) => ['--column', one]);
  const { exit, out } = run(['import', file, ...columns, ...ANSWERS, '--json']);
  expect([exit, JSON.parse(out).kept[0].finish.components[0].color.lab]).toEqual([0, [50, 1, 2]]);
});

it('says what words for materials were taken for, and takes what they are said to mean', () => {
  const file = fileWith(
    'words.csv',
    'code,material,gloss,hex\nA,Feinsteinzeug,10,#777777\nB,Zauberstein X,10,#777777\nC,paint,5,#777777\n',
  );
  const first = JSON.parse(run(['import', file, '--json']).out);
  expect(first.materials).toEqual([
    { word: 'Feinsteinzeug', class: 'porcelain', rows: 1 },
    { word: 'Zauberstein X', class: 'stone', rows: 1 },
  ]);
  const said = ['--class-of', 'feinsteinzeug=glazed', '--class-of', 'Zauberstein X=engineered'];
  const then = JSON.parse(run(['import', file, ...said, '--json']).out);
  expect(then.kept.map((one: { finish: { class: string } }) => one.finish.class)).toEqual([
    'glazed',
    'engineered',
    'paint',
  ]);
  expect(run(['import', file]).out).toContain('Feinsteinzeug: porcelain (1 row)');
  expect(run(['import', file, '--class-of', 'x=gold']).messages).toMatch(/--class-of "gold"/);
  expect(run(['import', file, '--class-of', 'gold']).messages).toMatch(/Feinsteinzeug=porcelain/);
});

it('gives the shortlist of a project what is kept of a table, and says what is not', () => {
  const head = 'code,name,class,gloss,L*,a*,b*,light';
  const row = 'Oat,engineered,20,82,1,6,D65/10';
  const extended = withLibraryOf(
    demoProject(),
    fileWith('more.csv', `${head}\nNEW-1,${row}\nNEW-2,Odd,,20,82,1,6,D65/10\n`),
  );
  if (!extended.ok) throw new Error(extended.problem.text);
  expect(extended.value.library.at(-1)!.id).toBe('NEW-1');
  expect(extended.notices!.map(({ code }) => code)).toContain('rows-left-out');
  const clashing = withLibraryOf(
    demoProject(),
    fileWith('clash.csv', `${head}\n${demoProject().library[0]!.id},${row}\n`),
  );
  expect(clashing).toMatchObject({ ok: false, problem: { code: 'same-id', at: { path: 'row 1' } } });
  const none = withLibraryOf(demoProject(), `${SAMPLES}/finishes-hex-only.csv`);
  expect(none).toMatchObject({
    ok: false,
    problem: { code: 'class-missing', remedy: expect.stringContaining('upstand import') },
  });
});

it.each([
  ['no file', [], /The file is missing/],
  ['a file that is not there', ['nowhere.csv'], /no such file/],
  ['a 3D scene', [`${SAMPLES}/door.usdz`], /3D scene \(USDZ\).*CSV/],
  ['an unknown class', [`${SAMPLES}/finishes-canonical.csv`, '--class', 'gold'], /--class "gold".*paint/],
  ['a light without observer', [`${SAMPLES}/finishes-canonical.csv`, '--illuminant', 'D65'], /go together/],
  ['an unknown light', [`${SAMPLES}/finishes-canonical.csv`, '--illuminant', 'moon', '--observer', '2'], /moon/],
  ['a column that is none', [`${SAMPLES}/finishes-canonical.csv`, '--column', 'name=2'], /2=name/],
  [
    'its own file to write to',
    [`${SAMPLES}/finishes-canonical.csv`, '--csv', `${SAMPLES}/finishes-canonical.csv`],
    /would be lost/,
  ],
])('ends with 2 and says what to do for %s', (_, args, words) => {
  const { exit, out, messages } = run(['import', ...args]);
  expect([exit, out]).toEqual([2, '']);
  expect(messages).toMatch(words);
});

it('keeps the name of a library that is imported again, unless it is given another', () => {
  const [table, first, second] = ['named.csv', 'first.json', 'second.json'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  run(['import', `${SAMPLES}/finishes-canonical.csv`, '--name', 'Spring range', '--out', first, '--csv', table]);
  run(['import', first, '--out', second]);
  expect(JSON.parse(readFileSync(second, 'utf8'))).toMatchObject({ id: 'spring-range', name: 'Spring range' });
  run(['import', first, '--out', second, '--name', 'Fall']);
  expect(JSON.parse(readFileSync(second, 'utf8'))).toMatchObject({ id: 'fall', name: 'Fall' });
  run(['import', table, '--out', second]);
  expect(JSON.parse(readFileSync(second, 'utf8'))).toMatchObject({ name: 'named' });
});

it('refuses a --column that the table does not have', () => {
  for (const file of [`${SAMPLES}/finishes-canonical.csv`, fileWith('three.csv', 'a,b,c\n1,2,3')]) {
    const { exit, messages: err } = run(['import', file, '--column', '99=name']);
    expect(exit).toBe(2);
    expect(err.replace(/\s+/g, ' ')).toMatch(/--column 99: the table has \d+ columns\. Write a number from 1 to \d+/);
  }
});
