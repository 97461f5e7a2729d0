import type { Kitchen, OpenSide } from './kitchen';
import { alongWall, blocksAtWall } from './layout/at-wall';
import { BLOCK_NAMES } from './layout/block-names';
import { kitchenBlocks } from './layout/blocks';
import { CASING, NOSING } from './layout/measures';
import { wallLength } from './layout/run-ends';
import type { Rows } from './layout/types';
import { type Check, overlap, type Range } from './misfit';

/** Wall that stays beside an open side, and an open side one calls wide, mm (our judgment). */
const BESIDE_OPEN = 50;
const LEAST_OPEN = 700;
/** Wall between an open side and a window, mm. */
const BETWEEN = 60;

/** What about the door and the open side cannot be built. */
export const doorChecks = (kitchen: Kitchen, rows: Rows | null): Check[] => [
  ...doorPlaceChecks(kitchen, rows),
  ...(kitchen.open_side ? openChecks(kitchen, kitchen.open_side, rows) : []),
];

/** The door with its casing along the front wall. */
const doorRange = ({ room, door }: Kitchen): Range => {
  const to = room.width - door.from_right;
  return [to - door.width - CASING, to + CASING];
};

function doorPlaceChecks(kitchen: Kitchen, rows: Rows | null): Check[] {
  const { room, door } = kitchen;
  const behind = rows && blocksBefore(kitchen, rows, 'front', doorRange(kitchen), [0, door.height + CASING]);
  return [
    [
      'door',
      door.from_right >= CASING && door.from_right + door.width + CASING <= room.width,
      'The door with its casing reaches beyond its wall.',
      'Move it.',
    ],
    ['door.height', door.height + CASING <= room.height, 'The door is higher than the room.', 'Make it lower.'],
    ['door', !behind, `The door lies behind ${behind}.`, 'Move it, or let the run end before it.'],
  ];
}

function openChecks(kitchen: Kitchen, open: OpenSide, rows: Rows | null): Check[] {
  const { room, openings } = kitchen;
  const length = wallLength(kitchen, open.wall);
  const span: Range = [open.from, open.to];
  const high: Range = [0, open.height];
  const behind = rows && blocksBefore(kitchen, rows, open.wall, span, high);
  const opening = openings.find(
    ({ wall, center, width, sill, height }) =>
      wall === open.wall &&
      overlap([center - width / 2 - BETWEEN, center + width / 2 + BETWEEN], span) &&
      overlap([sill - NOSING.thickness - BETWEEN, sill + height + BETWEEN], high),
  );
  return [
    [
      'open_side.to',
      open.to - open.from >= LEAST_OPEN,
      'The open side is too narrow.',
      `Make it ${LEAST_OPEN} mm wide or more, or leave it out.`,
    ],
    [
      'open_side.from',
      open.from >= BESIDE_OPEN && open.to <= length - BESIDE_OPEN,
      'The open side reaches beyond its wall.',
      `Leave ${BESIDE_OPEN} mm of wall beside it: from ${BESIDE_OPEN} to ${length - BESIDE_OPEN} mm.`,
    ],
    ['open_side.height', open.height <= room.height, 'The open side is higher than the room.', 'Make it lower.'],
    [
      'open_side',
      open.wall !== 'front' || !overlap(span, doorRange(kitchen)),
      'The open side and the door overlap.',
      'Move one of them.',
    ],
    ['open_side', !behind, `The open side lies behind ${behind}.`, 'Move it, or let the run end before it.'],
    [
      'open_side',
      !opening,
      `The open side and the ${opening?.kind === 'glazed-door' ? 'glazed door' : 'window'} "${opening?.id}" overlap or nearly touch.`,
      `Leave ${BETWEEN} mm between them.`,
    ],
  ];
}

/** The first thing that stands before a part of a wall, in words; null when it is free. */
function blocksBefore(
  kitchen: Kitchen,
  rows: Rows,
  wall: 'left' | 'right' | 'front',
  span: Range,
  heights: Range,
): string | null {
  const block = blocksAtWall(kitchen, kitchenBlocks(kitchen, rows), wall).find(
    (one) => overlap(alongWall(one, wall), span) && overlap(one.z, heights),
  );
  return block ? BLOCK_NAMES[block.kind] : null;
}
