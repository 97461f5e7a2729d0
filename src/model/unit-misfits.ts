import type { Kitchen } from './kitchen';
import { wallUnitHeights } from './layout/free-spans';
import { counterTop } from './layout/hood-place';
import { HOOD } from './layout/measures';
import { type Check, within } from './misfit';

const OVEN_NICHE = 595;
/** Above an oven in a tall unit: its door, mm; round one in a base unit, mm (our judgment). */
const ABOVE_OVEN = 300;
const ROUND_OVEN = 10;
/** Least cabinet over a hood hidden in it, mm (our judgment). */
const LEAST_HOOD_CABINET = 250;

/** What about the units' heights and depths, sink, cooktop and island cannot be built. */
export const unitChecks = (kitchen: Kitchen): Check[] => [
  ...baseChecks(kitchen),
  ...heightChecks(kitchen),
  ...hoodChecks(kitchen),
  ...islandChecks(kitchen),
];

function baseChecks({ base, counter, wall_units, cooktop, runs }: Kitchen): Check[] {
  const hasOver = runs.some(({ over }) => over !== 'none');
  return [
    ['base.depth', base.depth >= 570, 'The sink bowl needs base units 570 mm deep.', 'Make them deeper.'],
    ['counter.depth', counter.depth >= base.depth, 'The counter is less deep than the units.', 'Make it deeper.'],
    ['base.plinth_recess', base.plinth_recess >= 20, 'The toe kick stands before the carcass.', 'Set it back 20 mm.'],
    ['base.carcass_height', base.carcass_height >= 500, 'Base units are too low for a sink.', 'Use 500 mm or more.'],
    [
      'cooktop.oven_below',
      !cooktop.oven_below || base.carcass_height >= OVEN_NICHE + ROUND_OVEN,
      'Base units are too low for an oven under the cooktop.',
      `Use ${OVEN_NICHE + ROUND_OVEN} mm or more, or put the oven in a tall unit.`,
    ],
    ['wall_units.depth', !hasOver || wall_units.depth >= 250, 'Wall units are too shallow.', 'Use 250 mm or more.'],
  ];
}

function heightChecks(kitchen: Kitchen): Check[] {
  const { room, base, tall_height, runs } = kitchen;
  const bottom = base.plinth_height + base.carcass_height;
  const [, wallTop] = wallUnitHeights(kitchen);
  const hasOver = runs.some(({ over }) => over !== 'none');
  const tall = runs.flatMap(({ tall_from, tall_to }) => [...tall_from, ...tall_to]);
  const leastOven = bottom + OVEN_NICHE + ABOVE_OVEN;
  return [
    [
      'wall_units.height',
      !hasOver || wallTop <= room.height,
      'Wall units are higher than the room.',
      'Make them lower.',
    ],
    [
      'tall_height',
      tall.length === 0 || tall_height <= room.height,
      'Tall units are higher than the room.',
      'Make them lower.',
    ],
    [
      'tall_height',
      tall.length === 0 || tall_height >= leastOven,
      'Tall units are too low for an oven at working height.',
      `Use ${leastOven} mm or more.`,
    ],
    [
      'room.height',
      counterTop(kitchen) <= room.height - 600,
      'The counter is nearly as high as the room.',
      'Make the base units lower.',
    ],
  ];
}

function hoodChecks(kitchen: Kitchen): Check[] {
  const { room, cooktop, runs } = kitchen;
  const bottom = counterTop(kitchen) + HOOD.clearance;
  const [, wallTop] = wallUnitHeights(kitchen);
  const over = runs.find(({ wall }) => wall === cooktop.run)?.over;
  return [
    [
      'cooktop.hood',
      cooktop.hood !== 'canopy' || bottom + HOOD.canopy.height <= room.height,
      'The room is too low for a hood over the cooktop.',
      'Leave the hood out, or make the counter lower.',
    ],
    [
      'cooktop.hood',
      cooktop.hood !== 'built-in' || over === 'units',
      'A hood can only be hidden between wall units.',
      'Hang wall units over the cooktop, or choose a canopy.',
    ],
    [
      'cooktop.hood',
      cooktop.hood !== 'built-in' || wallTop >= bottom + LEAST_HOOD_CABINET,
      'The wall units end too low to hide a hood.',
      `Let them end at ${bottom + LEAST_HOOD_CABINET} mm or higher, or choose a canopy.`,
    ],
  ];
}

/** Counter front that a stool takes at the least, mm (our judgment; planners give more, see the clearances). */
const LEAST_SEAT = 400;

function islandChecks({ island, counter, room }: Kitchen): Check[] {
  if (!island) return [];
  const { x, width, joined, waterfall } = island;
  const seats = Math.floor(width / LEAST_SEAT);
  return [
    [
      'island.seat_overhang',
      island.depth - island.seat_overhang - counter.overhang >= 350,
      'The seat overhang leaves no depth for units.',
      'Make the island deeper or the overhang smaller.',
    ],
    [
      'island.stools',
      island.stools <= (island.seat_overhang > 0 ? seats : 0),
      island.seat_overhang > 0
        ? `There is room for ${seats} stools at the island.`
        : 'Without a seat overhang nobody can sit at the island.',
      island.seat_overhang > 0
        ? 'Use fewer, or a longer island.'
        : 'Give the counter an overhang, or leave the stools out.',
    ],
    [
      'island.joined',
      joined !== 'left' || within(x, [-0.5, 0.5]),
      'The peninsula does not begin at the left wall.',
      'Put its left end at 0 mm.',
    ],
    [
      'island.joined',
      joined !== 'right' || within(x + width, [room.width - 0.5, room.width + 0.5]),
      'The peninsula does not begin at the right wall.',
      `Put its left end at ${room.width - width} mm.`,
    ],
    [
      'island.waterfall',
      joined === null || (waterfall !== joined && waterfall !== 'both'),
      'Where the peninsula joins the wall its counter cannot run down to the floor.',
      'Choose its free end.',
    ],
  ];
}
