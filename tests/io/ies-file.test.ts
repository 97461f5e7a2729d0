import fc from 'fast-check';
import { FloatType } from 'three';
import { IESLoader } from 'three/examples/jsm/loaders/IESLoader.js';
import { describe, expect, it } from 'vitest';
import { frontShare, webFlux } from '../../src/engine/photometry/web-flux';
import { webFromRecord } from '../../src/engine/photometry/web-from-record';
import { intensityOf } from '../../src/engine/photometry/web-intensity';
import { beamOfLamp } from '../../src/io/ies-beam';
import { webFromIes } from '../../src/io/ies-file';

// All lamps are invented. The layout is that of IES LM-63: keywords, TILT, thirteen numbers, angles, candela.

const keywords = '[TEST] invented\n[MANUFAC] nobody\n[LUMCAT] X-1\n[LUMINAIRE] Round lamp\n[MORE] for a hall\n';
const vertical = [0, 15, 30, 45, 60, 75, 90];
/** Lambert, 1000 lm: I0 = 1000 / pi. */
const lambert = vertical.map((v) => Number(((1000 / Math.PI) * Math.cos((v * Math.PI) / 180)).toFixed(2)));

interface Parts {
  readonly first?: string;
  readonly tilt?: string;
  readonly lamp?: string;
  readonly type?: number;
  readonly size?: string;
  readonly factors?: string;
  readonly vertical?: readonly number[];
  readonly horizontal?: readonly number[];
  readonly planes?: readonly (readonly number[])[];
}

function ies(parts: Parts = {}): string {
  const { first = `IESNA:LM-63-2002\n${keywords}`, tilt = 'TILT=NONE', lamp = '1 1000 1', type = 1 } = parts;
  const { size = '2 0.1 0.2 0', factors = '1 1 10', horizontal = [0], planes = horizontal.map(() => lambert) } = parts;
  const down = parts.vertical ?? vertical;
  return [
    `${first}${tilt}`,
    `${lamp} ${down.length} ${horizontal.length} ${type} ${size}`,
    factors,
    down.join(' '),
    horizontal.join(' '),
    ...planes.map((plane) => plane.join(' ')),
    '',
  ].join('\n');
}

function lampOf(text: string, file?: string) {
  const read = webFromIes(text, file);
  if (!read.ok) throw new Error(read.problem.text);
  return { ...read.value, notices: (read.notices ?? []).map(({ code, at }) => `${code} ${at?.line}`) };
}

/** Code, line and text of what is wrong. */
function problemOf(text: string): string {
  const read = webFromIes(text, 'lamp.ies');
  if (read.ok) return 'none';
  expect(read.problem.remedy).toMatch(/^[A-Z].*\.$/s);
  expect(read.problem.at?.file).toBe('lamp.ies');
  return `${read.problem.code} ${read.problem.at?.line ?? '-'}: ${read.problem.text}`;
}

