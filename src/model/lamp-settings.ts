import { LAMP_GROUPS, type Project, type Setting } from './project';

/** Whether no lamp of a setting is on. */
export const areLampsOff = (setting: Setting): boolean =>
  LAMP_GROUPS.every((group) => setting.lamps[group].level === 0);

/** Whether all that is on in a setting is the overcast sky's CIE D65, the daylight that white is shown by on a display. */
export const isLitByDaylight = ({ daylight, lamps }: Setting): boolean =>
  (daylight === null || (daylight.sky === 'overcast' && (daylight.light ?? 'D65') === 'D65')) &&
  LAMP_GROUPS.every((group) => lamps[group].level === 0 || lamps[group].light === 'D65');

/**
 * The settings whose lamps change with those of one of them: a lamp bought hangs there by day and in the evening. Settings
 * in which other lamps are on were made to compare lamps and keep theirs; where they are off, nobody meant them.
 */
export const settingsOfSameLamps = ({ settings }: Pick<Project, 'settings'>, one: Setting): readonly Setting[] =>
  settings.filter((other) => areLampsOff(other) || haveSameLamps(other, one));

const haveSameLamps = (a: Setting, b: Setting): boolean =>
  LAMP_GROUPS.every((group) => a.lamps[group].light === b.lamps[group].light);
