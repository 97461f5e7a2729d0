import type { GroupId } from '../../model/project';

/** Words round the picture. */
export const PICTURE = {
  region: 'Picture',
  rows: 'View and light',
  view: 'View',
  viewpoint: 'Viewpoint',
  light: 'Light',
  setting: 'Light setting',
  dim: 'Dim',
  dimTitle: 'Brightness of each light',
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
  contextLost: 'The graphics card let go of the picture. It comes back by itself; the findings stay.',
  noWebGl: 'This browser cannot draw the room, so you see a flat drawing of it. Every finding still holds.',
  flatLabel: 'Flat drawing of the kitchen. Choose a surface to read its color.',
  level: (share: number) => `${Math.round(share * 100)} percent`,
  label: (option: string, setting: string, viewpoint: string) =>
    `The kitchen as ${option}, ${setting.toLowerCase()} light, seen ${viewpoint.toLowerCase()}`,
  labelBeside: (left: string, right: string, setting: string, viewpoint: string) =>
    `Left ${left}, right ${right}, ${setting.toLowerCase()} light, seen ${viewpoint.toLowerCase()}`,
} as const;

/** The name of a setting without what it says after the comma, which may change with the lamps. */
export const settingShortName = (name: string): string => name.split(',')[0] ?? name;
