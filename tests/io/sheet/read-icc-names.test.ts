import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readCgats } from '../../../src/io/sheet/read-cgats';
import { isIccProfile, readIccNames } from '../../../src/io/sheet/read-icc-names';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import type { Sheet } from '../../../src/io/sheet/types';

const sample = (name: string): Uint8Array => new Uint8Array(readFileSync(`${import.meta.dirname}/samples/${name}`));
const named = () => sample('named-colours.icc');

function read(bytes: Uint8Array): Sheet {
  const result = readIccNames(bytes, 'range.icc');
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

/** The sample with other numbers or letters at some places. */
function changed(...changes: readonly (readonly [at: number, value: number | string])[]): Uint8Array {
  const bytes = named();
  const data = new DataView(bytes.buffer);
  for (const [at, value] of changes) {
    if (typeof value === 'number') data.setUint32(at, value);
    else for (const [i, letter] of [...value].entries()) bytes[at + i] = letter.charCodeAt(0);
  }
  return bytes;
}

// Where the sample holds its named colors, and where its list of contents points to them.
const NCL2 = 0x158;
const NCL2_TAG = 128 + 4 + 3 * 12;

it('reads names with what goes before and after them, and L*a*b* of D50', () => {
  const sheet = read(named());
  expect(sheet.rows.map(({ cells }) => cells[0])).toEqual([
    'EX Oat Linen paint',
    'EX Harbour Slate paint',
    'EX Moss Shelf paint',
  ]);
  expect(sheet.columns.map(({ field }) => field)).toEqual(['name', 'lab_l', 'lab_a', 'lab_b']);
  expect(sheet.said).toEqual({ illuminant: 'D50', observer_deg: 2 });
  expect(sheet.notices).toEqual([]);
});

it('has the colors of the same finishes in CGATS, within the steps of 16 bits', () => {
  const cgats = readCgats(new TextDecoder().decode(sample('cgats-lab.txt')), 'a.txt');
  if (!cgats.ok) throw new Error(cgats.problem.text);
  const rows = read(named()).rows;
  for (const [i, { cells }] of cgats.value.rows.entries()) {
    for (const k of [0, 1, 2]) {
      // One step is 1/652.8 in L* and 1/256 in a* and b*; the other file rounds to two decimals.
      const allowed = (k === 0 ? 1 / 652.8 : 1 / 256) / 2 + 0.0051;
      expect(Math.abs(Number(rows[i]!.cells[1 + k]) - Number(cells[2 + k]))).toBeLessThanOrEqual(allowed);
    }
  }
});

// ICC.1:2022, legacy 16-bit encoding: L* 100 is FF00; a* and b* -128 are 0000, 0 is 8000, 127 is FF00.
it.each([
  [0xff00, 0x8000, 0x8000, ['100.0000', '0.0000', '0.0000']],
  [0x0000, 0x0000, 0xff00, ['0.0000', '-128.0000', '127.0000']],
])('decodes %i %i %i', (l, a, b, lab) => {
  const bytes = named();
  const data = new DataView(bytes.buffer);
  for (const [k, value] of [l, a, b].entries()) data.setUint16(NCL2 + 84 + 32 + 2 * k, value);
  expect(read(bytes).rows[0]!.cells.slice(1)).toEqual(lab);
});

it('reads XYZ, where 8000 is 1', () => {
  const bytes = changed([20, 'XYZ ']);
  new DataView(bytes.buffer).setUint16(NCL2 + 84 + 32 + 2, 0x4000);
  const sheet = read(bytes);
  expect(sheet.columns[2]!.field).toBe('xyz_y');
  expect(sheet.rows[0]!.cells[2]).toBe('50.0000');
});

it('goes over the values of the device', () => {
  // Three entries of 38 bytes are one of 38 + 2 * 15 and a rest.
  const sheet = read(changed([NCL2 + 12, 1], [NCL2 + 16, 15]));
  expect(sheet.rows.map(({ cells }) => cells[0])).toEqual(['EX Oat Linen paint']);
});

it('shows what is no letter of 7 bits, and says so', () => {
  const sheet = read(changed([NCL2 + 84, '\xC4']));
  expect(sheet.rows[0]!.cells[0]).toBe('EX \uFFFDat Linen paint');
  expect(sheet.notices.map(({ code }) => code)).toEqual(['name-letters']);
});

it('says when the profile has a white of its own', () => {
  const white = 0x144;
  expect(read(changed([white + 12, 0xe000])).notices.map(({ code }) => code)).toEqual(['icc-white']);
});

it.each([
  ['a display', sample('display-p3-like.icc'), 'icc-class: The file is an ICC profile of a display'],
  ['an unknown class', changed([12, 'xxxx']), 'icc-class'],
  ['a name that objects have', changed([12, 'cons']), 'icc-class'],
  ['version 5', changed([8, '\x05']), 'icc-version'],
  ['another space', changed([20, 'RGB ']), 'icc-space'],
  ['a list of contents that is too long', changed([128, 0xffffffff]), 'icc-damaged'],
  ['no named colors', changed([NCL2_TAG, 'xxxx']), 'icc-damaged: The profile is damaged: it has no named colors'],
  ['an offset outside', changed([NCL2_TAG + 4, 0xfffffff0]), 'icc-damaged'],
  [
    'an offset to something else',
    changed([NCL2_TAG + 4, 180]),
    'icc-damaged: The profile is damaged: it has no named colors',
  ],
  ['a size outside', changed([NCL2_TAG + 8, 0xffffffff]), 'icc-damaged'],
  ['a size of nothing', changed([NCL2_TAG + 8, 4]), 'icc-damaged'],
  ['a count outside', changed([NCL2 + 12, 4]), 'icc-damaged: The profile is damaged: it says that it has 4 colors'],
  ['an endless count', changed([NCL2 + 12, 0xffffffff]), 'too-many-rows'],
  ['a count of none', changed([NCL2 + 12, 0]), 'no-rows'],
  ['more channels than there are', changed([NCL2 + 16, 0x7fffffff]), 'icc-damaged'],
  ['an end in the middle', named().slice(0, 400), 'icc-damaged'],
  ['a header only', named().slice(0, 130), 'icc-damaged'],
  ['something else', new Uint8Array(200), 'not-icc'],
])('refuses a profile with %s', (_, bytes, problem) => {
  const result = readIccNames(bytes, 'range.icc');
  expect(result.ok ? 'read' : `${result.problem.code}: ${result.problem.text}`).toContain(problem);
});

it('reads a part of a larger buffer', () => {
  const bytes = named();
  const within = new Uint8Array(bytes.length + 100);
  within.set(bytes, 50);
  expect(read(within.subarray(50, 50 + bytes.length))).toEqual(read(bytes));
});

it('is found by what is inside', () => {
  expect(isIccProfile(new TextEncoder().encode(`${'x'.repeat(36)}acsp${'x'.repeat(200)}`))).toBe(false);
  expect(readSheet(named(), 'range.csv')).toMatchObject({ ok: true, value: { format: 'icc' } });
  expect(readSheet(sample('display-p3-like.icc'), 'a.icc')).toMatchObject({
    ok: false,
    problem: { code: 'icc-class' },
  });
});
