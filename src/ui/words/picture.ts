import type { GroupId } from '../../model/project';
import { spoken } from './spoken';

/** Words round the picture. */
export const PICTURE = spoken({
  region: 'Picture',
  rows: 'View and light',
  view: 'View',
  viewpoint: 'Viewpoint',
  light: 'Light',
  setting: 'Light setting',
  settingHint: 'Press and hold one to see it for as long as you hold',
  lightOf: (setting: string) => `Light: ${setting}`,
  dimTitle: 'Brightness of each light',
  warm: 'turns warmer when dimmed',
  warmShort: 'warmer',
  daylight: 'Daylight',
  blind: 'Daylight past the blind',
  roomKitchen: 'Kitchen',
  roomDaylight: 'Sun and windows',
  roomLamps: 'Lamps',
  editSettings: 'Keep this light',
  settingName: 'Name of the setting',
  copySetting: 'Keep as a copy',
  renameSetting: 'Rename',
  removeSetting: 'Remove',
  copySettingHint: 'A copy keeps this light under a new name, to be changed on its own.',
  mostSettings: (most: number) => `A project keeps up to ${most} settings. Remove one to add another.`,
  sameName: 'There is a setting of that name. Give another one.',
  noName: 'Give it a name.',
  groups: {
    sky: 'Sky',
    sun: 'Sun',
    ground: 'Ground outside',
    facing: 'Wall across the way',
    ceiling: 'Ceiling',
    'under-cabinet': 'Under-cabinet',
    pendant: 'Pendant',
    hood: 'Hood',
  } satisfies Record<GroupId, string>,
  working: 'Working out the light',
  loading: 'Fetching the picture',
  dark: {
    'nothing-on': 'No light is on in this setting. Turn on daylight or a lamp under Light.',
    'no-daylight':
      'No light is on in this setting: no daylight comes in now. Turn on a lamp under Light, or change hour, blind or windows under Sun and windows.',
  },
  contextLost: 'The graphics card let go of the picture. It comes back by itself; the findings stay.',
  noWebGl: 'This browser cannot draw the room, so you see a flat drawing of it. Every finding still holds.',
  flatLabel: (wall: string) => `Flat drawing of the ${wall}. Choose a surface to read its color.`,
  flatWall: 'Wall to see',
  flatOthers: 'Surfaces that do not show on this wall',
  level: (share: number) => `${Math.round(share * 100)} percent`,
  label: (option: string, setting: string, viewpoint: string) =>
    `The kitchen as ${option}, ${setting.toLowerCase()} light, seen ${viewpoint.toLowerCase()}`,
  labelBeside: (left: string, right: string, setting: string, viewpoint: string) =>
    `Left ${left}, right ${right}, ${setting.toLowerCase()} light, seen ${viewpoint.toLowerCase()}`,
} as const);

/** Words of the reading mark that keys move over the picture. */
export const AIM = spoken({
  start: 'Reading mark in the middle of the picture. Arrow keys move it, Enter reads there, Esc takes it away.',
  nothing: 'Nothing with a finish',
  read: (surface: string, lux: string) => `${surface}: ${lux} lx`,
} as const);

/** The name of a setting without what it says after the comma, which may change with the lamps. */
export const settingShortName = (name: string): string => name.split(',')[0] ?? name;

/** Names for a row of settings: short, and in full where the short ones would be the same. */
export function settingNames(settings: readonly { readonly name: string }[]): readonly string[] {
  const short = settings.map(({ name }) => settingShortName(name));
  return settings.map(({ name }, i) => (short.filter((one) => one === short[i]).length > 1 ? name : short[i]!));
}
