import { expect, it } from 'vitest';
import { readLight } from '../../src/cli/light-option';
import { run } from '../../src/cli/run';
import { lightById } from '../../src/engine/spectrum/lights';
import { fileWith, upstand } from './upstand';

const json = (...args: readonly string[]) => {
  const { exit, out, messages } = run([...args, '--json']);
  expect(messages).toBe('');
  expect(exit).toBe(0);
  return JSON.parse(out);
};

const NM = Array.from({ length: 81 }, (_, i) => 380 + 5 * i);
const table = (head: string, ...ids: readonly string[]) =>
  [head, ...NM.map((nm, i) => [nm, ...ids.map((id) => lightById(id)![i])].join(','))].join('\n');
const tubes = fileWith('tubes.csv', table('nm,halo,triband', 'FL2', 'FL11'));
const tube = fileWith('tube.csv', table('nm,power', 'FL4'));

it('gives the figures of a CIE light as published', () => {
  const { name, xy, cct_k, ra, r, rf } = json('lamp', 'D65');
  expect(name).toBe('D65');
  // CIE 15:2018: D65 has x 0.31272, y 0.32903; the 5 nm table meets it to the fifth decimal.
  expect(Math.hypot(xy[0] - 0.31272, xy[1] - 0.32903)).toBeLessThan(2e-5);
  expect(Math.abs(cct_k - 6504)).toBeLessThan(2);
  // CIE 13.3: daylight is its own reference.
  expect(ra).toBeGreaterThan(99.9);
  expect(r).toHaveLength(14);
  expect(rf).toBeUndefined();
});

it('reads a lamp from a file and names it by the file: CIE 15 gives FL4 Ra 51', () => {
  const found = json('lamp', tube);
  expect(found).toMatchObject({ name: 'tube' });
  // Published as a whole number; from tables at 5 nm 0.7 may be missing.
  expect(Math.abs(found.ra - 51)).toBeLessThan(0.7);
  expect(Object.keys(found).toSorted()).toEqual([
    'cct_k',
    'duv',
    'modeled',
    'name',
    'notes',
    'outside_tolerance',
    'r',
    'ra',
    'uv',
    'xy',
  ]);
});

it('gives every lamp of a file, one of them by name, and takes the words of a light', () => {
  const all = json('lamp', tubes);
  expect(all.lamps.map(({ name }: { name: string }) => name)).toEqual(['halo', 'triband']);
  expect(json('lamp', tubes, '--column', 'Triband')).toEqual({ ...all.lamps[1], notes: [] });
  expect(json('lamp', `${tubes}#triband`)).toEqual({ ...all.lamps[1], notes: [] });
  expect(json('lamp', 'led:2700,90').ra).toBeCloseTo(90, 2);
});

it('says of an LED made from its label that it is modeled, of others not', () => {
  expect(json('lamp', 'led:2700,90').modeled).toBe(true);
  expect(json('lamp', '0.5 led:2700,90 + 0.5 FL11').modeled).toBe(true);
  expect(json('lamp', 'LED-B2').modeled).toBe(false);
  const { out } = run(['lamp', 'led:2700,90']);
  expect(out).toContain('A modeled lamp of that color temperature and Ra; real ones differ.');
  expect(out).toMatch(/R9 +\d\d {2}strong red/);
  expect(run(['lamp', 'LED-B2']).out).not.toContain('modeled');
});

it.each([
  ['2700', /Write led:2700,90\./],
  ['3000K', /Write led:3000,90\./],
  ['2700 K, 95', /Write led:2700,95\./],
  ['12000', /daylight:12000/],
  ['99999', /1800 to 8000 K: led:2700,90/],
  ['-1 FL11', /^A light has the level -1/],
  ['halogen', /planck:3000/],
  ['E', /D50 or D65/],
  ['led', /led:2700,90/],
  ['incandescent', /2856 K/],
  [`0.5 ${tubes} + 0.5 FL11`, /only lights in words can be blended/],
  [`FL11 + ${tubes}`, /only lights in words can be blended/],
])('tells what to write for %s', (words, remedy) => {
  const ran = run(['lamp', words]);
  expect(ran).toMatchObject({ exit: 2, out: '' });
  expect(ran.messages).toMatch(remedy);
});

