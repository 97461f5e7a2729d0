import type { Fixture, FixtureKind } from './fixture';
import type { Kitchen } from './kitchen';
import { BLOCK_NAMES } from './layout/block-names';
import { type Block, kitchenBlocks } from './layout/blocks';
import { wallUnitHeights } from './layout/free-spans';
import { counterTop, hoodPlace } from './layout/hood-place';
import { type LampPlace, lampPlaces } from './layout/lamp-places';
import { FRONT_THICKNESS, SHADE_HEIGHT } from './layout/measures';
import type { Rows } from './layout/types';
import { type Check, overlap, type Range } from './misfit';

/** Clear above a counter below a pendant, and from its shade to the ceiling; least length of a strip, mm (our judgment). */
const OVER_COUNTER = 300;
const UNDER_CEILING = 50;
const LEAST_STRIP = 50;
/** Above wall units, for a strip to send its light out, mm (our judgment). */
const ABOVE_UNITS = 60;
/** A lamp keeps this clear of the edges of what it is let into, mm. */
const EDGE = 5;

const LAMP_NAMES: { readonly [K in FixtureKind]: string } = {
  downlight: 'Downlight',
  panel: 'Panel',
  pendant: 'Pendant',
  strip: 'Strip',
  'under-cabinet': 'Under-cabinet strip',
  hood: 'Hood light',
};

/** One thing that must hold for a lamp; the lamps of a fixture that fail in the same are told of in one sentence. */
interface LampCheck {
  readonly path: string;
  readonly what: string;
  readonly holds: boolean;
  /** `more`: how many more lamps of the fixture fail in it. */
  readonly tell: (more: number) => string;
  readonly remedy: string;
}

interface Lamp extends LampPlace {
  readonly path: string;
  readonly name: string;
  readonly rangeX: Range;
  readonly rangeY: Range;
  /** What its room is, from its lower to its upper end: a pendant's goes up to the ceiling. */
  readonly rangeZ: Range;
}

/** What about the lamps of a kitchen cannot be built, lamp by lamp. */
export function fixtureChecks(kitchen: Kitchen, rows: Rows): Check[] {
  const lamps = kitchen.fixtures.flatMap((fixture, i) =>
    lampPlaces({ ...kitchen, fixtures: [fixture] }, rows).map((place, n) =>
      lampAt(kitchen, place, n, `fixtures[${i}]`),
    ),
  );
  const blocks = kitchenBlocks(kitchen, rows);
  return [
    ...kitchen.fixtures.flatMap((fixture, i) => kindChecks(kitchen, rows, fixture, `fixtures[${i}]`)),
    ...byFixture(lamps.flatMap((lamp) => [roomCheck(kitchen, lamp), ...placeChecks(kitchen, lamp, blocks)])),
    ...byFixture(lamps.flatMap((lamp, i) => overlapChecks(lamp, lamps.slice(0, i)))),
  ];
}

/** What fails, once for each fixture: its first lamp, and how many more. */
function byFixture(checks: readonly LampCheck[]): Check[] {
  const failed = new Map<string, Map<string, LampCheck>>();
  for (const check of checks.filter(({ holds }) => !holds)) {
    const key = JSON.stringify([check.path, check.what]);
    // A lamp may meet two boxes of one kind; it is one lamp.
    failed.set(key, (failed.get(key) ?? new Map()).set(check.tell(0), check));
  }
  return [...failed.values()].map((together): Check => {
    const { path, tell, remedy } = together.values().next().value!;
    return [path, false, tell(together.size - 1), remedy];
  });
}

/** `does` in words for one lamp and for several; the runs of a strip are not counted. */
function lampCheck(
  { path, name, fixture }: Lamp,
  holds: boolean,
  [does, together]: readonly [one: string, several: string],
  remedy: string,
): LampCheck {
  const tell = (more: number): string =>
    more > 0 && 'count' in fixture ? `${name} and ${more} more ${together}.` : `${name} ${does}.`;
  return { path, what: does, holds, tell, remedy };
}

