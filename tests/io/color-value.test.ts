import { expect, it } from 'vitest';
import { finishComponent } from '../../src/engine/finish/component';
import { checkColors } from '../../src/io/check-colors';
import { parseColorValue } from '../../src/io/color-value';
import { parseProject } from '../../src/io/project-file';
import { demoProject, demoText } from './demo';

const lab = (l: number, a: number, b: number) => ({ kind: 'lab', lab: [l, a, b], illuminant: 'D65', observer_deg: 2 });

it.each([
  ['#F3EFE0', { kind: 'hex', hex: '#f3efe0' }, 'screen'],
  ['f3efe0', { kind: 'hex', hex: '#f3efe0' }, 'screen'],
  ['hex:#fa0', { kind: 'hex', hex: '#ffaa00' }, 'screen'],
  ['lab:88.5,-0.8,-0.3', lab(88.5, -0.8, -0.3), 'declared'],
  ['LAB: 88.5 -0.8 -0.3', lab(88.5, -0.8, -0.3), 'declared'],
  ['lrv:70 warm gray', { kind: 'lrv', lrv: 70, hue: 'warm gray' }, 'by-eye'],
  ['lrv: 70 %, off-white', { kind: 'lrv', lrv: 70, hue: 'off-white' }, 'by-eye'],
])('reads %s', (text, color, provenance) => {
  expect(parseColorValue(text)).toEqual({ ok: true, value: { color, provenance } });
});

it('reads a Munsell notation with its lightness (ASTM D1535-14, Y of value 5 is 19.27 % of the perfect diffuser, L* 51.0)', () => {
  const read = parseColorValue('munsell:N 5/');
  const color = read.ok && read.value.color;
  expect(color && color.kind === 'lab' && color.lab[0]).toBeCloseTo(51.0, 0);
});

it.each([
  ['not-a-color', 'blue'],
  ['not-a-color', ''],
  ['not-a-color', '#12345'],
  ['not-a-color', 'lab:88,1'],
  ['not-a-color', 'lab:88,one,2'],
  ['not-a-color', 'lab:88,,2'],
  ['out-of-range', 'lab:120,0,0'],
  ['out-of-range', 'lrv:170 white'],
  ['hue-missing', 'lrv:70'],
  ['munsell-not-understood', 'munsell:5Q 3'],
])('refuses with %s: "%s"', (code, text) => {
  const read = parseColorValue(text);
  expect(read).toMatchObject({ ok: false, problem: { code } });
  expect(!read.ok && read.problem.remedy).not.toBe('');
});

it('finds no color of the demo outside what a surface can have, and says file, line and path of those that are', () => {
  const demo = demoProject();
  expect(checkColors(demo, demoText())).toEqual({ ok: true, value: demo });

  const text = demoText().replaceAll('"lab": [32, -13, -4.5]', '"lab": [95, 60, 0]');
  const parsed = parseProject(text, 'mine.json');
  if (!parsed.ok) throw new Error(parsed.problem.text);
  const line = text.split('\n').findIndex((one) => one.includes('[95, 60, 0]')) + 1;
  expect(checkColors(parsed.value, text, 'mine.json')).toMatchObject({
    ok: false,
    problem: {
      code: 'outside-object-color-solid',
      at: { file: 'mine.json', line, path: 'library[0].components[0].color' },
    },
  });
});

it('keeps the demo within what is typical for each class (common practice, values from memory)', () => {
  for (const finish of demoProject().library) {
    for (const { role, share, color } of finish.components) {
      const made = finishComponent({ role, share, color, finishClass: finish.class, provenance: finish.provenance });
      const l = made.ok ? made.value.labD65.l : Number.NaN;
      expect(l).toBeGreaterThanOrEqual(18);
      expect(l).toBeLessThanOrEqual(97);
    }
    if (finish.class === 'grout') expect(finish.gloss_gu).toBeLessThanOrEqual(3);
    if (finish.label.includes('flat')) expect(finish.gloss_gu).toBeLessThanOrEqual(5);
    if (finish.label.includes('polished')) expect(finish.gloss_gu).toBeGreaterThanOrEqual(55);
  }
});
