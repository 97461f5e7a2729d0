import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { lengthText, parseLength } from '../../src/model/length-text';
import { footCandles, inUnit } from '../../src/model/unit-words';
import { LENGTH, LUMENS_PER_M, LUX } from '../../src/ui/room/measures';
import { setManner } from '../../src/ui/words/spoken';

afterEach(() => setManner({ words: 'us', unit: 'mm' }));

// 1 ft = 0.3048 m and 1 lb = 0.45359237 kg exactly (NIST SP 811, appendix B.8): 1 fc = 10.76391 lx, 1 lb/ft2 = 4.882428 kg/m2.
describe('measures of a sentence', () => {
  it.each([
    ['The aisle is 1067 mm; 914.4 mm or more.', 'The aisle is 42 in; 36 in or more.'],
    ['from 254 to 508 mm', 'from 10 to 20 in'],
    ['A slab of 3,200 \u00d7 1,600 mm', 'A slab of 126 \u00d7 63 in'],
    ['longer than 381 mm (15 in)', 'longer than 15 in'],
    ['500 lx, 10.7639 lx, 3 lx, 0 lx', '46 fc, 1 fc, 0.3 fc, 0 fc'],
    ['1200 lm/m', '366 lm/ft'],
    ['81 kg/m\u00b2 on 10 m\u00b2', '17 lb/ft\u00b2 on 108 sq ft'],
    ['2.5 m high at 10 m', '8 ft 2 in high at 33 ft'],
    ['400 nm, 6500 K, 12 mm2, ST-30 mm', '400 nm, 6500 K, 12 mm2, ST-30 mm'],
  ])('%s: %s', (metric, us) => {
    expect(inUnit(metric, 'in')).toBe(us);
    expect(inUnit(us, 'in')).toBe(us);
  });

  it('gives a load back in metric where that is chosen', () => {
    expect(inUnit('about 17 lb/ft\u00b2', 'mm')).toBe('about 83 kg/m\u00b2');
  });

  it('has the foot-candle by the foot', () => expect(footCandles(10.763910416709722)).toBeCloseTo(1, 12));
});

describe('a number typed', () => {
  it('stays within 1/32 in through text and back, and then for good', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20_000, noNaN: true }), (mm) => {
        const text = lengthText(mm, 'in');
        const back = parseLength(text, 'in')!;
        // Lengths are kept to a tenth of a millimeter.
        expect(Math.abs(back - mm)).toBeLessThanOrEqual(25.4 / 32 + 0.051);
        expect(lengthText(back, 'in')).toBe(text);
      }),
    );
  });

  it('of lengths, light and strips reads as it is shown in either unit, with a comma or a point', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(LENGTH, LUX, LUMENS_PER_M),
        fc.constantFrom('mm', 'in'),
        fc.integer({ min: 1, max: 5000 }),
        (measure, unit, tenths) => {
          setManner({ words: 'us', unit });
          const text = measure.text(tenths / 10);
          const value = measure.read(text)!;
          expect(measure.text(value)).toBe(text);
          expect(measure.read(text.replace('.', ','))).toBe(value);
        },
      ),
    );
  });

  it('is a length in the other unit, too, where it says so', () => {
    setManner({ words: 'us', unit: 'in' });
    expect([LENGTH.read('36 1/2'), LENGTH.read('914 mm'), LENGTH.unit()]).toEqual([927.1, 914, 'in']);
    setManner({ words: 'us', unit: 'mm' });
    expect([LENGTH.read('36 1/2"'), LENGTH.read('91,4 cm'), LENGTH.read('wide')]).toEqual([927.1, 914, null]);
  });
});
