import type { LampGroup } from '../../model/fixture';
import { ledOfLight, OTHER_LAMPS, type RenderingClass } from '../../model/lamp-kinds';
import { LAMP_GROUPS, type Lamp, type Setting } from '../../model/project';
import { lightName } from './engine-words';
import { listed } from './numbers';
import { PICTURE, settingShortName } from './picture';
import { retold, spoken } from './spoken';

/** Words about lamps. */
export const LAMPS = spoken({
  titleOff: 'Lamps off',
  color: 'Lamp color',
  colorThere: 'Color of these lamps',
  panel: 'Lamp details',
  kind: 'Kind',
  led: 'LED',
  rendering: 'Color rendering',
  classes: { 80: 'Usual (Ra 80)', 90: 'Good (Ra 90)', 97: 'Best (Ra 97)' } satisfies Record<RenderingClass, string>,
  open: 'Open a lamp file',
  openTitle: "A lamp's spectrum as CSV, CGATS or TM-27",
  where: 'Where',
  everywhere: 'All lamps',
  off: (group: LampGroup, elsewhere: readonly string[]) =>
    `The lamps are off in this setting. Turn on ${[PICTURE.groups[group], ...elsewhere.map((name) => `go to ${name}`)].join(' or ')} to see them.`,
  othersKeep: (settings: readonly string[]) =>
    `${listed(settings)} ${settings.length === 1 ? 'has' : 'have'} other lamps and ${settings.length === 1 ? 'keeps' : 'keep'} them.`,
  figures: 'Figures',
  inGroups: (groups: readonly LampGroup[], lamp: string): string =>
    `${groups.map((group) => PICTURE.groups[group]).join(', ')}: ${lamp}`,
  temperature: 'Color temperature',
  temperatureMeans: 'low is warm, high is cool',
  duv: 'Duv',
  duvMeans: 'tint of the white, green (+) or pink (\u2212)',
  ra: 'Ra',
  raMeans: 'how true colors look, 100 is best',
  r9: 'R9',
  r9Means: 'the same for strong red',
  none: 'none',
  mixed: 'Mixed lamps',
  kelvin: (k: number) => `${k} K`,
  kelvinLong: (k: number, words: string) => `${k} kelvin, ${words}`,
  notLed: (lamp: string) => `For LED lamps; these are: ${lamp}. Move it to use LED lamps.`,
  ledLamp: (k: number, ra: number) => `${k} K, Ra ${ra}`,
  standsFor: (light: string, box: string) =>
    `The box says ${box}; these are the figures of CIE ${light}, which stands for such lamps. Each lamp differs a little.`,
  modeled: 'Figures of a modeled lamp with the numbers on the box. Each lamp differs a little.',
  standard: (light: string) => `Figures of CIE ${light}, which stands for lamps of this kind.`,
  of: (kelvin: string) => `lamps of ${kelvin}`,
  those: (names: string) => `lamps: ${names}`,
  label: (lamp: string) => `lamps: ${lamp}`,
  added: (count: number, first: string) =>
    `The file has ${count} lamps. "${first}" is lit now; the others are under Kind.`,
  addedRemedy: 'Choose another one there if that is not the one you meant.',
  ofFile: (file: string, name: string) => `${file}: ${name}`,
  from: (file: string) => `Read from ${file}.`,
  tooLarge: (megabytes: number) => `The file has ${megabytes} MB; a lamp's spectrum has far less.`,
  tooLargeRemedy: "Choose a file with a lamp's spectrum: CSV, CGATS or TM-27.",
  tooMany: (count: number, most: number) => `The file has ${count} lamps; up to ${most} are taken at once.`,
  tooManyRemedy: 'Choose a file with only the lamps you need.',
} as const);

/** A lamp in a few words: what the box says, or its name. */
export function lampName(light: string, lamps: readonly Lamp[] = []): string {
  const own = lamps.find(({ id }) => id === light);
  if (own) return own.label;
  const led = ledOfLight(light);
  if (led) return LAMPS.ledLamp(led.nominal_k, led.ra);
  const other = OTHER_LAMPS.find((one) => one.light === light);
  return other ? retold(other.words) : lightName(light);
}

/** A setting by name and by the lamps that are on in it, as they are now. */
export function settingWithLamps({ name, lamps: groups }: Setting, lamps: readonly Lamp[] = []): string {
  const lights = LAMP_GROUPS.map((group) => groups[group])
    .filter(({ level }) => level > 0)
    .map(({ light }) => light);
  const short = settingShortName(name);
  if (lights.length === 0) return short;
  const leds = lights.map((light) => ledOfLight(light));
  if (leds.some((led) => led === null))
    return `${short}, ${LAMPS.those(listed(unique(lights.map((light) => lampName(light, lamps)))))}`;
  const names = leds.map((led) =>
    led?.ra === 80 ? LAMPS.kelvin(led.nominal_k) : LAMPS.ledLamp(led!.nominal_k, led!.ra),
  );
  return `${short}, ${LAMPS.of(listed(unique(names)))}`;
}

const unique = (names: readonly string[]): readonly string[] => [...new Set(names)];