it('says what the figures mean: R9 of FL2 is -84 (CIE 13.3)', () => {
  const { out } = run(['lamp', tubes]);
  expect(out).toContain('halo');
  expect(out).toMatch(/R9\s+-8\d\.\d {2}strong red/);
  expect(out).toContain('Strong reds: dull.');
  expect(out).not.toContain('Rf');
});

it('computes Rf from samples that the user has: gray ones shift under no lamp, so Rf is 100 (closed form)', () => {
  const rows = NM.map((nm) => [nm, ...Array.from({ length: 99 }, (_, i) => (i + 1) / 100)].join(','));
  const samples = fileWith('samples.csv', rows.join('\n'));
  const ran = upstand('lamp', 'FL2', '--samples', samples, '--json');
  expect(ran.messages).toContain('factors from 0 to 1');
  // 10 ln(e^10 + 1) = 100.0005; grays keep a trace of color, for the observer of Rf is not that of the light's temperature.
  expect(Math.abs(JSON.parse(ran.out).rf - 100)).toBeLessThan(0.1);
  expect(run(['lamp', 'FL2', '--samples', samples]).out).toMatch(
    /Rf 100\.0 \(CIE 224, with the samples of .*samples\.csv\)/,
  );
});

it('reads one light for an option, by words, by file and by file and name', () => {
  expect(readLight('FL2')).toMatchObject({ ok: true, value: { name: 'FL2', spd: lightById('FL2') } });
  const one = readLight(`${tubes}#halo`);
  // Values on the grid stay as they are.
  expect(one.ok && one.value.spd).toEqual(lightById('FL2'));
  expect(readLight(tubes)).toMatchObject({ ok: false, problem: { code: 'several-lamps' } });
});

const short = fileWith(
  'short.csv',
  NM.slice(20)
    .map((nm) => `${nm},1`)
    .join('\n'),
);
const dark = fileWith('dark.csv', NM.map((nm) => `${nm},0`).join('\n'));
const letter = fileWith('letter.csv', '380,1\n385,l\n');
const doctype = fileWith('lamp.xml', '<?xml version="1.0"?>\n<!DOCTYPE a>\n<a/>');
const few = fileWith('few.csv', NM.map((nm) => `${nm},0.5,0.4`).join('\n'));

// Each message names the file, the place and what to do.
it.each<[string, readonly string[], readonly RegExp[]]>([
  ['no lamp', [], [/lamp is missing/, /Usage: upstand lamp LIGHT-OR-FILE/]],
  ['an unknown light', ['candle'], [/"candle"/, /file with a lamp's spectrum/, /D65/]],
  ['a lamp the model cannot make', ['led:2700,99'], [/Ra 99/, /Give an Ra/]],
  ['a temperature out of range', ['planck:5'], [/planck:5/, /1000 to 25000/]],
  ['a file that is not there', ['nowhere.csv'], [/^nowhere\.csv: .*no such file/, /Check the name/]],
  ['a folder', ['./demo-data'], [/demo-data: .*folder/]],
  ['a column that is not there', [tubes, '--column', 'neon'], [/tubes\.csv: .*"neon"/, /halo, triband/]],
  ['a column of a light', ['D65', '--column', 'x'], [/not a file/, /Leave out --column/]],
  ['a letter in a number', [letter], [/letter\.csv:2: "l" is not a number/, /one line for each wavelength/]],
  ['a range too short', [short], [/short\.csv: .*480/]],
  ['a lamp without light', [dark], [/dark\.csv: /]],
  ['a document type', [doctype], [/lamp\.xml:2: .*document type/, /Remove the line/]],
  ['too few samples', ['D65', '--samples', few], [/few\.csv: .*2 samples; CIE 224 has 99/, /Give the 99 samples/]],
  ['samples that are not there', ['D65', '--samples', 'nowhere.csv'], [/^nowhere\.csv: /]],
])('ends with 2 and says what to do for %s', (_, args, messages) => {
  const ran = run(['lamp', ...args, '--json']);
  expect(ran).toMatchObject({ exit: 2, out: '' });
  for (const message of messages) expect(ran.messages).toMatch(message);
});