describe('reads', () => {
  it.each([
    ['2002', ies()],
    ['1995', ies({ first: `IESNA:LM-63-1995\n${keywords}` })],
    ['1991', ies({ first: `IESNA91\n${keywords}` })],
    [
      '2019, whose second factor says how the file was made',
      ies({ first: `IES:LM-63-2019\n${keywords}`, factors: '1 1.1 9' }),
    ],
    ['1986, without a first line', ies({ first: 'Round lamp for a hall\nanother line\n' })],
    ['CRLF', ies().replaceAll('\n', '\r\n')],
    ['line ends of an old computer', ies().replaceAll('\n', '\r')],
    ['a byte order mark', `\uFEFF${ies()}`],
    ['spaces around TILT', ies({ tilt: '  tilt = none  ' })],
    ['a Ctrl-Z at the end', `${ies()}\u001A`],
    ['one number a line', ies().replace(/ (?=[\d.]+(\s|$))/g, '\n')],
    ['commas and tabs', ies().replace(/(\d) (?=\d)/g, '$1,\t')],
  ])('LM-63, %s', (_, text) => {
    const lamp = lampOf(text);
    expect(lamp.name).toBe('Round lamp for a hall');
    expect([...lamp.web.vertical_deg]).toEqual(vertical);
    expect([...lamp.web.horizontal_deg]).toEqual([0]);
    expect([...lamp.web.candela]).toEqual(lambert);
    expect(lamp.size_m).toEqual([0.1, 0.2]);
    expect(lamp.notices).toEqual([]);
    // Straight lines over 15 degrees miss (15 deg)2 / 12 of a cosine.
    expect(lamp.lumens / 1000).toBeCloseTo(1 - (Math.PI / 12) ** 2 / 12, 3);
  });

  it('angles and candela broken over lines anywhere, as one long line too', () => {
    const numbers = ies().split('TILT=NONE\n')[1]!;
    for (const width of [1, 3, 8]) {
      let count = 0;
      const broken = numbers.replace(/\s+/g, () => (++count % width === 0 ? '\n' : ' '));
      expect(lampOf(`TILT=NONE\n${broken}`).lumens).toBe(lampOf(ies()).lumens);
    }
  });

  it('intensities times multiplier and ballast factor; the second factor only in editions before 1995', () => {
    const factors = '0.9 0.8 10';
    const lamp = '1 1000 2';
    expect(lampOf(ies({ lamp, factors })).web.candela[0]).toBeCloseTo(1.8 * lambert[0]!, 9);
    const before = ies({ first: `IESNA91\n${keywords}`, lamp, factors });
    expect(lampOf(before).web.candela[0]).toBeCloseTo(1.44 * lambert[0]!, 9);
  });

  it('the light that leaves the lamp, with bulbs of any lumens or with absolute photometry', () => {
    const { lumens } = lampOf(ies());
    expect(lampOf(ies({ lamp: '1 -1 1' })).lumens).toBe(lumens);
    expect(lampOf(ies({ lamp: '2 800 1' })).lumens).toBe(lumens);
  });

  it.each([
    ['1 1 2 0', [0.3048, 0.6096]],
    ['2 0 0 0', [0, 0]],
    ['2 -0.3 0 0', [0.3, 0.3]],
    ['2 0 -0.3 0', [0.3, 0.3]],
    ['2 -0.3 -0.3 0.1', [0.3, 0.3]],
  ])('the opening "%s", feet or meters, round where negative', (size, expected) => {
    lampOf(ies({ size })).size_m.forEach((side, i) => {
      expect(side).toBeCloseTo(expected[i]!, 12);
    });
  });

  it('over a tilt table, and says that it was not used', () => {
    const lamp = lampOf(ies({ tilt: 'TILT=INCLUDE\n1\n3\n0 45\n90\n1.0 0.95 0.9' }));
    expect([...lamp.web.candela]).toEqual(lambert);
    expect(lamp.notices).toEqual(['tilt-left-out 7']);
  });

  it('the name from LUMINAIRE, else LUMCAT, else the first words, else the file', () => {
    const named = (first: string): string => lampOf(ies({ first }), 'C:\\lamps\\hall 7.ies').name;
    expect(named('IES:LM-63-2019\n[TEST] 1\n[LUMCAT] X-1\n')).toBe('X-1');
    expect(named('IES:LM-63-2019\n[TEST] 1\n')).toBe('hall 7');
    expect(named('\nA lamp\n')).toBe('A lamp');
    expect(named('')).toBe('hall 7');
    expect(named(`IESNA91\n[LUMINAIRE] ${'x'.repeat(500)}\u0007\n`)).toHaveLength(120);
  });
});

