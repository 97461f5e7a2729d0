import { surfaceName } from '../../engine/judge/surface-words';
import type { GroupId } from '../../model/project';

const GROUP_NAMES: Readonly<Record<GroupId, string>> = {
  sky: 'the sky',
  sun: 'the sun',
  ground: 'the ground outside',
  facing: 'the wall across the way',
  ceiling: 'ceiling lamps',
  'under-cabinet': 'lamps under cabinets',
  pendant: 'pendants',
  hood: 'hood lamps',
};

/** "ceiling lamps", "off the floor": where a part of the light comes from. Hood and ceiling name a lamp and a surface, so the kind decides. */
export const sourceName = (source: string, kind: 'direct' | 'bounce'): string =>
  kind === 'direct' ? (GROUP_NAMES[source as GroupId] ?? source) : `off the ${surfaceName(source).toLowerCase()}`;
