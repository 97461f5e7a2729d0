import { GROUPS, type GroupId, type Project, type Setting } from './project';

/** The groups of lamps; the sky is none. */
export type LampGroup = Exclude<GroupId, 'sky'>;
export const LAMP_GROUPS: readonly LampGroup[] = ['ceiling', 'under-cabinet'];

/** Whether no lamp of a setting is on. */
export const areLampsOff = (setting: Setting): boolean =>
  LAMP_GROUPS.every((group) => setting.groups[group].level === 0);

/** Whether all that is on in a setting is CIE D65, the daylight that white is shown by on a display. */
export const isLitByDaylight = ({ groups }: Setting): boolean =>
  GROUPS.every((group) => groups[group].level === 0 || groups[group].light === 'D65');

/**
 * The settings whose lamps change with those of one of them: a lamp bought hangs there by day and in the evening. Settings
 * in which other lamps are on were made to compare lamps and keep theirs; where they are off, nobody meant them.
 */
export const settingsOfSameLamps = ({ settings }: Pick<Project, 'settings'>, one: Setting): readonly Setting[] =>
  settings.filter((other) => areLampsOff(other) || haveSameLamps(other, one));

const haveSameLamps = (a: Setting, b: Setting): boolean =>
  LAMP_GROUPS.every((group) => a.groups[group].light === b.groups[group].light);
