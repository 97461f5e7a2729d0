import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Finish } from '../../src/model/project';
import { createFinishPacker, createFinishUnpacker } from '../../src/workers/carry-finishes';

const pool = Array.from({ length: 6 }, (_, i) => ({ id: `F-${i}`, label: `Finish ${i}` }) as unknown as Finish);

it('gives the worker the same lists, and the same object for the same finish', () => {
  fc.assert(
    fc.property(fc.array(fc.subarray(pool), { minLength: 1, maxLength: 8 }), (lists) => {
      const [pack, unpack] = [createFinishPacker(), createFinishUnpacker()];
      let before: readonly Finish[] = [];
      for (const list of lists) {
        const arrived = unpack(structuredClone(pack(list)) as ReturnType<typeof pack>);
        expect(arrived).toEqual(list);
        for (const finish of arrived) {
          const known = before.find(({ id }) => id === finish.id);
          if (known) expect(finish).toBe(known);
        }
        expect(unpack(structuredClone(pack(list)) as ReturnType<typeof pack>)).toBe(arrived);
        before = arrived;
      }
    }),
  );
});

it('sends nothing again that is there', () => {
  const pack = createFinishPacker();
  expect(pack(pool)).toEqual(pool);
  expect(pack(pool)).toBeNull();
  const other = { ...pool[0]!, label: 'Another' };
  expect(pack([other, ...pool.slice(1)])).toEqual([other, 1, 2, 3, 4, 5]);
});
