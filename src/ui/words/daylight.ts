import type { OutdoorMaterial, SkyKind, SunPosition } from '../../engine/daylight/types';
import type { Opening, Wall } from '../../model/kitchen';
import type { Daylight } from '../../model/project';
import { brief, integer } from './numbers';
import { localeNow, spoken } from './spoken';

const DIRECTIONS = spoken([
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const);

/** The eighth of the compass a bearing lies in. */
export const directionWord = (bearing_deg: number): string => DIRECTIONS[Math.round((bearing_deg % 360) / 45) % 8]!;

const degrees = (value: number): string => `${value} ${Math.abs(value) === 1 ? 'degree' : 'degrees'}`;

/** Words of the panel for daylight. */
export const DAYLIGHT = spoken({
  title: 'Sun and windows',
  close: 'Close',
  plan: 'Plan of the kitchen from above, back wall at the top',
  bearing: 'Bearing of the back wall',
  faces: (bearing_deg: number) =>
    `Back wall faces ${directionWord(bearing_deg)} (${degrees(Math.round(bearing_deg) % 360)})`,
  north: 'N',
  turnHint: 'Drag the N round the plan, or press arrow keys on it.',
  walls: { left: 'Left wall', back: 'Back wall', right: 'Right wall', front: 'Door wall' } satisfies Record<
    Wall,
    string
  >,
  off: 'This setting has no daylight.',
  turnOn: 'Turn daylight on',
  hour: 'Hour',
  month: 'Month',
  day: 'Day',
  months: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  blind: 'Daylight the blind lets through',
  sunOnFloor: 'sun on the floor',
  sunOnFloorNote: 'Dashed: where the sun falls on the floor, without the shadows of furniture.',
  sky: 'Sky',
  skies: { overcast: 'Overcast', clear: 'Clear' } satisfies Record<SkyKind, string>,
  skyLevel: 'Sky level, if you know it',
  skyLevelNote: 'Level ground in the open under the overcast sky. Left empty, it follows from hour and date.',
  levelGiven: 'The level is given, so date and hour change only where the sun stands.',
  ground: 'Ground outside',
  facing: 'Wall across the way',
  facingUnused: 'Wall across the way (not used)',
  facingUnusedNote: 'No window has a wall across the way: say under Windows how high it stands.',
  materials: {
    unknown: 'Not known (gray)',
    paving: 'Paving',
    greenery: 'Greenery',
    brick: 'Brick',
    snow: 'Snow',
    soil: 'Soil',
    'light-render': 'Light render',
  } satisfies Record<OutdoorMaterial, string>,
  site: 'Place',
  outside: 'Outside',
  latitude: 'Latitude, north +',
  longitude: 'Longitude, east +',
  clock: 'Clock, hours from UTC',
  azimuth: 'Sun direction',
  elevation: 'Sun height',
  skyLux: 'Sky outdoors',
  sunLux: 'Sun outdoors',
  azimuthValue: (azimuth_deg: number) => `${integer(azimuth_deg)}° from north`,
  elevationValue: (elevation_deg: number) => `${integer(elevation_deg)}°`,
  lx: (lx: number) => `${integer(roundLux(lx))} lx`,
} as const);

/** Light outdoors varies by more than a hundredth from minute to minute. */
const roundLux = (lx: number): number => (lx > 0 ? Number(lx.toPrecision(3)) : 0);

/** Where the sun stands, in words. */
export function sunWords({ azimuth_deg, elevation_deg }: SunPosition, sky: SkyKind): string {
  if (elevation_deg <= 0) return 'Sun below the horizon';
  const place = `Sun in the ${directionWord(azimuth_deg)}, ${degrees(Math.round(elevation_deg))} high`;
  return sky === 'overcast' ? `${place}, behind cloud` : place;
}

/** An hour as clocks show it, 0-24 in quarters. */
export function clockWords(hour: number): string {
  const whole = Math.floor(hour + 1e-6);
  const minutes = Math.round((hour - whole) * 60);
  const half = whole % 24 < 12 ? 'am' : 'pm';
  return `${whole % 12 === 0 ? 12 : whole % 12}:${String(minutes).padStart(2, '0')} ${half}`;
}

/** The daylight of a setting in a few words, in two parts that may stand below each other. */
export function lightCaption(daylight: Daylight | null): readonly string[] {
  if (!daylight) return ['No daylight'];
  const { sky, month, day, hour } = daylight;
  const time = hour === 12 ? 'noon' : clockWords(hour);
  const date = [DAYLIGHT.months[month - 1]!.slice(0, 3), day];
  return [`${DAYLIGHT.skies[sky]},`, `${(localeNow() === 'en-GB' ? date.reverse() : date).join(' ')}, ${time}`];
}

/** How far above one's eyes something ends that stands 10 m away, m: whole meters, or halves where it is low. */
function heightAt10_m(above_deg: number): number {
  const high = 10 * Math.tan((above_deg * Math.PI) / 180);
  return high < 3 ? Math.round(2 * high) / 2 : Math.round(high);
}

/** Words of the list of windows. */
export const WINDOWS = spoken({
  title: 'Windows',
  add: 'Add a window',
  remove: 'Remove this window',
  none: 'The room has no window.',
  noRoom: 'No wall has room for one more window.',
  kinds: { window: 'Window', 'glazed-door': 'Glazed door' },
  kind: 'Kind',
  wall: 'Wall',
  width: 'Width',
  height: 'Height',
  sill: 'Sill above the floor',
  reveal: 'Depth to the glass',
  leaves: 'Leaves',
  panes: 'Panes of glass',
  facing: 'How high the wall across the way stands',
  facingMeans: (facing_deg: number) =>
    facing_deg === 0
      ? '0: nothing stands across the way.'
      : `${degrees(facing_deg)} above the horizon: about ${brief(heightAt10_m(facing_deg))} m high at 10 m.`,
  moved: (wall: string) => `It did not fit where it was, so it is on the ${wall} now.`,
  corner: { left: 'door wall', right: 'door wall', back: 'left wall', front: 'left wall' } satisfies Record<
    Wall,
    string
  >,
  centerFrom: (wall: string) => `Middle, from the ${wall}`,
  name: (kind: Opening['kind'], number: number, wall: Wall, width: number, height: number) =>
    `${WINDOWS.kinds[kind]} ${number}: ${DAYLIGHT.walls[wall].toLowerCase()}, ${width} × ${height} mm`,
} as const);

/** Words of number fields. */
export const FIELD = spoken({
  notNumber: 'This is not a number. Type digits, such as 1200.',
  notLength: {
    mm: 'This is no length. Type it as 1200 or 47 1/4 in.',
    in: 'This is no length. Type it as 47 1/4, 47 1/4" or in millimeters with mm.',
  },
  lengthUnits: { mm: 'mm', in: 'in' },
  withUnit: (label: string, unit: string) => `${label}, ${unit}`,
  lm: 'lm',
  lx: 'lx',
  fc: 'fc',
  deg: '°',
  facingDeg: 'degrees above the horizon',
  h: 'h',
  lmPerM: 'lm/m',
  lmPerFt: 'lm/ft',
} as const);