describe('symmetry', () => {
  const steps = (from: number, to: number, step: number): number[] =>
    Array.from({ length: (to - from) / step + 1 }, (_, i) => from + i * step);
  const law = (v: number, h: number): number => 100 + v + 50 * Math.cos((h * Math.PI) / 180);
  const file = (horizontal: number[], down = vertical): string =>
    ies({ lamp: '1 -1 1', horizontal, vertical: down, planes: horizontal.map((h) => down.map((v) => law(v, h))) });

  it.each([[90], [180], [360]])('up to %d degrees', (end) => {
    const { web, notices } = lampOf(file(steps(0, end, 30)));
    expect([web.horizontal_deg.at(-1), notices]).toEqual([end, []]);
    expect(intensityOf(web, 15, 30)).toBeCloseTo(law(15, 30), 9);
  });

  it('from 90 to 270: the other side is the mirror image', () => {
    // 180 is not among the angles here: it lies between 150 and 210.
    for (const angles of [steps(90, 270, 30), [90, 120, 150, 210, 270]]) {
      const { web, notices } = lampOf(file(angles));
      expect(notices).toEqual(['mirrored 11']);
      expect([web.horizontal_deg[0], web.horizontal_deg.at(-1)]).toEqual([0, 360]);
      for (const h of [90, 120, 150, 210, 270]) {
        expect(intensityOf(web, 30, h)).toBeCloseTo(law(30, h), 9);
        expect(intensityOf(web, 30, 180 - h)).toBeCloseTo(law(30, h), 9);
      }
      expect(intensityOf(web, 30, 0)).toBeCloseTo(intensityOf(web, 30, 180), 9);
    }
  });

  it('a circle that stops one step before 360 is closed', () => {
    const { web, notices } = lampOf(file(steps(0, 330, 30)));
    expect(notices).toEqual(['closed 11']);
    expect([...web.candela]).toEqual(
      [...lampOf(file(steps(0, 360, 30))).web.candela].map((cd) => expect.closeTo(cd, 9)),
    );
  });

  it('a lamp that shines up only is turned over about its length', () => {
    const up = steps(90, 180, 15);
    const { web, notices } = lampOf(file(steps(0, 360, 30), up));
    expect(notices).toEqual(['turned-over 8']);
    expect([...web.vertical_deg]).toEqual(vertical);
    expect(frontShare(web)).toBe(1);
    // What shone to one side, seen from below, shines to the other.
    expect(intensityOf(web, 30, 60)).toBeCloseTo(law(150, 300), 9);
  });

  it('says how much goes up behind the face, and that intensities and bulbs disagree', () => {
    const both = ies({ lamp: '1 2000 1', vertical: [0, 90, 180], planes: [[100, 100, 100]] });
    expect(lampOf(both).notices).toEqual(['light-behind 8']);
    expect(lampOf(ies({ lamp: '1 900 1' })).notices).toEqual(['more-than-bulbs 8']);
  });
});

it('agrees with a general-purpose reader of the same file (IESLoader of three): shape, in single precision', () => {
  const horizontal = [0, 22.5, 60, 90];
  const planes = horizontal.map((h) =>
    vertical.map((v) => Number((120 + v * 1.7 - h * 0.9 + ((v * h) % 17)).toFixed(2))),
  );
  const text = ies({ horizontal, planes });
  const { web } = lampOf(text);
  const peak = Math.max(...web.candela);
  const loader = Object.assign(new IESLoader(), { type: FloatType });
  const data = loader.parse(text).image.data as Float32Array;
  for (let h = 0; h < 360; h += 7) {
    // 180 rows from 0 to 180 degrees; those of the front.
    for (let i = 0; i < 90; i += 5) {
      expect(data[h * 180 + i]!).toBeCloseTo(intensityOf(web, (i * 180) / 179, h) / peak, 6);
    }
  }
});