function lampAt(kitchen: Kitchen, place: LampPlace, n: number, path: string): Lamp {
  const { fixture, x, y, width, depth, face } = place;
  const isPendant = fixture.kind === 'pendant';
  const number = 'count' in fixture && fixture.count > 1 ? ` ${n + 1} of` : '';
  return {
    ...place,
    path: `${path}.${fieldOf(fixture)}`,
    name: `${LAMP_NAMES[fixture.kind]}${number} "${fixture.id}"`,
    rangeX: [x - width / 2, x + width / 2],
    rangeY: [y - depth / 2, y + depth / 2],
    rangeZ: isPendant ? [face.z, kitchen.room.height] : [face.z, face.z],
  };
}

/** The field to change where a lamp is in the wrong place. */
function fieldOf(fixture: Fixture): string {
  if ('at' in fixture && fixture.at) return 'at';
  return 'count' in fixture ? 'count' : 'width';
}

function roomCheck({ room }: Kitchen, lamp: Lamp): LampCheck {
  const { rangeX, rangeY } = lamp;
  const isInside = rangeX[0] >= 0 && rangeX[1] <= room.width && rangeY[0] >= 0 && rangeY[1] <= room.depth;
  return lampCheck(lamp, isInside, ['reaches beyond the walls', 'reach beyond the walls'], 'Move it into the room.');
}

/** Checks that concern all lamps of a kind at once. */
function kindChecks(kitchen: Kitchen, rows: Rows, fixture: Fixture, path: string): Check[] {
  switch (fixture.kind) {
    case 'pendant':
      return pendantChecks(kitchen, fixture, path);
    case 'hood':
      return [
        [
          `${path}.kind`,
          hoodPlace(kitchen, rows) !== null,
          `There is no hood for the lights "${fixture.id}".`,
          'Leave them out, or put a hood over the cooktop.',
        ],
      ];
    case 'under-cabinet':
      return [wallUnitsCheck(rows, fixture, path)];
    case 'strip':
      return fixture.run === 'toe-kick'
        ? [toeKickCheck(kitchen, fixture, path)]
        : [wallUnitsCheck(rows, fixture, path), aboveCheck(kitchen, fixture, path)];
    default:
      return [];
  }
}

type Strip = Extract<Fixture, { kind: 'under-cabinet' | 'strip' }>;

function pendantChecks(kitchen: Kitchen, fixture: Extract<Fixture, { kind: 'pendant' }>, path: string): Check[] {
  const least = counterTop(kitchen) + OVER_COUNTER;
  const most = Math.floor(kitchen.room.height - UNDER_CEILING - SHADE_HEIGHT * fixture.diameter);
  return [
    [
      `${path}.at`,
      kitchen.island !== null || fixture.at !== undefined,
      `There is no island for the pendants "${fixture.id}" to hang over.`,
      'Say where they hang, or leave them out.',
    ],
    [
      `${path}.height`,
      fixture.height >= least,
      `The pendants "${fixture.id}" hang too low over the counter.`,
      `Use ${least} mm or more.`,
    ],
    [
      `${path}.height`,
      fixture.height <= most,
      `The pendants "${fixture.id}" do not hang free of the ceiling.`,
      `Use ${most} mm or less, or a smaller shade.`,
    ],
  ];
}

const wallUnitsCheck = ({ runs }: Rows, { id }: Strip, path: string): Check => [
  `${path}.run`,
  runs.some(({ over }) => over.length > 0),
  `There are no wall units for the strip "${id}".`,
  'Leave it out, or hang wall units over a run.',
];

function toeKickCheck({ base }: Kitchen, { id, width }: Strip, path: string): Check {
  const most = base.plinth_recess - FRONT_THICKNESS - 4;
  const remedy = most >= 5 ? `Use ${most} mm or less, or set the toe kick back.` : 'Set the toe kick back.';
  return [`${path}.width`, width <= most, `The strip "${id}" is too wide for the toe kick.`, remedy];
}

