import fc from 'fast-check';
import { expect, it } from 'vitest';
import { finishComponent } from '../../src/engine/finish/component';
import type { GivenColor } from '../../src/engine/finish/given-color';
import { checkColors } from '../../src/io/check-colors';
import { parseColorValue } from '../../src/io/color-value';
import { parseProject, projectText } from '../../src/io/project-file';
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

const under = (illuminant: string, observer_deg: 2 | 10) => ({ illuminant, observer_deg });

it.each([
  ['lab(D50,10):84.2,0.5,6.1', { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('D50', 10) }],
  ['lab(10°/d50):84,2 0,5 6,1', { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('D50', 10) }],
  ['lab(A, SCE):84.2;0.5;6.1', { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('A', 2), specular: 'excluded' }],
  ['lch:84.2, 6.1, 85.3', { kind: 'lch', lch: [84.2, 6.1, 85.3], ...under('D65', 2) }],
  ['lch(C):84.2 6.1 10°', { kind: 'lch', lch: [84.2, 6.1, 10], ...under('C', 2) }],
  ['xyz:66.1,69.7,67', { kind: 'xyz', xyz: [66.1, 69.7, 67], ...under('D65', 2) }],
  ['munsell:5Y 9/1', { kind: 'munsell', munsell: '5Y 9/1' }],
  ['N 9.25/', { kind: 'munsell', munsell: 'N 9.25/' }],
  ['2.5yr 8/4', { kind: 'munsell', munsell: '2.5yr 8/4' }],
  ['p3:#F3EFE0', { kind: 'hex', hex: '#f3efe0', space: 'display-p3' }],
  ['LRV 70 warm gray', { kind: 'lrv', lrv: 70, hue: 'warm gray' }],
  ['warm gray, LRV 70', { kind: 'lrv', lrv: 70, hue: 'warm gray' }],
  ['lrv:warm gray 70', { kind: 'lrv', lrv: 70, hue: 'warm gray' }],
  ['lrv:off-white 70,5 %', { kind: 'lrv', lrv: 70.5, hue: 'off-white' }],
  ['lrv:LRV 70 warm gray', { kind: 'lrv', lrv: 70, hue: 'warm gray' }],
  ['L* 84.2 a* 0.5 b* 6.1', { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('D65', 2) }],
  ['L*=84,2; a*=−0,5; b*=6,1 (D50/2°)', { kind: 'lab', lab: [84.2, -0.5, 6.1], ...under('D50', 2) }],
  [
    'CIELAB 84.2 0.5 6.1, D65/10, SCI',
    { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('D65', 10), specular: 'included' },
  ],
  ['L 84.2 C 6.1 h 10° illuminant A 10°', { kind: 'lch', lch: [84.2, 6.1, 10], ...under('A', 10) }],
  ['b* 6.1 a* .5 L* 84.2 C* 6.12 h 85.3 F11/10', { kind: 'lab', lab: [84.2, 0.5, 6.1], ...under('FL11', 10) }],
  ['X: 66.1 Y: 69.7 Z: 67 C/2', { kind: 'xyz', xyz: [66.1, 69.7, 67], ...under('C', 2) }],
])('reads %s with what it says of light, observer and mirror reflection', (text, color) => {
  expect(parseColorValue(text)).toMatchObject({ ok: true, value: { color } });
  const read = parseColorValue(text);
  expect(read.ok && read.value.color).toEqual(color);
});

it('takes from its caller what the text does not say, and nothing else', () => {
  const unsaid = { illuminant: 'D50', observer_deg: 10, specular: 'excluded' } as const;
  const color = (text: string) => {
    const read = parseColorValue(text, unsaid);
    return read.ok && read.value.color;
  };
  expect(color('lab:84,0,6')).toEqual({ kind: 'lab', lab: [84, 0, 6], ...unsaid });
  expect(color('lab(D65):84,0,6')).toMatchObject({ illuminant: 'D65', observer_deg: 10 });
  expect(color('L* 84 a* 0 b* 6 D65/2° SCI')).toMatchObject({ ...under('D65', 2), specular: 'included' });
  expect(color('#fff')).toEqual({ kind: 'hex', hex: '#ffffff' });
});

it('keeps an LRV printed beside numbers for a check', () => {
  expect(parseColorValue('L* 84.2 a* 0.5 b* 6.1, LRV 65')).toMatchObject({
    ok: true,
    value: { color: { lab: [84.2, 0.5, 6.1] }, lrv: 65 },
  });
});

