import { expect, it } from 'vitest';
import { areLampsOff, isLitByDaylight, settingsOfSameLamps } from './lamp-settings';
import type { Setting } from './project';

const setting = (id: string, ceiling: string, under: string, level: number): Setting => ({
  id,
  name: id,
  daylight: { sky: 'overcast', month: 3, day: 21, hour: 12, blind: 1 },
  lamps: {
    ceiling: { level, light: ceiling },
    'under-cabinet': { level: 0, light: under },
    pendant: { level: 0, light: ceiling },
    hood: { level: 0, light: ceiling },
  },
});
const day = setting('day', 'LED-B5', 'LED-B5', 0);
const evening = setting('evening', 'LED-B2', 'LED-B2', 1);
const night = setting('night', 'LED-B2', 'LED-B2', 0.3);
const cool = setting('cool', 'LED-B3', 'LED-B2', 1);
const settings = [day, evening, night, cool];
const along = (one: Setting) => settingsOfSameLamps({ settings }, one).map(({ id }) => id);

it('takes along settings with the same lamps and those whose lamps are off, not those where others are on', () => {
  expect(along(evening)).toEqual(['day', 'evening', 'night']);
  expect(along(cool)).toEqual(['day', 'cool']);
  expect(along(day)).toEqual(['day']);
});

it('calls lamps off only when every group is', () => {
  expect(settings.map(areLampsOff)).toEqual([true, false, false, false]);
});

it('calls it daylight as long as no other light is on', () => {
  expect(settings.map(isLitByDaylight)).toEqual([true, false, false, false]);
});