function aboveCheck(kitchen: Kitchen, { id }: Strip, path: string): Check {
  const [, top] = wallUnitHeights(kitchen);
  return [
    `${path}.run`,
    kitchen.room.height - top >= ABOVE_UNITS,
    `There is no room above the wall units for the strip "${id}".`,
    `Leave ${ABOVE_UNITS} mm below the ceiling.`,
  ];
}

function placeChecks(kitchen: Kitchen, lamp: Lamp, blocks: readonly Block[]): LampCheck[] {
  const { fixture } = lamp;
  switch (fixture.kind) {
    case 'downlight':
    case 'panel':
      return blocks
        .filter(({ z }) => z[1] >= kitchen.room.height - 1)
        .map((block) => {
          const over = `over ${BLOCK_NAMES[block.kind]}`;
          return lampCheck(lamp, !covers(block, lamp), [`lies ${over}`, `lie ${over}`], 'Move it.');
        });
    case 'pendant':
      return blocks.map((block) => {
        const inside = `in ${BLOCK_NAMES[block.kind]}`;
        const isFree = !covers(block, lamp) || !overlap(block.z, lamp.rangeZ);
        return lampCheck(lamp, isFree, [`hangs ${inside}`, `hang ${inside}`], 'Move it.');
      });
    case 'hood': {
      const canopy = blocks.find(({ kind }) => kind === 'hood')!;
      const fits = within(lamp.rangeX, canopy.x, EDGE) && within(lamp.rangeY, canopy.y, EDGE);
      const words = ['does not fit the hood', 'do not fit the hood'] as const;
      return [lampCheck(lamp, fits, words, 'Use fewer or smaller lamps.')];
    }
    case 'under-cabinet': {
      const isUnder = blocks.some(
        ({ kind, x, y }) =>
          kind === 'wall-unit' && within(lamp.rangeX, x, 2 * EDGE) && within(lamp.rangeY, y, 2 * EDGE),
      );
      const words = 'does not fit under the wall units';
      const fits = isUnder && Math.max(lamp.width, lamp.depth) >= LEAST_STRIP;
      return [lampCheck(lamp, fits, [words, words], 'Make it narrower.')];
    }
    case 'strip': {
      const isLong = Math.max(lamp.width, lamp.depth) >= LEAST_STRIP && Math.min(lamp.width, lamp.depth) > 0;
      const words = 'has a run that is too short for it';
      return [lampCheck(lamp, isLong, [words, words], 'Leave it out.')];
    }
  }
}

const within = ([low, high]: Range, [least, most]: Range, edge: number): boolean =>
  low >= least + edge && high <= most - edge;

const covers = ({ x, y }: Block, { rangeX, rangeY }: Lamp): boolean => overlap(x, rangeX) && overlap(y, rangeY);

/** Lamps in one plane, or pendants side by side, must not lie in one another. */
function overlapChecks(lamp: Lamp, others: readonly Lamp[]): LampCheck[] {
  const isPendant = lamp.fixture.kind === 'pendant';
  return others
    .filter(({ fixture, face }) =>
      isPendant || fixture.kind === 'pendant'
        ? isPendant && fixture.kind === 'pendant'
        : Math.abs(face.z - lamp.face.z) < 1 && face.looks === lamp.face.looks,
    )
    .map((other) => ({
      path: lamp.path,
      what: 'overlap',
      holds: !(overlap(lamp.rangeX, other.rangeX) && overlap(lamp.rangeY, other.rangeY)),
      tell: (more) => {
        const pairs = more === 1 ? '1 more pair does' : `${more} more pairs do`;
        return `${lamp.name} and ${other.name} overlap${more > 0 ? `; ${pairs}, too` : ''}.`;
      },
      remedy: 'Move them apart, or use fewer or smaller lamps.',
    }));
}
