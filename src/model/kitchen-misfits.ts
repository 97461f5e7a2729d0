import type { Problem } from '../engine/result';
import { fixtureChecks } from './fixture-misfits';
import type { Kitchen } from './kitchen';
import { CASING } from './layout/measures';
import { planRows } from './layout/plan-rows';
import type { Check } from './misfit';
import { openingChecks } from './opening-misfits';

/** Below this nobody passes between two rows of units, mm. Planners ask for 900 to 1200 (common practice). */
const LEAST_PASSAGE = 600;
/** Side panel, two tall modules and filler; corner filler; narrowest units beside a 600 mm cooktop unit, mm. */
const LEAST_BACK_RUN = 1240 + 50 + 300 + 600 + 300;
const OVEN_NICHE = 595;

/** What in a kitchen's measures cannot be built: empty when everything fits its room. */
export function kitchenMisfits(kitchen: Kitchen): readonly Problem<'does-not-fit'>[] {
  // Without a back wall long enough there are no rows to ask.
  const rows = kitchen.room.width - kitchen.base.depth >= LEAST_BACK_RUN ? planRows(kitchen) : null;
  return [
    ...roomChecks(kitchen),
    ...unitChecks(kitchen),
    ...islandChecks(kitchen),
    ...doorChecks(kitchen),
    ...openingChecks(kitchen, rows),
    ...(rows ? fixtureChecks(kitchen, rows) : []),
  ]
    .filter(([, holds]) => !holds)
    .map(([path, , text, remedy]) => ({ code: 'does-not-fit', text, at: { path }, remedy }));
}

function roomChecks({ room, base, sink }: Kitchen): Check[] {
  const backRun = room.width - base.depth;
  const sinkEnd = sink.center - 400;
  return [
    ['room.width', backRun >= LEAST_BACK_RUN, 'The back wall is too short for tall units and a cooktop.', 'Widen it.'],
    ['sink.center', sinkEnd >= LEAST_PASSAGE, 'The sink blocks the door wall.', 'Move the sink.'],
    [
      'sink.center',
      sink.center + 400 <= room.depth - base.depth,
      'The sink runs into the corner.',
      'Move the sink towards the door.',
    ],
  ];
}

function unitChecks(kitchen: Kitchen): Check[] {
  const { room, base, counter, wall_units, tall_height } = kitchen;
  const bottom = base.plinth_height + base.carcass_height;
  const wallTop = bottom + counter.thickness + wall_units.gap_above_counter + wall_units.height;
  return [
    ['base.depth', base.depth >= 570, 'The sink bowl needs base units 570 mm deep.', 'Make them deeper.'],
    ['counter.depth', counter.depth >= base.depth, 'The counter is less deep than the units.', 'Make it deeper.'],
    ['base.plinth_recess', base.plinth_recess >= 20, 'The toe kick stands before the carcass.', 'Set it back 20 mm.'],
    ['base.carcass_height', base.carcass_height >= 500, 'Base units are too low for a sink.', 'Use 500 mm or more.'],
    ['wall_units.depth', wall_units.depth >= 250, 'Wall units are too shallow.', 'Use 250 mm or more.'],
    ['wall_units.height', wallTop <= room.height, 'Wall units are higher than the room.', 'Make them lower.'],
    ['tall_height', tall_height <= room.height, 'Tall units are higher than the room.', 'Make them lower.'],
    [
      'tall_height',
      tall_height >= bottom + OVEN_NICHE + 300,
      'Tall units are too low for an oven at working height.',
      `Use ${bottom + OVEN_NICHE + 300} mm or more.`,
    ],
  ];
}

function islandChecks({ room, counter, island }: Kitchen): Check[] {
  const clear = [
    ['island.x', island.x - counter.depth],
    ['island.x', room.width - island.x - island.width],
    ['island.y', island.y],
    ['island.y', room.depth - counter.depth - island.y - island.depth],
  ] as const;
  return [
    ...clear.map(
      ([path, gap]): Check => [
        path,
        gap >= LEAST_PASSAGE,
        `Only ${gap} mm are left to pass beside the island.`,
        'Move it or make it smaller.',
      ],
    ),
    ['island.width', island.width - 2 * counter.overhang >= 340, 'The island is too narrow for any unit.', 'Widen it.'],
    [
      'island.seat_overhang',
      island.depth - island.seat_overhang - counter.overhang >= 350,
      'The seat overhang leaves no depth for units.',
      'Make the island deeper or the overhang smaller.',
    ],
  ];
}

function doorChecks({ room, door }: Kitchen): Check[] {
  return [
    [
      'door',
      door.from_right >= CASING && door.from_right + door.width + CASING <= room.width,
      'The door with its casing reaches beyond its wall.',
      'Move it.',
    ],
    ['door.height', door.height + CASING <= room.height, 'The door is higher than the room.', 'Make it lower.'],
  ];
}
