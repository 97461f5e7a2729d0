import { afterEach, expect, it, vi } from 'vitest';
import { layingFor } from '../../src/model/laying';
import { laidSample } from '../../src/ui/swatch/laid-sample';
import { createSamplePaints } from '../../src/ui/swatch/sample-paints';
import { terrace } from '../ui/terrace';

// Opening a drawer worked out the colors of every candidate within one render, which took longer than a page may stand
// still. The clock of this test goes on by 5 ms with every finish that is laid.

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

it('lays no finish while the list is drawn, and then a few at a time until all are painted', async () => {
  vi.useFakeTimers();
  const { library } = terrace();
  const byId = new Map(library.map((finish) => [finish.id, finish]));
  const cost = { now: 0, most: 0 };
  const paints = createSamplePaints({
    fetchLaying: async () => ({
      laidSample: (...given) => {
        cost.now += 5;
        vi.setSystemTime(Date.now() + 5);
        return laidSample(...given);
      },
    }),
    bake: () => new Promise(() => {}),
  });
  vi.spyOn(performance, 'now').mockImplementation(() => Date.now());
  await Promise.resolve();
  await Promise.resolve();
  const tiles = library.filter((finish) => finish.class !== 'grout');
  const draw = () =>
    tiles.map((finish) => paints.paintOf(byId, finish, layingFor(finish, 'backsplash', library), false));
  const first = draw();
  expect(cost.now).toBe(0);
  expect(draw()).toEqual(first);

  let told = 0;
  paints.subscribe(() => {
    told++;
    cost.most = Math.max(cost.most, cost.now);
    cost.now = 0;
  });
  vi.runAllTimers();
  expect(told).toBeGreaterThan(tiles.length / 4);
  expect(cost.most).toBeLessThan(30);
  const done = draw();
  const speckled = tiles.findIndex((finish) => finish.components.length > 1);
  expect(done[speckled]!.colors.length).toBeGreaterThan(first[speckled]!.colors.length);
  expect(draw().every((paint, i) => paint === done[i])).toBe(true);
});
