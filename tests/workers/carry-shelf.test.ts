import { expect, it } from 'vitest';
import type { Library } from '../../src/model/library';
import type { Shelf } from '../../src/model/offered-finishes';
import type { Finish } from '../../src/model/project';
import { createShelfPacker, createShelfUnpacker } from '../../src/workers/carry-shelf';
import type { LibraryFacts } from '../../src/workers/prepare-library';
import { ShelfDesk } from '../../src/workers/shelf-desk';
import { terrace } from '../ui/terrace';

const [first] = terrace().library;
const finish = (id: string, l = 50): Finish => ({
  ...first!,
  id,
  components: [{ ...first!.components[0]!, share: 1, color: lab(l) }],
  pattern: { kind: 'plain' },
});
const lab = (l: number) => ({ kind: 'lab', lab: [l, 0, 5], illuminant: 'D65', observer_deg: 10 }) as const;
const library = (id: string, finishes: readonly Finish[]): Library => ({
  type: 'upstand-library',
  version: 2,
  id,
  name: id,
  note: '',
  finishes,
});
const many = (letter: string, count = 20) => Array.from({ length: count }, (_, i) => finish(`${letter}-${i}`, 30 + i));
const shelf = (...libraries: Library[]): Shelf => ({ libraries, putAside: [] });

/** As a message crosses over: everything in it is a copy. */
function crossing() {
  const [pack, unpack] = [createShelfPacker(), createShelfUnpacker()];
  return (one: Shelf) => {
    const sent = structuredClone(pack(one));
    const places = sent.libraries.flatMap(({ finishes }) => finishes ?? []);
    return { there: unpack(sent), sent: places.filter((place) => typeof place !== 'number').length };
  };
}

it('sends of libraries only what is new, and what did not change stays the same object at the other end', () => {
  const cross = crossing();
  const [a, b] = [library('a', many('A')), library('b', many('B'))];
  const one = cross(shelf(a, b));
  expect(one.sent).toBe(40);
  expect(one.there).toEqual(shelf(a, b));

  const changed = { ...a, finishes: a.finishes.map((its, i) => (i === 3 ? finish('A-3', 90) : its)) };
  const two = cross(shelf(changed, b));
  expect(two.sent).toBe(1);
  expect(two.there).toEqual(shelf(changed, b));
  expect(two.there.libraries[1]).toBe(one.there.libraries[1]);
  expect(two.there.libraries[0]!.finishes[4]).toBe(one.there.libraries[0]!.finishes[4]);

  // A library that went and came back is sent anew: nobody at the other end has it any more.
  expect(cross(shelf(b)).there).toEqual(shelf(b));
  const back = cross({ libraries: [b, a], putAside: ['b'] });
  expect(back.sent).toBe(20);
  expect(back.there).toEqual({ libraries: [b, a], putAside: ['b'] });
});

it('prepares at a change only what is new, and says of which shelf it tells', () => {
  const cross = crossing();
  const told: (LibraryFacts & { readonly shelf: number })[] = [];
  const desk = new ShelfDesk((facts, number) => told.push({ ...facts, shelf: number }));
  const prepared = () => {
    while (desk.prepare());
    return told.splice(0).map(({ shelf: number, library: id, finishes }) => [number, id, ...finishes]);
  };
  const a = library('a', many('A', 3));
  desk.put(cross(shelf(a)).there, 1);
  expect(prepared()).toEqual([[1, 'a', 'A-0', 'A-1', 'A-2']]);
  const changed = { ...a, finishes: [a.finishes[0]!, finish('A-1', 90), a.finishes[2]!, finish('A-9', 10)] };
  const b = library('b', many('B', 1));
  desk.put(cross(shelf(changed, b)).there, 2);
  expect(prepared()).toEqual([
    [2, 'a', 'A-1', 'A-9'],
    [2, 'b', 'B-0'],
  ]);
  desk.put(cross(shelf(changed, b)).there, 3);
  expect(prepared()).toEqual([]);
});
