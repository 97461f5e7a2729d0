import { checkKitchen } from '../../model/check-kitchen';
import type { Kitchen, Opening, Wall } from '../../model/kitchen';

/** A common window, and the narrow one where it finds no place, mm (our judgment). */
const WINDOW = { kind: 'window', width: 900, sill: 1050, height: 1200, reveal: 160, leaves: 1, panes: 2 } as const;
const NARROW_MM = 600;
const WALLS: readonly Wall[] = ['right', 'left', 'front', 'back'];
const STEP = 100;

/** A window where one more fits, walls tried in turn from their middle outward; null where none has room. */
export function newOpening(kitchen: Kitchen): Opening | null {
  const made: Opening = { ...WINDOW, id: freeId(kitchen.openings), wall: WALLS[0]!, center: 0, facing_deg: 0 };
  return placed(kitchen, made, WALLS) ?? placed(kitchen, { ...made, width: NARROW_MM }, WALLS);
}

/**
 * An opening of the kitchen changed, and where it does not fit as it is, moved: along its wall first, then to another wall
 * if `mayLeave`. As it is where it fits nowhere, so that one hears why.
 */
export function fittedOpening(kitchen: Kitchen, opening: Opening, mayLeave: boolean): Opening {
  const others = kitchen.openings.filter(({ id }) => id !== opening.id);
  if (fits(kitchen, others, opening)) return opening;
  const walls = mayLeave ? [opening.wall, ...WALLS.filter((wall) => wall !== opening.wall)] : [opening.wall];
  return placed({ ...kitchen, openings: others }, opening, walls) ?? opening;
}

/** The opening in the first place among walls where it fits with those that are there; null where it fits nowhere. */
function placed(kitchen: Kitchen, made: Opening, walls: readonly Wall[]): Opening | null {
  for (const wall of walls) {
    const length = wall === 'left' || wall === 'right' ? kitchen.room.depth : kitchen.room.width;
    for (let off = 0; off < length / 2; off += STEP) {
      for (const center of off === 0 ? [length / 2] : [length / 2 - off, length / 2 + off]) {
        const opening: Opening = { ...made, wall, center };
        if (isFree(kitchen.openings, opening) && fits(kitchen, kitchen.openings, opening)) return opening;
      }
    }
  }
  return null;
}

const fits = (kitchen: Kitchen, others: readonly Opening[], opening: Opening): boolean =>
  checkKitchen({ ...kitchen, openings: [...others, opening] }, 'kitchen').length === 0;

const isFree = (openings: readonly Opening[], { wall, center, width }: Opening): boolean =>
  openings.every((one) => one.wall !== wall || Math.abs(one.center - center) >= (one.width + width) / 2 + STEP);

function freeId(openings: readonly Opening[]): string {
  for (let count = openings.length + 1; ; count++) {
    const id = `window-${count}`;
    if (!openings.some((one) => one.id === id)) return id;
  }
}
