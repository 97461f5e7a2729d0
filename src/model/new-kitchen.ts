import type { Kitchen, KitchenSite, Region } from './kitchen';
import { fitOpenings } from './new-kitchen/fit-openings';
import { fitToRoom } from './new-kitchen/fit-to-room';
import { kitchenDefaults } from './new-kitchen/kitchen-defaults';
import { layOut, usualWindow } from './new-kitchen/lay-out';
import type { LayoutId } from './new-kitchen/layout-drafts';
import type { Refitted } from './new-kitchen/losses';
import { usualFixtures } from './new-kitchen/usual-fixtures';

/** Nothing is known of place and surroundings: the middle latitudes, the back wall to the north. */
const UNKNOWN_SITE: KitchenSite = {
  latitude_deg: 50,
  longitude_deg: 0,
  utc_offset_h: 0,
  bearing_deg: 0,
  ground: 'unknown',
  facing: 'unknown',
};

/**
 * A usual kitchen of a layout in a room (mm), with sizes of the region, one window and lamps; it passes `checkKitchen`.
 * Null when the layout does not go into the room.
 */
export function kitchenFor(layout: LayoutId, region: Region, room: Kitchen['room']): Kitchen | null {
  const { room_height: _, cooktop, sink, door, ...sizes } = kitchenDefaults(region);
  const like: Kitchen = {
    name: '',
    ...sizes,
    room,
    runs: [],
    island: null,
    sink: { run: 'back', center: 0, ...sink },
    cooktop: { run: 'back', center: 0, oven_below: false, ...cooktop },
    site: UNKNOWN_SITE,
    openings: [],
    open_side: null,
    door: { ...door, from_right: 200 },
    fixtures: [],
    objects: true,
  };
  const kitchen = layOut(layout, like);
  if (!kitchen) return null;
  const named = { ...kitchen, name: NAMES[layout] };
  const lit = fitOpenings(named, [usualWindow(named)]);
  return { ...lit, fixtures: usualFixtures(lit) };
}

/** Names new kitchens get. */
const NAMES: { readonly [L in LayoutId]: string } = {
  'one-wall': 'Kitchen along one wall',
  galley: 'Galley kitchen',
  l: 'L kitchen',
  u: 'U kitchen',
  'l-island': 'L kitchen with island',
  peninsula: 'Kitchen with peninsula',
};

/** Rooms (mm) that suit a layout, for a start: common practice, no source. */
export function usualRoom(layout: LayoutId, region: Region): Kitchen['room'] {
  const height = kitchenDefaults(region).room_height;
  const [width, depth] = {
    'one-wall': [4200, 3200],
    galley: [2600, 4200],
    l: [3800, 3600],
    u: [3800, 3600],
    'l-island': [4800, 4400],
    peninsula: [4400, 4800],
  }[layout] as [number, number];
  const inches = (mm: number): number => Math.round(mm / 304.8) * 304.8;
  return region === 'us' ? { width: inches(width), depth: inches(depth), height } : { width, depth, height };
}

/**
 * The kitchen with the usual sizes and modules of another region, in the same room; everything else is kept as far as it
 * fits, and what does not is told. Null when nothing does.
 */
export function changeRegion(kitchen: Kitchen, region: Region): Refitted | null {
  if (region === kitchen.region) return { kitchen, losses: [] };
  const {
    room_height: _,
    fronts: _fronts,
    cooktop,
    sink: _sink,
    door: _door,
    fridge: _fridge,
    dishwasher: _dishwasher,
    ...sizes
  } = kitchenDefaults(region);
  const next: Kitchen = {
    ...kitchen,
    ...sizes,
    counter: { ...sizes.counter, edge: kitchen.counter.edge },
    cooktop: { ...kitchen.cooktop, width: cooktop.width },
  };
  return fitToRoom(next, kitchen.room);
}
