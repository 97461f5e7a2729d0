import { FloatType } from 'three';
import { IESLoader } from 'three/examples/jsm/loaders/IESLoader.js';
import { describe, expect, it } from 'vitest';
import { frontShare, webFlux } from '../../src/engine/photometry/web-flux';
import { webFromRecord } from '../../src/engine/photometry/web-from-record';
import { intensityOf } from '../../src/engine/photometry/web-intensity';
import { beamOfLamp } from '../../src/io/ies-beam';
import { webFromIes } from '../../src/io/ies-file';
import { ies, keywords, lambert, vertical } from './ies-text';

function lampOf(text: string, file?: string) {
  const read = webFromIes(text, file);
  if (!read.ok) throw new Error(read.problem.text);
  return { ...read.value, notices: (read.notices ?? []).map(({ code, at }) => `${code} ${at?.line}`) };
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
