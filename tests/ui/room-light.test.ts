import fc from 'fast-check';
import { expect, it } from 'vitest';
import { darknessOf } from '../../src/app/dark-room';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Opening } from '../../src/model/kitchen';
import { LAMP_GROUPS } from '../../src/model/project';
import { tintPartsSentence } from '../../src/ui/reading/light-words';
import { standSentence } from '../../src/ui/reading/stand-words';
import { bearingOfNorth, towards, wallBearing } from '../../src/ui/room/compass';
import { problemAtField } from '../../src/ui/room/field-problem';
import { movedLamp, newFixture, type PlacedFixture, withCount } from '../../src/ui/room/new-fixture';
import { fittedOpening, newOpening } from '../../src/ui/room/new-opening';
import { sunBeams } from '../../src/ui/room/sun-beams';
import { clockWords, DAYLIGHT, directionWord, lightCaption, sunWords, WINDOWS } from '../../src/ui/words/daylight';
import { settingNames } from '../../src/ui/words/picture';
import { terrace } from './terrace';

it('turns the plan so that what one drags north to is the bearing', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 359 }), (bearing) => {
      expect(bearingOfNorth(towards(0, bearing))).toBe(bearing);
    }),
  );
  // Seen with the back wall to the north, east is to the right.
  expect(towards(90, 0)[0]).toBeCloseTo(1);
  expect(wallBearing('left', 330)).toBe(240);
});

it('says directions, clocks and the sun in plain words', () => {
  expect([0, 44, 90, 202, 315, 350].map(directionWord)).toEqual([
    'north',
    'north-east',
    'east',
    'south',
    'north-west',
    'north',
  ]);
  expect(DAYLIGHT.faces(315)).toBe('Back wall faces north-west (315 degrees)');
  expect([0, 0.25, 12, 18.5, 24].map(clockWords)).toEqual(['12:00 am', '12:15 am', '12:00 pm', '6:30 pm', '12:00 am']);
  expect(sunWords({ azimuth_deg: 225, elevation_deg: 24.2 }, 'clear')).toBe('Sun in the south-west, 24 degrees high');
  expect(sunWords({ azimuth_deg: 225, elevation_deg: 24.2 }, 'overcast')).toMatch(/behind cloud$/);
  expect(sunWords({ azimuth_deg: 10, elevation_deg: -3 }, 'clear')).toBe('Sun below the horizon');
});

const window: Opening = {
  id: 'w',
  kind: 'window',
  wall: 'back',
  center: 2000,
  width: 1000,
  sill: 1000,
  height: 1000,
  reveal: 150,
  leaves: 1,
  panes: 2,
  facing_deg: 0,
};
const room = { width: 4000, depth: 4000 };

it('casts the sun as far as its height and the head of the window say (closed form: 45 degrees, as far as high)', () => {
  // Back wall faces south, the sun stands square before it.
  const [beam] = sunBeams([window], room, 180, { azimuth_deg: 180, elevation_deg: 45 });
  const ys = beam!.floor.map(([, y]) => Math.round(y));
  expect(ys).toEqual([1000, 1000, 2000, 2000]);
  expect(beam!.floor.map(([x]) => Math.round(x))).toEqual([1500, 2500, 2500, 1500]);
});

it('lets no sun in from behind the wall, under the horizon or below the top of the wall across the way', () => {
  const beams = (azimuth_deg: number, elevation_deg: number, facing_deg = 0) =>
    sunBeams([{ ...window, facing_deg }], room, 180, { azimuth_deg, elevation_deg }).length;
  expect([beams(180, 30), beams(0, 30), beams(180, -1), beams(180, 30, 40)]).toEqual([1, 0, 0, 0]);
});

it('puts a new window where the kitchen still fits, and finds no room when walls are full', () => {
  let { kitchen } = terrace();
  let added = 0;
  for (let made = newOpening(kitchen); made && added < 12; made = newOpening(kitchen)) {
    kitchen = { ...kitchen, openings: [...kitchen.openings, made] };
    added++;
    expect(checkKitchen(kitchen, 'kitchen')).toEqual([]);
  }
  expect(added).toBeGreaterThan(0);
  expect(newOpening(kitchen)).toBeNull();
});

it('moves a glazed door to where it fits when a window behind units becomes one', () => {
  const { kitchen } = terrace();
  const [first] = kitchen.openings;
  const door = { ...first!, kind: 'glazed-door', sill: 0, height: 2100 } as const;
  const others = kitchen.openings.slice(1);
  expect(checkKitchen({ ...kitchen, openings: [door, ...others] }, 'kitchen')).not.toEqual([]);
  const moved = fittedOpening(kitchen, door, true);
  expect(checkKitchen({ ...kitchen, openings: [moved, ...others] }, 'kitchen')).toEqual([]);
  // A window that fits stays where it is; one larger than every wall is handed back as it is.
  expect(fittedOpening(kitchen, first!, true)).toBe(first);
  expect(fittedOpening(kitchen, { ...first!, width: 9000 }, true)).toMatchObject({ wall: 'left', width: 9000 });
});

