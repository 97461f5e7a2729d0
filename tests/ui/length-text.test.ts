import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsText, lengthText, lengthWords, meantLength, parseLength } from '../../src/model/length-text';
import { inUnit } from '../../src/model/unit-words';

// 1 in = 25.4 mm exactly (international yard and pound agreement, 1959; NIST SP 811 appendix B); 1 ft = 12 in.
describe('lengths as people type them', () => {
  it.each([
    ['36', 914.4],
    ['36"', 914.4],
    ['36 in', 914.4],
    ['36 inches', 914.4],
    ['36 1/2', 927.1],
    ['36-1/2"', 927.1],
    ['36 1/2"', 927.1],
    ['36\u00bd', 927.1],
    ['36 \u00bd\u2033', 927.1],
    ['36.5', 927.1],
    ['1/2', 12.7],
    ['3\' 0"', 914.4],
    ["3'", 914.4],
    ['3 ft', 914.4],
    ['3\u20320\u2033', 914.4],
    ['3\' 1/2"', 927.1],
    ['3\'-0 1/2"', 927.1],
    ['2 ft 6 in', 762],
    ["2' 6", 762],
    ['36 in.', 914.4],
    ['3 ft. 0 1/2 in.', 927.1],
    ['.5"', 12.7],
    ['914 mm', 914],
    ['91.4cm', 914],
    ['0,914 m', 914],
    ['1,200 mm', 1200],
  ])('reads %s in an inch field', (text, mm) => expect(parseLength(text, 'in')).toBeCloseTo(mm, 6));

  it.each([
    ['914', 914],
    ['914.4', 914.4],
    ['914,4', 914.4],
    ['1,200', 1200],
    ['91.4 cm', 914],
    ['0.914m', 914],
    ['36 in', 914.4],
    ['36"', 914.4],
    ['36 1/2 in', 927.1],
    ['3\' 0"', 914.4],
    [' 600 mm ', 600],
  ])('reads %s in a millimeter field', (text, mm) => expect(parseLength(text, 'mm')).toBeCloseTo(mm, 6));

  it.each([
    '',
    ' ',
    'wide',
    '36 1/0',
    '1//2',
    '"',
    "'",
    'in',
    '3 4 5',
    '12 mm 3',
    '-5',
    '1e3',
    '36 1/2 mm',
    'NaN',
    "3' ft",
  ])('does not read "%s"', (text) => {
    expect(parseLength(text, 'in')).toBeNull();
    expect(parseLength(text, 'mm')).toBeNull();
  });

  it('does not guess what a bare fraction means in millimeters', () => expect(parseLength('36 1/2', 'mm')).toBeNull());

  it('reads what it shows: within half a sixteenth in inches, within a twentieth in millimeters', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 15000, noNaN: true }), (mm) => {
        for (const text of [lengthText(mm, 'in'), lengthWords(mm, 'in'), `${lengthText(mm, 'in')}"`]) {
          // A length is kept to a tenth of a millimeter.
          expect(Math.abs(parseLength(text, 'in')! - mm)).toBeLessThanOrEqual(25.4 / 32 + 0.051);
        }
        for (const text of [lengthText(mm, 'mm'), lengthWords(mm, 'mm')]) {
          expect(Math.abs(parseLength(text, 'mm')! - mm)).toBeLessThanOrEqual(0.05 + 1e-9);
        }
      }),
    );
  });

  it('shows every sixteenth in its lowest terms and reads it back to the same text', () => {
    for (let sixteenths = 0; sixteenths < 16 * 40; sixteenths++) {
      const text = lengthText((sixteenths / 16) * 25.4, 'in');
      const [whole, over, under] = /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(text)!.slice(1).map(Number) as number[];
      expect((whole || 0) + (over ? over / under! : 0)).toBe(sixteenths / 16);
      if (over) expect(over % 2).toBe(1);
      expect(lengthText(parseLength(text, 'in')!, 'in')).toBe(text);
    }
  });

  it('takes more digits than a number holds for no length', () => {
    // Lengths without end have no sixteenths: showing one never came to an end.
    for (const text of ['9'.repeat(400), `${'9'.repeat(400)}"`, `${'9'.repeat(400)} mm`, `1 ${'9'.repeat(400)}/1"`]) {
      expect(parseLength(text, 'in')).toBeNull();
      expect(parseLength(text, 'mm')).toBeNull();
    }
  });

  it('never throws and never gives a negative or endless length, whatever is typed', () => {
    const typed = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789 /\'"-.,mcinft') }));
    fc.assert(
      fc.property(typed, fc.constantFrom('mm' as const, 'in' as const), (text, unit) => {
        const mm = parseLength(text, unit);
        expect(mm === null || mm >= 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('turns the lengths of a sentence', () => {
    expect(inUnit('Only 914.4 mm are left.', 'in')).toBe('Only 36 in are left.');
    expect(inUnit('Give a number from 254 to 508 mm.', 'in')).toBe('Give a number from 10 to 20 in.');
    expect(inUnit('Only 914 mm are left.', 'mm')).toBe('Only 914 mm are left.');
  });
});

describe('what may stand in a field', () => {
  // 1500 mm is 59.06 in, 12000 mm is 472.4 in; 20 mm is 0.79 in, 60 mm is 2.36 in; of quarters one lies between 5 and 10 mm.
  it.each([
    [1500, 12000, 'in', '60', '472'],
    [20, 60, 'in', '1', '2 1/4'],
    [914.4, 1828.8, 'in', '36', '72'],
    [5, 10, 'in', '3/16', '3/8'],
    [1500, 12000, 'mm', '1500', '12000'],
  ] as const)('%d to %d mm in %s', (least, most, unit, from, to) => {
    expect(boundsText([least, most], unit)).toEqual([from, to]);
  });

  it('may be typed as it is said, in either unit', () => {
    const range = fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 25, max: 20000 }));
    fc.assert(
      fc.property(range, fc.constantFrom('mm', 'in'), ([least, size], unit) => {
        const most = least + size;
        for (const text of boundsText([least, most], unit)) {
          const mm = parseLength(text, unit)!;
          // A tenth of a millimeter, to which what is typed is read.
          expect(mm).toBeGreaterThanOrEqual(least - 0.05);
          expect(mm).toBeLessThanOrEqual(most + 0.05);
        }
      }),
    );
  });
});

describe('a bare number that is no length allowed', () => {
  it.each([
    ['3.2', [1500, 12000], 'mm', '3.2 m'],
    ['240', [1500, 12000], 'mm', '240 cm'],
    ['12', [1500, 12000], 'in', '12 ft'],
    ['0.5', [1500, 12000], 'mm', null],
    ['3.2 mm', [1500, 12000], 'mm', null],
    ['wide', [1500, 12000], 'mm', null],
  ] as const)('%s is meant in another unit where that is one', (text, bounds, unit, meant) =>
    expect(meantLength(text, bounds, unit)).toBe(meant),
  );

  it('is offered as a length that would be taken', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2e4, noNaN: true }), fc.constantFrom('mm', 'in'), (number, unit) => {
        const meant = meantLength(number.toFixed(1), [1500, 12000], unit);
        if (meant === null) return;
        const mm = parseLength(meant, unit)!;
        expect(mm).toBeGreaterThanOrEqual(1500);
        expect(mm).toBeLessThanOrEqual(12000);
      }),
    );
  });
});
