import fc from 'fast-check';
import { expect, it } from 'vitest';
import { tintWord } from '../../src/engine/judge/tint-words';
import * as cautions from '../../src/ui/words/cautions';
import * as copy from '../../src/ui/words/copy';
import * as daylight from '../../src/ui/words/daylight';
import * as drawer from '../../src/ui/words/drawer';
import * as findings from '../../src/ui/words/findings';
import * as finishes from '../../src/ui/words/finishes';
import * as fixtures from '../../src/ui/words/fixtures';
import * as ledge from '../../src/ui/words/ledge';
import { decimal, labText, percent, seenShare } from '../../src/ui/words/numbers';
import * as picture from '../../src/ui/words/picture';
import * as problems from '../../src/ui/words/problems';
import * as reading from '../../src/ui/words/reading';
import * as seenBy from '../../src/ui/words/seen-by';
import * as bar from '../../src/ui/words/top-bar';

const texts = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(texts) : [];
};
const all = [
  cautions,
  copy,
  daylight,
  drawer,
  fixtures,
  finishes,
  findings,
  ledge,
  picture,
  problems,
  reading,
  seenBy,
  bar,
].flatMap(texts);

it('speaks plainly: no exclamation marks, no promises of exact match, compliance or safety, US spelling', () => {
  expect(all.length).toBeGreaterThan(150);
  for (const text of all) expect(text).not.toMatch(/!|exact match|compliant|\bsafe\b|colour|grey|\bhob\b|worktops\b/i);
});

it('says how firmly a finding holds without claiming more than was tried', () => {
  expect(findings.holdsInWords(null, 'pending')).toMatch(/still being worked out/);
  expect(findings.holdsInWords(null, 'done')).toMatch(/rests on the room and its lamps/);
  expect(findings.holdsInWords(1, 'done')).toMatch(/^It stays so /);
  expect(findings.holdsInWords(0.9, 'done')).toBe('True in 9 of 10 tries within what is known.');
  expect(findings.holdsInWords(0.97, 'done')).toMatch(/nearly all/);
  expect(findings.holdsInWords(0.01, 'done')).toMatch(/almost none/);
});

it('counts open questions apart from warnings', () => {
  expect(findings.FINDINGS.count(0, 0, 0)).toBe('No warnings');
  expect(findings.FINDINGS.count(1, 2, 0)).toBe('1 warning, 2 open questions');
  expect(findings.FINDINGS.count(3, 1, 0)).toBe('3 warnings, 1 open question');
  expect(findings.FINDINGS.count(3, 1, 2)).toBe('3 warnings, 2 decisions to look at again');
});

it('names the direction of a tint by its hue and nothing for a chroma under 1', () => {
  expect(tintWord(0.3, 0.4)).toBeNull();
  expect(tintWord(0, 5)).toBe('yellowish');
  expect(tintWord(0, -5)).toBe('bluish');
  expect(tintWord(-5, 0)).toBe('greenish');
  expect(tintWord(2, 0)).toBe('faintly pinkish');
  expect(tintWord(0, 12)).toBe('strongly yellowish');
});

it('gives a word for every tint of chroma 1 and more', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 60, noNaN: true }), fc.double({ min: 0, max: 360, noNaN: true }), (c, h) => {
      const rad = (h * Math.PI) / 180;
      const [a, b] = [(c + 1e-6) * Math.cos(rad), (c + 1e-6) * Math.sin(rad)];
      expect(tintWord(a, b)).toMatch(/\w+/);
    }),
  );
});

it('words a shift by the trade’s thresholds 1, 2 and 5 (CIEDE2000)', () => {
  expect([0.9, 1.5, 4, 6].map(reading.shiftWord)).toEqual([
    'the same to most eyes',
    'very close',
    'noticeable',
    'clearly different',
  ]);
});

it('writes numbers with a true minus and never a negative zero', () => {
  expect(labText([85.12, -0.84, -0.02])).toBe('85.1, −0.8, 0.0');
  expect(decimal(-0.04)).toBe('0.0');
  expect(percent(0.485)).toBe('49%');
});

it('a little that is seen is not none', () => {
  expect([0, 0.001, 0.00499, 0.005, 0.0149, 1].map(seenShare)).toEqual([
    '0%',
    'under 1%',
    'under 1%',
    '1%',
    '1%',
    '100%',
  ]);
  expect(findings.FINDINGS.saidAbove('warm', 0, true)).toBe('Nothing large you see is warm, as samples.');
  expect(findings.FINDINGS.saidAbove('warm', 0.003, false)).toBe(
    'Under 1% of what you see is warm, if the colors are as given.',
  );
});