it('says the daylight of a setting in a few words, and an angle as a height', () => {
  const may = { sky: 'clear', month: 5, day: 10, hour: 15.5, blind: 1 } as const;
  expect(lightCaption(may).join(' ')).toBe('Clear, May 10, 3:30 pm');
  expect(lightCaption({ ...may, sky: 'overcast', month: 10, day: 21, hour: 12 }).join(' ')).toBe(
    'Overcast, Oct 21, noon',
  );
  expect(lightCaption(null)).toEqual(['No daylight']);
  // 10 tan 35 degrees = 7.0; 10 tan 5 degrees = 0.87 (closed form).
  expect(WINDOWS.facingMeans(35)).toBe('35 degrees above the horizon: about 7 m high at 10 m.');
  expect(WINDOWS.facingMeans(5)).toContain('about 1 m high');
});

it('keeps a place for each lamp when their number changes', () => {
  const lamps = {
    ...newFixture('downlight', 'd'),
    count: 2,
    at: [
      [500, 500],
      [900, 500],
    ],
  } as PlacedFixture;
  expect((withCount(lamps, 3) as PlacedFixture).at).toHaveLength(3);
  expect((withCount(lamps, 1) as PlacedFixture).at).toEqual([[500, 500]]);
  expect((movedLamp(lamps, 1, [903.4, 512]) as PlacedFixture).at![1]).toEqual([900, 510]);
});

it('says what is wrong in the words of the field', () => {
  const at = { path: 'kitchen.openings[0].width' };
  const text = `${at.path} is 90000, outside 200 to 6000 mm.`;
  const remedy = 'Give a number from 200 to 6000 mm.';
  expect(problemAtField({ code: 'out-of-range', text, at, remedy }, 'Width')).toBe(
    `Width is 90000, outside 200 to 6000 mm. ${remedy}`,
  );
});

it('tells settings apart that begin alike', () => {
  const names = ['Day, overcast', 'Clear, morning', 'Clear, evening sun'].map((name) => ({ name }));
  expect(settingNames(names)).toEqual(['Day', 'Clear, morning', 'Clear, evening sun']);
});

it('says which light carries the tint of a point', () => {
  const part = (from: Parameters<typeof tintPartsSentence>[0][number]['from'], tint_share: number) => ({
    from,
    lux: 1,
    share: 0.5,
    tint_share,
  });
  const parts = [part({ kind: 'direct', group: 'sky' }, 0.25), part({ kind: 'bounce', surface: 'floor' }, 0.33)];
  expect(tintPartsSentence(parts)).toBe(
    'About a third of this tint comes from the floor and about a quarter straight from the sky light.',
  );
  expect(tintPartsSentence([part({ kind: 'direct', group: 'sky' }, 0)])).toBeNull();
});

it('says what standing up does to a sample', () => {
  const place = (lux: number, a: number, b: number) => ({
    lux,
    place_white_lab_d65: [100, 0, 0] as const,
    components: [],
    average_lab_d65: [80, a, b] as const,
    parts: [],
  });
  const stand = (upright: ReturnType<typeof place>, between_de00: number) =>
    standSentence({ finish: 'f', flat: place(400, 0, 0), upright, between_de00 });
  expect(stand(place(160, 0, 5), 4.1)).toBe(
    'Upright it reads darker and yellower: 4.1 dE00 in color, with 40% of the light. Judge samples the way they will stand.',
  );
  expect(stand(place(400, 0, 0.2), 0.2)).toMatch(/the same to most eyes/);
});

it('knows a room in which nothing shines, and why', () => {
  const { kitchen, settings } = terrace();
  const evening = settings.find(({ id }) => id === 'evening')!;
  const off = { ...evening.lamps };
  for (const group of LAMP_GROUPS) off[group] = { ...off[group], level: 0 };
  const dark = { ...evening, lamps: off };
  const noon = { sky: 'clear', month: 6, day: 21, hour: 12, blind: 1 } as const;
  expect(darknessOf(kitchen, evening)).toBeNull();
  expect(darknessOf(kitchen, dark)).toBe('nothing-on');
  expect(darknessOf(kitchen, { ...dark, daylight: noon })).toBeNull();
  expect(darknessOf(kitchen, { ...dark, daylight: { ...noon, hour: 1 } })).toBe('no-daylight');
  expect(darknessOf(kitchen, { ...dark, daylight: { ...noon, blind: 0 } })).toBe('no-daylight');
  expect(darknessOf({ ...kitchen, openings: [] }, { ...dark, daylight: noon })).toBe('no-daylight');
});
