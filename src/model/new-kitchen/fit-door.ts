import type { Kitchen } from '../kitchen';
import { alongWall, blocksAtWall } from '../layout/at-wall';
import { kitchenBlocks } from '../layout/blocks';
import { CASING } from '../layout/measures';
import { tryRows, wholeRows } from '../layout/plan-rows';

/** Wall between a door's casing and what is beside it, mm. */
const BESIDE = 60;
/** A door is at least this wide, mm. */
const LEAST_DOOR = 600;

/** The door where it is, or else where units and open side leave room for it, narrower if need be. */
export function fitDoor(kitchen: Kitchen): Kitchen {
  const rows = wholeRows(kitchen, tryRows(kitchen));
  const { room, door, open_side } = kitchen;
  if (!rows) return kitchen;
  const taken = blocksAtWall(kitchen, kitchenBlocks(kitchen, rows), 'front').map((block) => alongWall(block, 'front'));
  if (open_side?.wall === 'front') taken.push([open_side.from, open_side.to]);
  const height = Math.min(door.height, room.height - CASING - 10);
  const isFree = (from: number, width: number): boolean =>
    from >= CASING &&
    from + width + CASING <= room.width &&
    taken.every(([low, high]) => from - CASING >= high || from + width + CASING <= low);
  for (let width = door.width; width >= LEAST_DOOR; width -= 20) {
    const starts = [
      room.width - door.from_right - width,
      room.width - CASING - BESIDE - width,
      ...taken.map(([low]) => low - CASING - BESIDE - width),
      ...taken.map(([low, high]) => (low + high) / 2 - width / 2),
      ...taken.map(([, high]) => high + CASING + BESIDE),
      ...taken.map(([, high]) => high + CASING),
      (room.width - width) / 2,
    ];
    const start = starts.find((from) => isFree(from, width));
    if (start !== undefined) {
      return { ...kitchen, door: { width, height, from_right: Math.round((room.width - start - width) * 100) / 100 } };
    }
  }
  return kitchen;
}
