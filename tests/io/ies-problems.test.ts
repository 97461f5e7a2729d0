import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { webFromIes } from '../../src/io/ies-file';
import { ies, lambert, vertical } from './ies-text';

/** Code, line and text of what is wrong. */
function problemOf(text: string): string {
  const read = webFromIes(text, 'lamp.ies');
  if (read.ok) return 'none';
  expect(read.problem.remedy).toMatch(/^[A-Z].*\.$/s);
  expect(read.problem.at?.file).toBe('lamp.ies');
  return `${read.problem.code} ${read.problem.at?.line ?? '-'}: ${read.problem.text}`;
}

const broken = (from: string | RegExp, to: string): string => ies().replace(from, to);

describe('refuses', () => {
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
    ['a word among the numbers', broken('275.66', 'x'), 'not-a-number 12'],
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
      'an angle written twice',
      ies({ vertical: [0, 15, 15.0005, 45, 60, 75, 90] }),
      'angle-order 10: Line 10: the vertical angle 15.0005 lies closer than 0.001 degrees to 15',
    ],
    ['a spark', ies({ lamp: '1 1000 1e-12' }), 'bad-lumens 8: Line 8: the intensities add up to 9.9'],
    ['a lighthouse', ies({ lamp: '1 1000 100000' }), 'bad-lumens 8: Line 8: the intensities add up to 99'],
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
