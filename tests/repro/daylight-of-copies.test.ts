import { expect, it } from 'vitest';
import { daylightOf } from '../../src/kitchen/study/daylight-of';
import type { Kitchen } from '../../src/model/kitchen';
import type { Daylight } from '../../src/model/project';
import { demoProject } from '../io/demo';

// Every message to a worker brings a copy of the kitchen: what was kept by the kitchen's record was never found again.

const { kitchen } = demoProject();
const at = (hour: number): Daylight => ({ sky: 'clear', month: 6, day: 21, hour, blind: 1 });
const turned = (wall: 'left' | 'front'): Kitchen => ({
  ...kitchen,
  openings: kitchen.openings.map((opening) => ({ ...opening, wall })),
});

it('knows the outdoors of a copy of a kitchen, whatever its blinds', () => {
  const before = daylightOf(kitchen, at(15));
  expect(before).not.toBeNull();
  expect(daylightOf(structuredClone(kitchen), { ...at(15), blind: 0.5 })).toBe(before);
  expect(daylightOf(turned('left'), at(15))).toBe(before);
  expect(daylightOf(turned('front'), at(15))).not.toBe(before);
  expect(daylightOf(kitchen, { ...at(15), month: 7 })).not.toBe(before);
  expect(daylightOf({ ...kitchen, site: { ...kitchen.site, bearing_deg: 90 } }, at(15))).not.toBe(before);
  expect(daylightOf(kitchen, at(15))).toBe(before);
});

it('keeps the last ones only', () => {
  const [early, late] = [daylightOf(kitchen, at(9)), daylightOf(kitchen, at(10))];
  for (let i = 0; i < 63; i++) {
    expect(daylightOf(kitchen, at(10))).toBe(late);
    daylightOf(kitchen, at(11 + i / 60));
  }
  expect(daylightOf(kitchen, at(10))).toBe(late);
  expect(daylightOf(kitchen, at(9))).not.toBe(early);
});