it.each([
  // Capital delta, the sign of an increment, letters; ISO/CIE 11664-4 writes differences with a delta.
  'ΔL* 0.5 Δa* 0.1 Δb* 0.3',
  '∆L* 0.5 ∆a* 0.1 ∆b* 0.3 D65/10',
  'Δ L* 0.5 Δ a* 0.1 Δ b* 0.3',
  'dL* 0.5 da* 0.1 db* 0.3',
  'DL 0.5 DA 0.1 DB 0.3',
  'delta L* 0.5, delta a* 0.1, delta b* 0.3',
  'lab:ΔL* 0.5 Δa* 0.1 Δb* 0.3',
  'Δ 0.5 0.1 0.3',
  'dE00 0.4',
])('takes no difference for a color: "%s"', (text) => {
  expect(parseColorValue(text)).toMatchObject({
    ok: false,
    problem: { code: 'a-difference', text: 'These are differences, not a color.' },
  });
});

it.each([
  ['contradiction', 'lab(D50,A):84,0.5,6', 'light: D50 and A'],
  ['contradiction', 'lab(2,10):84,0.5,6', 'observer: 2 and 10'],
  ['contradiction', 'lab(D50):84,0.5,6 D65/10', 'light: D50 and D65'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 D65/10 D50/2', 'light: D65 and D50'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 D65/10 C/10', 'light: D65 and C'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 D65/10 2°', 'observer: 10 and 2'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 SCI SCE', 'mirror reflection: SCI and SCE'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 LRV 65 LRV 66', 'LRV: 65 and 66'],
  ['contradiction', 'L* 84 a* 0.5 b* 6 L* 20', 'L: 84 and 20'],
  ['part-not-read', 'L* 84 a* 0.5 b* 6 roughly', '"roughly"'],
  ['part-not-read', 'L* 84 a* 0.5 b* 6 ΔE 0.4', '"ΔE 0.4"'],
  ['part-not-read', 'L* 84 a* 0.5 b* 6 7', '"7"'],
  ['part-not-read', 'L* 84 a* 0.5 b* 6 45/0', '"45/0"'],
  ['part-not-read', 'lab:84, 0.5, 6 shop', '"shop"'],
  ['part-not-read', 'CIELAB 84 0.5 6 7', '"7"'],
  ['lrv-out-of-range', 'L* 84 a* 0.5 b* 6 LRV 650', '650'],
  ['lrv-out-of-range', 'L* 84 a* 0.5 b* 6 LRV -5', '-5'],
])('drops nothing in silence, but refuses with %s: "%s"', (code, text, part) => {
  const read = parseColorValue(text);
  expect(read).toMatchObject({ ok: false, problem: { code } });
  expect(!read.ok && read.problem.text).toContain(part);
});

it.each([
  'L* 84 a* 0.5 b* 6 D65/10 D65/10°',
  'L*a*b* : L* 84 | a* 0.5 | b* 6 - illuminant D65, 10° observer',
  'CIE 1976 L* = 84, a* = 0.5, b* = 6; L* 84 (D65/10°, d/8°).',
  'CIELAB 84,0 0,5 6,0, D65/10',
  'D65/10, lab 84 0.5 6',
  'lab(D65,10):84,0.5,6 D65/10°',
])('takes the same said twice, and what only names the numbers: "%s"', (text) => {
  expect(parseColorValue(text)).toMatchObject({
    ok: true,
    value: { color: { kind: 'lab', lab: [84, 0.5, 6], ...under('D65', 10) } },
  });
});

it('takes the geometry of a sphere for what it says of the mirror reflection (CIE 15:2018: di:8, de:8)', () => {
  for (const [word, specular] of [
    ['di:8°', 'included'],
    ['de:8', 'excluded'],
  ]) {
    expect(parseColorValue(`L* 84 a* 0.5 b* 6 ${word}`)).toMatchObject({ ok: true, value: { color: { specular } } });
  }
});

it('refuses what is longer than a line before it looks into it', () => {
  for (const text of [`L* 84 a* 0.5 b* 6 ${'h '.repeat(200)}`, '1'.repeat(301), `lab:${'84, '.repeat(100)}`]) {
    expect(parseColorValue(text)).toMatchObject({ ok: false, problem: { code: 'too-long' } });
  }
});

it('warns of X, Y, Z on the scale 1', () => {
  const read = parseColorValue('xyz:.66,.70,.67');
  expect(read.ok && read.notices?.map(({ code }) => code)).toEqual(['xyz-scale']);
  const dark = parseColorValue('xyz:2.6,2.7,2.7');
  expect(dark.ok && dark.notices).toBeUndefined();
});

it('never throws: any text is a color inside its ranges or a problem with a remedy', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      ...[
        'lab',
        'lch',
        'xyz',
        'munsell',
        'lrv',
        'hex',
        'p3',
        ':',
        '(',
        ')',
        '#',
        ',',
        ';',
        ' ',
        '°',
        '/',
        '*',
        'L*',
        'a*',
      ],
      ...[
        'b*',
        'C*',
        'h',
        'X',
        'Y',
        'Z',
        'N',
        '5Y',
        'D50',
        'D65',
        'A',
        'F11',
        '10',
        '2',
        'SCI',
        'LRV',
        'gray',
        '%',
        '−',
      ],
      ...['NaN', 'Infinity', '1e999', '-1e-999', '0x10', '__proto__', 'constructor', '.', '-', '\0', '\n', '١'],
    ),
    fc.double().map(String),
    fc.integer({ min: -20, max: 120 }).map(String),
    fc.string({ maxLength: 4 }),
  );
  const text = fc
    .array(piece, { maxLength: 14 })
    .chain((parts) => fc.constantFrom('', ' ').map((by) => parts.join(by)));
  const number = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Infinity, -Infinity, 1e308, -0, 5e-324)).map(String);
  const prefixed = fc
    .tuple(fc.constantFrom('lab', 'lch', 'xyz', 'lab(A,10)'), fc.array(number, { minLength: 3, maxLength: 3 }))
    .map(([kind, numbers]) => `${kind}:${numbers.join(',')}`);
  fc.assert(
    fc.property(fc.oneof(text, prefixed, fc.string()), (any) => {
      const read = parseColorValue(any);
      if (!read.ok) {
        expect(read.problem.text).not.toBe('');
        expect(read.problem.remedy).not.toBe('');
      } else expect(JSON.stringify(read.value)).not.toMatch(/null/);
    }),
    { numRuns: 2000 },
  );
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
  ['lrv-missing', 'lrv:warm gray'],
  ['not-a-color', 'lrv:70 80 warm gray'],
  ['not-a-color', 'lrv:-5 gray'],
  ['munsell-not-understood', 'munsell:5Q 3'],
  ['unknown-illuminant', 'lab(D60):80,0,0'],
  ['unknown-illuminant', 'lab(foo):80,0,0'],
  ['unknown-illuminant', 'L* 80 a* 0 b* 0 D60/2°'],
  ['not-a-color', 'lrv(D65):70 white'],
  ['not-a-color', '84, 0.5, 6'],
  ['not-a-color', 'lab:L* 84 C* 6 h 85'],
  ['out-of-range', 'lch:80,-5,10'],
  ['out-of-range', 'lch:80,5,1000'],
  ['out-of-range', 'xyz:50,120,50'],
  ['not-a-color', 'lab:1e999,0,0e'],
  ['out-of-range', 'lab:1e999,0,0'],
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

