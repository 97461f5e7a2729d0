import fc from 'fast-check';
import { expect, it } from 'vitest';
import { xyzD65ColumnsFromLabD65 } from '../../src/engine/batch/color-columns';
import { colorRecordColumns } from '../../src/engine/batch/component-columns';
import { ROW } from '../../src/engine/batch/rows';

const number = fc.oneof(
  fc.double({ min: -120, max: 120, noNaN: true }),
  fc.double(),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 5e-324, 1e300, 0, 100),
);
const rows = fc.array(fc.tuple(number, number, number), { maxLength: 20 });

it('every row is finite throughout or marked throughout, whatever the numbers', () => {
  fc.assert(
    fc.property(rows, (triples) => {
      const lab = Float64Array.from(triples.flat());
      const { rho, lrv, names, code } = colorRecordColumns(lab, (row) => (row % 2 ? 'wood' : 'stone'));
      triples.forEach((_, row) => {
        const numbers = [
          ...rho.subarray(81 * row, 81 * row + 81),
          ...names.munsell.subarray(3 * row, 3 * row + 3),
          lrv[row]!,
          names.strength[row]!,
        ];
        const isOk = code[row] === ROW.ok;
        expect(numbers.every((value) => (isOk ? Number.isFinite(value) : Number.isNaN(value)))).toBe(true);
        expect(names.block[row]! > 0).toBe(isOk);
        if (isOk) expect(rho.subarray(81 * row, 81 * row + 81).every((value) => value > 0 && value < 1)).toBe(true);
      });
    }),
  );
});

it('a row does not depend on the rows about it', () => {
  fc.assert(
    fc.property(rows, (triples) => {
      const together = colorRecordColumns(Float64Array.from(triples.flat()), () => 'stone');
      triples.forEach((triple, row) => {
        const alone = colorRecordColumns(Float64Array.from(triple), () => 'stone');
        expect(together.code[row]).toBe(alone.code[0]);
        expect(together.lrv[row]).toEqual(alone.lrv[0]);
        expect(together.rho.slice(81 * row, 81 * row + 81)).toEqual(alone.rho);
        expect(together.names.munsell.slice(3 * row, 3 * row + 3)).toEqual(alone.names.munsell);
      });
    }),
    { numRuns: 40 },
  );
});

it('no column of a conversion holds a number that is not finite in a row called ok', () => {
  fc.assert(
    fc.property(rows, (triples) => {
      const { values, code } = xyzD65ColumnsFromLabD65(Float64Array.from(triples.flat()));
      triples.forEach((_, row) => {
        const isNumber = values.subarray(3 * row, 3 * row + 3).every(Number.isFinite);
        expect(isNumber).toBe(code[row] === ROW.ok);
      });
    }),
  );
});
