import type { Kitchen, Opening, Wall } from './kitchen';
import { alongWall, blocksAtWall } from './layout/at-wall';
import { BLOCK_NAMES } from './layout/block-names';
import { kitchenBlocks } from './layout/blocks';
import { counterTop } from './layout/hood-place';
import { CASING, FRAME, NOSING, RAIL, SASH } from './layout/measures';
import { wallLength } from './layout/run-ends';
import type { Rows } from './layout/types';
import { type Check, overlap, type Range } from './misfit';

/** From an opening to the corner of the room, and between two openings, mm. */
const FROM_CORNER = 50;
const BETWEEN = 60;
/** Least height of a window and of a glazed door, least width of a door's leaf, least glass of a casement, mm (our judgment). */
const LEAST_HEIGHT = { window: 300, 'glazed-door': 1800 } as const;
const LEAST_LEAF = 400;
const LEAST_GLASS = 80;
const LEAST_REVEAL = SASH.depth + 3;

const WALL_UNITS = BLOCK_NAMES['wall-unit'];

/** Something before a wall that would cover an opening, mm. */
interface Cover {
  readonly name: string;
  readonly a: Range;
  readonly z: Range;
}

/** What about windows and glazed doors cannot be built. `rows` is null where the units themselves do not fit. */
export function openingChecks(kitchen: Kitchen, rows: Rows | null): Check[] {
  const { openings } = kitchen;
  return openings.flatMap((opening, i) => [
    ...sizeChecks(kitchen, opening, `openings[${i}]`),
    ...coversOn(kitchen, rows, opening.wall).flatMap((cover) => coverCheck(opening, cover, `openings[${i}]`)),
    ...openings.slice(0, i).flatMap((other) => apartCheck(opening, other, `openings[${i}]`)),
  ]);
}

const named = ({ kind, wall }: Opening): string =>
  `The ${kind === 'window' ? 'window' : 'glazed door'} on the ${wall} wall`;

function sizeChecks(kitchen: Kitchen, opening: Opening, path: string): Check[] {
  const { room, skirting_height } = kitchen;
  const { kind, wall, center, width, sill, height, leaves } = opening;
  const isDoor = kind === 'glazed-door';
  const wide = wallLength(kitchen, wall);
  const leastWidth = isDoor
    ? 2 * FRAME.width + leaves * LEAST_LEAF
    : FRAME.width + leaves * (FRAME.width + 2 * SASH.width + LEAST_GLASS);
  const leastSill = skirting_height + NOSING.thickness + 3;
  const name = named(opening);
  const half = width / 2;
  return [
    [
      `${path}.width`,
      width >= leastWidth,
      `${name} is too narrow for ${leaves === 1 ? 'its leaf' : `${leaves} leaves`}.`,
      `Use ${leastWidth} mm or more, or fewer leaves.`,
    ],
    [
      `${path}.width`,
      width <= wide - 2 * FROM_CORNER,
      `${name} is wider than its wall.`,
      `Use ${wide - 2 * FROM_CORNER} mm or less.`,
    ],
    [
      `${path}.center`,
      width > wide - 2 * FROM_CORNER || (center - half >= FROM_CORNER && center + half <= wide - FROM_CORNER),
      `${name} reaches beyond the end of its wall.`,
      `Put its middle from ${FROM_CORNER + half} to ${wide - FROM_CORNER - half} mm.`,
    ],
    [
      `${path}.height`,
      height >= LEAST_HEIGHT[kind],
      `${name} is too low for its leaves.`,
      `Use ${LEAST_HEIGHT[kind]} mm or more.`,
    ],
    [
      `${path}.height`,
      sill + height <= room.height,
      `${name} reaches above the ceiling.`,
      `Use ${room.height - sill} mm or less, or a lower sill.`,
    ],
    [
      `${path}.reveal`,
      opening.reveal >= LEAST_REVEAL,
      `The wall is too thin for the frame of the ${isDoor ? 'glazed door' : 'window'}.`,
      `Use ${LEAST_REVEAL} mm or more.`,
    ],
    [`${path}.sill`, !isDoor || sill === 0, `${name} does not start on the floor.`, 'Give it a sill of 0.'],
    [
      `${path}.sill`,
      isDoor || sill >= leastSill,
      `${name} has its sill in the baseboard.`,
      `Raise the sill to ${leastSill} mm or more, or make it a glazed door.`,
    ],
  ];
}

/** What stands before a wall. */
function coversOn(kitchen: Kitchen, rows: Rows | null, wall: Wall): Cover[] {
  const covers: Cover[] = [];
  if (wall === 'front') {
    const { door, room } = kitchen;
    const to = room.width - door.from_right;
    covers.push({ name: 'the door', a: [to - door.width - CASING, to + CASING], z: [0, door.height + CASING] });
  }
  if (!rows) return covers;
  const run = rows.runs.find((one) => one.wall === wall);
  const top = counterTop(kitchen);
  if (run?.splash.kind === 'upstand') {
    const { from, to } = run.splash;
    covers.push({ name: 'the counter and its upstand', a: [from, to], z: [0, top + kitchen.upstand_height] });
  }
  for (const block of blocksAtWall(kitchen, kitchenBlocks(kitchen, rows), wall)) {
    // Below the wall units hides a rail.
    const low = block.kind === 'wall-unit' ? RAIL.height : 0;
    const isUpstand = run?.splash.kind === 'upstand' && block.kind === 'counter';
    if (isUpstand) continue;
    covers.push({ name: BLOCK_NAMES[block.kind], a: alongWall(block, wall), z: [block.z[0] - low, block.z[1]] });
  }
  return covers;
}

function coverCheck(opening: Opening, { name, a, z }: Cover, path: string): Check[] {
  const { kind, center, width, sill: bottom, height } = opening;
  const isWindow = kind === 'window';
  const meets = (ear: number, heights: Range): boolean =>
    overlap([center - width / 2 - ear, center + width / 2 + ear], a) && overlap(heights, z);
  const nosing: Range = [bottom - NOSING.thickness - 3, bottom];
  // The ears of a nosing end in the side of a wall unit that hangs beside the window; all else they would cut into.
  const holds =
    !meets(0, [isWindow ? nosing[0] : bottom, bottom + height]) &&
    (!isWindow || name === WALL_UNITS || !meets(NOSING.ear, nosing));
  // From below one raises the sill; what hangs one cannot pass.
  const standsLow = isWindow && z[0] === 0;
  const field = standsLow ? 'sill' : 'center';
  const sill = z[1] + NOSING.thickness + 3;
  return [
    [
      `${path}.${field}`,
      holds,
      `${named(opening)} lies behind ${name}.`,
      standsLow ? `Raise the sill to ${sill} mm or more, or move it.` : 'Move it or make it smaller.',
    ],
  ];
}

function apartCheck(opening: Opening, other: Opening, path: string): Check[] {
  if (opening.wall !== other.wall) return [];
  const along = ({ center, width }: Opening, more: number): Range => [center - width / 2, center + width / 2 + more];
  const up = ({ sill, height }: Opening, more: number): Range => [sill, sill + height + more];
  const meet = (a: Opening, b: Opening): boolean =>
    overlap(along(a, BETWEEN), along(b, BETWEEN)) && overlap(up(a, BETWEEN), up(b, BETWEEN));
  return [
    [
      `${path}.center`,
      !meet(opening, other),
      `${named(opening)} and the ${other.kind === 'window' ? 'window' : 'glazed door'} "${other.id}" overlap or nearly touch.`,
      `Leave ${BETWEEN} mm between them.`,
    ],
  ];
}
