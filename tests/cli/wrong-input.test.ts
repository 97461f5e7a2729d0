import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { DEMO_PATH, demoText } from '../io/demo';
import { fileWith, upstand } from './upstand';

const notJson = fileWith('not-json.json', '{\n  "type": oops\n}');
const wrongField = fileWith('wrong-field.json', demoText().replace('"finish": "WD-01"', '"finish": "XX-99"'));
const recipe = fileWith('recipe.json', '{ "type": "recipe" }');
const newer = fileWith('newer.json', demoText().replace('"version": 9', '"version": 10'));
const impossible = fileWith('impossible.json', demoText().replaceAll('"lab": [32, -13, -4.5]', '"lab": [95, 60, 0]'));
const february = fileWith('february.json', demoText().replace(/"month": \d+,\s*"day": \d+/, '"month": 2, "day": 30'));
const lava = fileWith('lava.json', demoText().replace(/"ground": "\w+"/, '"ground": "lava"'));
const unevenSpectrum = fileWith('uneven.csv', '400,0.5\n410,0.5\n450,0.5\n');

const SINGLE: readonly (readonly [command: readonly string[], options: readonly string[]])[] = [
  [
    ['assess', DEMO_PATH],
    ['option', 'setting'],
  ],
  [
    ['carry-over', DEMO_PATH, DEMO_PATH],
    ['option', 'setting', 'look-option'],
  ],
  [
    ['color', '#fff'],
    ['illuminant', 'observer', 'specular', 'class', 'gloss', 'lrv'],
  ],
  [['compare', DEMO_PATH], ['setting']],
  [
    ['import', 'range.csv'],
    ['class', 'gloss', 'illuminant', 'observer', 'provenance', 'scale', 'name', 'out', 'csv'],
  ],
  [
    ['lamp', 'lamp.csv'],
    ['column', 'samples'],
  ],
  [
    ['light', DEMO_PATH],
    ['option', 'setting', 'stand', 'export-room'],
  ],
  [['schedule', DEMO_PATH], ['option']],
  [
    ['shift', '#fff'],
    ['finish', 'beside'],
  ],
  [
    ['shortlist', DEMO_PATH],
    ['surface', 'option', 'setting', 'library', 'why'],
  ],
];

it('takes no option twice that has one value, in any command', () => {
  for (const [command, options] of SINGLE) {
    for (const option of options) {
      const { exit, out, messages } = run([...command, `--${option}`, '1', `--${option}=2`]);
      expect([exit, out], `${command[0]} --${option}`).toEqual([2, '']);
      expect(messages).toMatch(
        new RegExp(`^--${option} is given twice; it takes one value\\. Usage: upstand ${command[0]} `),
      );
    }
  }
});