it('tells on opening which colors are doubtful, with file, line and path', () => {
  const text = demoText()
    .replace(
      '"lab": [32, -13, -4.5], "illuminant": "D65", "observer_deg": 2 }',
      '"lab": [32, -13, -4.5], "illuminant": "D65", "observer_deg": 2 }, "lrv": 40',
    )
    .replace(
      '"kind": "lab", "lab": [92, -0.4, 1.6], "illuminant": "D65", "observer_deg": 2',
      '"kind": "hex", "hex": "#e9e8e4"',
    );
  const parsed = parseProject(text, 'mine.json');
  if (!parsed.ok) throw new Error(parsed.problem.text);
  const checked = checkColors(parsed.value, text, 'mine.json');
  expect(checked.ok && checked.notices?.map(({ code, at }) => [code, at?.file, typeof at?.line])).toEqual([
    ['lrv-disagrees', 'mine.json', 'number'],
    ['provenance-set', 'mine.json', 'number'],
  ]);
  expect(checked.ok && checked.notices?.[0]?.text).toMatch(/^library\[0\].*PT-01.*printed LRV is 40/);
});

it('keeps every kind of color in a project file: read, written and read again', () => {
  const kinds: readonly GivenColor[] = [
    { kind: 'lab', lab: [84, 0.5, 6], illuminant: 'D50', observer_deg: 10, specular: 'excluded' },
    { kind: 'lch', lch: [84, 6, 85], illuminant: 'FL11', observer_deg: 2 },
    { kind: 'xyz', xyz: [66, 70, 65], illuminant: 'C', observer_deg: 2, specular: 'included' },
    { kind: 'munsell', munsell: '5Y 9/1' },
    { kind: 'spectrum', start_nm: 400, step_nm: 10, reflectance: Array(31).fill(0.5), specular: 'included' },
    { kind: 'hex', hex: '#d9d4c8', space: 'display-p3' },
    { kind: 'lrv', lrv: 62, hue: 'off-white' },
  ];
  const demo = demoProject();
  const finish = demo.library.find(({ components }) => components.length === 1)!;
  const library = [
    ...demo.library,
    ...kinds.map((color, i) => ({
      ...finish,
      id: `OWN-0${i}`,
      provenance: color.kind === 'hex' ? ('screen' as const) : ('by-eye' as const),
      components: [{ ...finish.components[0]!, color, lrv: 60 }],
    })),
  ];
  const project = { ...demo, library };
  const read = parseProject(projectText(project));
  expect(read.ok && read.value).toEqual(project);
  expect(read.ok && checkColors(read.value, projectText(project)).ok).toBe(true);
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
