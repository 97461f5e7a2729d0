import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import type { Kitchen } from '../../src/model/project';

const usual = scene as unknown as Kitchen;
const paths = (kitchen: Kitchen): (string | undefined)[] => kitchenMisfits(kitchen).map((problem) => problem.at?.path);

it('finds nothing wrong with the usual kitchen', () => {
  expect(kitchenMisfits(usual)).toEqual([]);
});

it('names the measure that does not fit', () => {
  expect(paths({ ...usual, room: { ...usual.room, width: 3000 } })).toContain('room.width');
  expect(paths({ ...usual, island: { ...usual.island, y: 300 } })).toEqual(['island.y']);
  expect(paths({ ...usual, tall_height: 1500 })).toEqual(['tall_height']);
  const [window] = usual.openings;
  expect(paths({ ...usual, openings: [{ ...window!, sill: 950 }] })).toEqual(['openings[0].sill']);
  expect(paths({ ...usual, door: { ...usual.door, from_right: 10 } })).toEqual(['door']);
});