// Each message has to name the place (file, line, argument) and what to do.
it.each<[string, readonly string[], readonly RegExp[]]>([
  ['an unknown command', ['bake'], [/"bake"/, /assess, .*color, .*light, schedule, shift, shortlist.*, help/]],
  ['a command that is none', ['paint', DEMO_PATH], [/"paint"/, /Known: /]],
  ['no project', ['assess'], [/project file is missing/, /Usage: upstand assess PROJECT/]],
  ['no color', ['color'], [/color is missing/, /Usage: upstand color VALUE/]],
  ['an unknown flag', ['assess', DEMO_PATH, '--colour'], [/--colour/, /Usage/]],
  [
    'an option given twice',
    ['schedule', DEMO_PATH, '--option', 'copied-look', '--option', 'our-floor'],
    [/--option is given twice/, /Usage/],
  ],
  ['words given twice', ['assess', DEMO_PATH, '--words', 'uk', '--words=us'], [/--words is given twice/, /Leave one/]],
  ['a flag without its value', ['light', DEMO_PATH, '--setting'], [/--setting needs a value/, /Usage/]],
  ['a day there is none of', ['light', february], [/: settings\[0\]\.daylight\.day: month 2 has no day 30\. Give/]],
  [
    'a ground there is none of',
    ['light', lava],
    [/: kitchen\.site\.ground is "lava"\. Write one of: "unknown", "paving", .*"light-render"\./],
  ],
  ['one argument too many', ['assess', DEMO_PATH, 'more'], [/"more"/, /Usage/]],
  ['a missing file', ['assess', 'nowhere.json', '--json'], [/^nowhere\.json: .*no such file/, /Check the name/]],
  ['a folder', ['assess', 'demo-data'], [/^demo-data: .*folder/]],
  ['a file that is not JSON', ['assess', notJson, '--json'], [/not-json\.json:2: /, /Correct the file at this line/]],
  ['another kind of file', ['light', recipe], [/recipe\.json:1: .*no project/, /Choose a project file/]],
  ['a project of a newer version', ['assess', newer], [/newer\.json:3: .*version 10/, /newer program/]],
  [
    'a wrong field',
    ['assess', wrongField],
    [/wrong-field\.json:\d+: options\[0\]\.scheme\.floor\.finish.*XX-99/, /Add the finish/],
  ],
  [
    'an unknown option',
    ['assess', DEMO_PATH, '--option', 'third'],
    [/terrace\.project\.json: .*option "third"/, /copied-look, our-floor/],
  ],
  [
    'an unknown setting',
    ['light', DEMO_PATH, '--setting', 'noon'],
    [/terrace\.project\.json: .*setting "noon"/, /day, .*evening/],
  ],
  [
    'a color of the project that no surface has',
    ['assess', impossible],
    [
      /impossible\.json:\d+: library\[0\]\.components\[0\]\.color \(PT-01, base\): No surface can have/,
      /Check the numbers/,
    ],
  ],
  ['a word that is no color', ['color', 'blue', '--json'], [/"blue"/, /Write #a1b2c3/]],
  ['a color outside the solid', ['color', 'lab:95,60,0', '--json'], [/No surface can have/, /Check the numbers/]],
  ['an unknown light', ['color', '#fff', '--light', 'candle'], [/"candle"/, /D65/]],
  ['a light a color is not given under', ['color', 'lab:80,0,0', '--illuminant', 'D60'], [/--illuminant "D60"/, /D65/]],
  ['a light in parentheses that is none', ['color', 'lab(D60):80,0,0'], [/"D60"/, /lab\(D50,10\)/]],
  ['an observer that is none', ['color', 'lab:80,0,0', '--observer', '5'], [/--observer "5"/, /2, 10/]],
  [
    'a light said twice',
    ['color', 'lab(D50):80,0,0', '--illuminant', 'D65'],
    [/says D50, --illuminant says D65/, /once/],
  ],
  [
    'a light for a screen color',
    ['color', '#fff', '--illuminant', 'D50'],
    [/says nothing of .* screen color/, /Leave out/],
  ],
  ['a class that is none', ['color', '#fff', '--class', 'marble'], [/--class "marble"/, /stone/]],
  ['a gloss that is no number', ['color', '#fff', '--gloss', 'high'], [/--gloss "high"/, /0 to 100/]],
  ['an LRV over 100', ['color', '#fff', '--lrv', '170'], [/--lrv "170"/, /0 to 100/]],
  ['a Munsell color beyond what surfaces can be', ['color', 'munsell:5Y 9/40'], [/No surface.*5Y 9\/40/, /chroma/]],
  ['a broken spectrum', ['color', unevenSpectrum], [/uneven\.csv:3: /, /even steps/]],
  ['a spectrum file that is not there', ['color', 'nowhere.csv'], [/^nowhere\.csv: /, /Check the name/]],
])('ends with 2 and says what to do for %s', (_, args, messages) => {
  const ran = run(args);
  expect(ran).toMatchObject({ exit: 2, out: '' });
  for (const message of messages) expect(ran.messages).toMatch(message);
  expect(ran.messages).not.toMatch(/\n\s+at /);
});

it('keeps the messages apart from the data, and exits with what the command says, as a process of its own', () => {
  const args = ['light', DEMO_PATH, '--setting', 'noon'];
  expect(upstand(...args)).toEqual(run(args));
});
