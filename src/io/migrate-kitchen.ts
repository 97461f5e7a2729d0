import { type MeasuresOf2, rowsOfVersion2 } from './rows-of-version-2';

type Fields = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Room sizes version 2 took, mm: beyond them no rows are worked out. */
const ROOM = [2400, 12_000] as const;
/** Counter front for each stool in version 2, mm. */
const SEAT = 600;

/**
 * A kitchen of version 2, the L with an island that was the only layout, as runs along walls; everything stays where it was.
 * What has not the shape of one comes back as it is.
 */
export function kitchenOf2(kitchen: unknown): unknown {
  if (!isRecord(kitchen) || kitchen['layout'] !== 'l-island') return kitchen;
  const { layout: _, name, room, fronts, counter, sink, island, site, ...rest } = kitchen;
  const measures = measuresOf(kitchen);
  if (!measures || !isRecord(counter) || !isRecord(island)) return kitchen;
  const { end, sink: center, dishwasher, cooktop } = rowsOfVersion2(measures);
  const { width, depth } = measures;
  return {
    name,
    region: 'eu',
    room,
    runs: [
      { wall: 'left', from: end, to: depth, tall_from: [], tall_to: [], over: 'none', splash: 'upstand' },
      {
        wall: 'back',
        from: 0,
        to: width,
        tall_from: [],
        tall_to: ['fridge', 'oven'],
        over: 'units',
        splash: 'backsplash',
      },
    ],
    island: {
      ...island,
      joined: null,
      waterfall: 'none',
      stools: stoolsOf(island),
    },
    fronts: { style: fronts, mounting: 'overlay', handle: 'bar' },
    counter: { ...counter, edge: 'eased' },
    sink: { run: 'left', center, bowls: 1, fit: 'inset', tap: 'arch' },
    cooktop: {
      run: 'back',
      center: cooktop?.center ?? width / 2,
      // The glass kept 20 mm clear of its module's ends.
      width: (cooktop?.module ?? 600) - 40,
      kind: 'induction',
      hood: 'canopy',
      oven_below: false,
    },
    dishwasher: dishwasher ? 'hidden' : 'none',
    fridge: 'hidden',
    site,
    open_side: null,
    ...rest,
    objects: false,
  };
}

/** Stools stood along the whole island; without an overhang nobody could sit on them. */
function stoolsOf({ width, seat_overhang }: Fields): number {
  return typeof width === 'number' && seat_overhang !== 0 ? Math.floor(width / SEAT) : 0;
}

/** The measures the rows follow from; null where one is missing, no number or absurd. */
function measuresOf({ room, base, counter, sink }: Fields): MeasuresOf2 | null {
  const { width, depth } = fieldsOf(room);
  const given = [width, depth, fieldsOf(base)['depth'], fieldsOf(counter)['overhang'], fieldsOf(sink)['center']];
  if (!given.every((value): value is number => typeof value === 'number' && Number.isFinite(value))) return null;
  const [wide, deep, baseDepth, overhang, center] = given as [number, number, number, number, number];
  if (![wide, deep].every((value) => value >= ROOM[0] && value <= ROOM[1])) return null;
  if (center < 0 || center > deep) return null;
  return { width: wide, depth: deep, base: baseDepth, overhang, sink: center };
}

const fieldsOf = (value: unknown): Fields => (isRecord(value) ? value : {});