describe('refuses', () => {
  const broken = (from: string | RegExp, to: string): string => ies().replace(from, to);
  it.each([
    ['nothing', '', 'not-ies -: This is no IES file'],
    ['another text', 'a letter\nfrom home', 'not-ies -'],
    ['a file without TILT', broken('TILT=NONE', ''), 'no-tilt -: The file has no line TILT='],
    ['an archive', 'PK\u0003\u0004\0', 'not-a-text -'],
    [
      'tilt in another file',
      broken('NONE', 'lamp.tlt'),
      'tilt-file 7: Line 7: how tilt changes the light stands in another',
    ],
    ['an empty tilt', broken('NONE', ''), 'tilt-file 7: Line 7: TILT= has no value'],
    ['a bad tilt count', broken('NONE', 'INCLUDE\n1\n-3'), 'bad-count 9'],
    [
      'a tilt table cut off',
      'TILT=INCLUDE\n1\n2\n0 90\n1',
      'too-few-numbers 5: Line 5: the file ends before tilt factor 2 of 2',
    ],
    ['no lamps', ies({ lamp: '0 1000 1' }), 'bad-count 8: Line 8: 0 is no number of bulbs'],
    ['half an angle', broken('7 1 1 2', '6.5 1 1 2'), 'bad-count 8: Line 8: 6.5 is no number of vertical angles'],
    ['one vertical angle', ies({ vertical: [0], planes: [[1]] }), 'bad-count 8'],
    ['no horizontal angle', broken('7 1 1 2', '7 0 1 2'), 'bad-count 8: Line 8: 0 is no number of horizontal angles'],
    ['type B', ies({ type: 2 }), 'not-type-c 8: Line 8: the lamp was measured as type B'],
    ['type A', ies({ type: 3 }), 'not-type-c 8: Line 8: the lamp was measured as type A'],
    ['no type', ies({ type: 7 }), 'not-type-c 8: Line 8: the photometric type is 7'],
    ['an unknown unit', ies({ size: '3 1 1 0' }), 'bad-unit 8'],
    ['millimeters', ies({ size: '2 600 600 0' }), 'bad-size 8: Line 8: an opening of 600 meters'],
    ['multiplier 0', ies({ lamp: '1 1000 0' }), 'bad-factor 8: Line 8: the multiplier is 0'],
    ['a negative ballast factor', ies({ factors: '-1 1 10' }), 'bad-factor 9: Line 9: the ballast factor is -1'],
    ['a word among the numbers', broken('275.66', 'x').replace('275.66', ''), 'not-a-number 12'],
    [
      'a hexadecimal number',
      broken('318.31', '0x13e'),
      'not-a-number 12: Line 12: "0x13e" stands where intensity 1 of 7',
    ],
    ['infinity', broken('318.31', '1e999'), 'not-a-number 12'],
    [
      'too few numbers',
      ies({ planes: [lambert.slice(1)] }),
      'too-few-numbers 13: Line 13: the file ends before intensity 7 of 7',
    ],
    ['too many numbers', ies({ planes: [[...lambert, 0, 0]] }), 'too-many-numbers 12'],
    ['decimal commas', broken('318.31', '318,31'), 'too-many-numbers 12'],
    ['a negative intensity', broken('318.31', '-1'), 'bad-candela 12: Line 12: the intensity -1 cd is negative'],
    [
      'a lamp as bright as the sun',
      broken('318.31', '1e12'),
      'bad-candela 12: Line 12: the intensity 1000000000000 cd is too large',
    ],
    ['a dark lamp', ies({ planes: [vertical.map(() => 0)] }), 'dark 12'],
    [
      'angles that fall',
      ies({ vertical: [0, 15, 15, 45, 60, 75, 90] }),
      'angle-order 10: Line 10: the vertical angle 15 does not',
    ],
    [
      'vertical angles that stop',
      ies({ vertical: [0, 15, 30, 45, 60, 75, 80] }),
      'vertical-range 10: Line 10: the vertical angles run from 0 to 80',
    ],
    ['type A angles', ies({ vertical: [-90, -60, -30, 0, 30, 60, 90] }), 'vertical-range 10'],
    ['horizontal angles that fall', ies({ horizontal: [0, 120, 90] }), 'angle-order 11'],
    [
      'no symmetry',
      ies({ horizontal: [0, 60, 120] }),
      'horizontal-range 11: Line 11: the horizontal angles run from 0 to 120',
    ],
    ['one plane askew', ies({ horizontal: [45] }), 'horizontal-range 11'],
    ['a circle with a gap', ies({ horizontal: [0, 90, 180, 300] }), 'horizontal-range 11'],
    [
      'more intensities than are kept',
      broken('7 1 1 2', '1000 101 1 2'),
      'too-many-candela 8: Line 8: the lamp has 101000',
    ],
    ['50 million letters', `${ies()}${' '.repeat(50_000_000)}`, 'file-too-large -'],
  ])('%s', (_, text, problem) => {
    expect(problemOf(text)).toContain(problem);
  });
});

