import { kitchenOf2 } from './migrate-kitchen';
import { rowOfLamps } from './migrate-lamps';

/**
 * Documents of older versions in the shape of the newest, as far as they have the shape of theirs; anything else comes back
 * as it is, for the schema to tell what is wrong.
 * Version 2 brought windows on any wall, lamps of every kind, and daylight by sky, place and hour; version 3 kitchens of any
 * layout as runs along walls; version 4 copied looks; version 5 the year of the house; version 6 log, notes,
 * frozen revisions, tags of finishes; version 7 prices and thicknesses of finishes; version 8 what is ordered: job, items, samples;
 * version 9 supplier, code, pack and price of an item.
 */
export function migrateProject(value: unknown): unknown {
  const project = documentOfNow(value);
  if (!isRecord(project) || !Array.isArray(project['revisions'])) return project;
  // Frozen copies are documents of a version, too.
  const revisions = project['revisions'].map((revision: unknown) =>
    isRecord(revision) ? { ...revision, document: documentOfNow(revision['document']) } : revision,
  );
  return { ...project, revisions };
}

const documentOfNow = (value: unknown): unknown =>
  toVersion9(toVersion8(toVersion7(toVersion6(toVersion5(toVersion4(toVersion3(toVersion2(value))))))));

function toVersion2(value: unknown): unknown {
  if (!isRecord(value) || value['version'] !== 1) return value;
  const { kitchen, settings, ...rest } = value;
  return {
    ...rest,
    version: 2,
    kitchen: kitchenOf1(kitchen),
    settings: Array.isArray(settings) ? settings.map((setting) => settingOf1(setting, kitchen)) : settings,
  };
}

function toVersion3(value: unknown): unknown {
  if (!isRecord(value) || value['version'] !== 2) return value;
  return { ...value, version: 3, kitchen: kitchenOf2(value['kitchen']) };
}

function toVersion4(value: unknown): unknown {
  return isRecord(value) && value['version'] === 3 ? { ...value, version: 4 } : value;
}

function toVersion5(value: unknown): unknown {
  return isRecord(value) && value['version'] === 4 ? { ...value, version: 5 } : value;
}

function toVersion6(value: unknown): unknown {
  return isRecord(value) && value['version'] === 5 ? { ...value, version: 6 } : value;
}

function toVersion7(value: unknown): unknown {
  return isRecord(value) && value['version'] === 6 ? { ...value, version: 7 } : value;
}

function toVersion8(value: unknown): unknown {
  return isRecord(value) && value['version'] === 7 ? { ...value, version: 8 } : value;
}

function toVersion9(value: unknown): unknown {
  return isRecord(value) && value['version'] === 8 ? { ...value, version: 9 } : value;
}

type Fields = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Version 1 knew no place and no bearing: noon of an equinox in the middle latitudes, whose sky it gave in lux. */
const SITE = {
  latitude_deg: 50,
  longitude_deg: 0,
  utc_offset_h: 0,
  bearing_deg: 0,
  ground: 'unknown',
  facing: 'unknown',
};
const EQUINOX_NOON = { sky: 'overcast', month: 3, day: 21, hour: 12 };

/** One window on the left wall with the sink below it, square ceiling lamps, strips under the wall units. */
function kitchenOf1(kitchen: unknown): unknown {
  if (!isRecord(kitchen)) return kitchen;
  const { window, lamps, sky_lx: _, ...rest } = kitchen;
  if (!isRecord(window) || !isRecord(lamps)) return kitchen;
  const { ceiling, under_cabinet } = lamps;
  if (!isRecord(ceiling) || !isRecord(under_cabinet)) return kitchen;
  const wide = { kind: 'wide' };
  const row = rowOfLamps(rest['room'], rest['counter'], ceiling);
  return {
    ...rest,
    sink: { center: window['center'] },
    site: SITE,
    openings: [{ ...window, id: 'window', kind: 'window', leaves: 2, panes: 2, facing_deg: 0 }],
    fixtures: [
      {
        kind: 'panel',
        id: 'ceiling',
        group: 'ceiling',
        beam: wide,
        count: ceiling['count'],
        width: ceiling['size'],
        length: ceiling['size'],
        lumens_each: ceiling['lumens_each'],
        ...(row && { at: row }),
      },
      {
        kind: 'under-cabinet',
        id: 'under-cabinet',
        group: 'under-cabinet',
        beam: wide,
        run: 'front',
        ...under_cabinet,
      },
    ],
  };
}

/** The sky's level becomes a blind; lamps there were none of take the ceiling's light. */
function settingOf1(setting: unknown, kitchen: unknown): unknown {
  if (!isRecord(setting) || !isRecord(setting['groups'])) return setting;
  const { groups, ...rest } = setting;
  const { sky, ceiling, ...others } = groups as Fields;
  if (!isRecord(sky)) return setting;
  const sky_lx = isRecord(kitchen) ? kitchen['sky_lx'] : undefined;
  const light = sky['light'] === 'D65' ? {} : { light: sky['light'] };
  const isDark = sky['level'] === 0;
  return {
    ...rest,
    daylight: isDark ? null : { ...EQUINOX_NOON, blind: sky['level'], sky_lx, ...light },
    lamps: { ceiling, ...others, pendant: ceiling, hood: ceiling },
  };
}
