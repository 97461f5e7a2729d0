import { expect, it } from 'vitest';
import { mirrorKitchen } from '../../src/model/layout/mirror-kitchen';
import { demoProject } from '../io/demo';
import { LAYOUTS } from './layouts';

const { kitchen } = demoProject();

// Worked by hand: a room 4600 mm wide, so a place x mm from the left comes to 4600 - x; places along a side wall stay as they are.
it('exchanges left and right of the demo: runs, island, sink, cooktop, window and door', () => {
  expect(kitchen.room.width).toBe(4600);
  const image = mirrorKitchen(kitchen);
  const { runs, island, sink, cooktop, openings, door } = image;
  expect(runs.map(({ wall }) => wall)).toEqual(['back', 'right']);
  const [back] = runs;
  const was = kitchen.runs.find(({ wall }) => wall === 'back')!;
  expect([back!.from, back!.to]).toEqual([4600 - was.to, 4600 - was.from]);
  expect([back!.tall_from, back!.tall_to]).toEqual([was.tall_to, was.tall_from]);
  expect(island!.x).toBe(4600 - kitchen.island!.x - kitchen.island!.width);
  expect([sink.run, sink.center]).toEqual(['right', kitchen.sink.center]);
  expect([cooktop.run, cooktop.center]).toEqual(['back', 4600 - kitchen.cooktop.center]);
  expect(openings.map(({ wall, center }) => [wall, center])).toEqual(
    kitchen.openings.map(({ center }) => ['right', center]),
  );
  expect(door.from_right).toBe(4600 - kitchen.door.from_right - kitchen.door.width);
});

it.each(Object.entries({ demo: kitchen, ...LAYOUTS }))('done twice leaves %s as it was', (_name, one) => {
  expect(mirrorKitchen(one)).not.toEqual(one);
  expect(mirrorKitchen(mirrorKitchen(one))).toEqual(one);
});