it('leaves out words at the end, and says so', () => {
  expect(lampOf(`${ies()}end of file\n`).notices).toEqual(['rest-left-out 13']);
});

it('keeps a web of 181 x 73 angles and more whole', () => {
  const down = Array.from({ length: 361 }, (_, i) => i / 2);
  const horizontal = Array.from({ length: 145 }, (_, i) => i * 2.5);
  const lamp = lampOf(
    ies({ lamp: '1 -1 1', vertical: down, horizontal, planes: horizontal.map(() => down.map(() => 79.577)) }),
  );
  expect(lamp.web.candela).toHaveLength(361 * 145);
  // Isotropic, 1000 lm: 79.577 cd in five digits.
  expect(lamp.lumens / 1000).toBeCloseTo(1, 4);
});

it('gives what a project stores: plain lists that make the same web again', () => {
  const horizontal = [0, 90];
  const lamp = lampOf(ies({ horizontal, planes: [lambert, lambert.map((cd) => cd / 3)] }));
  const beam = beamOfLamp(lamp, 'lamps/hall.ies');
  expect(beam).toMatchObject({
    label: 'Round lamp for a hall',
    horizontal_deg: [0, 90],
    note: 'Read from the file hall.',
  });
  expect(beam.candela.map((plane) => plane.length)).toEqual([7, 7]);
  expect(JSON.parse(JSON.stringify(beam))).toEqual(beam);
  // Six digits are kept.
  expect(webFlux(webFromRecord(beam)) / beam.lumens).toBeCloseTo(1, 5);
});

it('never throws, whatever happens to a file: every answer is a lamp with sound numbers or a problem', () => {
  const text = ies({ horizontal: [0, 45, 90], tilt: 'TILT=INCLUDE\n1\n2\n0 90\n1 0.9' });
  const pieces = fc.constantFrom(
    '',
    '\0',
    '-',
    '1e308',
    'NaN',
    ' ',
    '\n',
    ',',
    '0',
    '90',
    '1',
    '.',
    'TILT=',
    '[MORE]',
    '1e-320',
    '9'.repeat(400),
  );
  const change = fc.record({
    at: fc.nat({ max: text.length }),
    length: fc.oneof(fc.nat({ max: 6 }), fc.nat({ max: text.length })),
    piece: fc.oneof(pieces, fc.string()),
  });
  let lamps = 0;
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
      const changed = changes.reduce(
        (all, { at, length, piece }) => all.slice(0, at) + piece + all.slice(at + length),
        text,
      );
      const read = webFromIes(changed);
      if (read.ok) {
        lamps++;
        const { web, lumens, size_m, name } = read.value;
        expect(lumens).toBeGreaterThan(0);
        expect([lumens, ...size_m, ...web.candela].every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
        expect(web.candela).toHaveLength(web.vertical_deg.length * web.horizontal_deg.length);
        expect(name).not.toBe('');
      } else {
        expect(Math.min(read.problem.text.length, read.problem.remedy.length)).toBeGreaterThan(10);
      }
    }),
    { numRuns: 3000 },
  );
  // Both happen.
  expect(lamps).toBeGreaterThan(100);
});
