import { checkKitchen } from '../../model/check-kitchen';
import type { Kitchen, Opening, Wall } from '../../model/project';

/** A common window beside which one may go on, mm (our judgement). */
const WINDOW = { kind: 'window', width: 900, sill: 1050, height: 1200, reveal: 160, leaves: 1, panes: 2 } as const;
const WALLS: readonly Wall[] = ['left', 'right', 'front', 'back'];
const STEP = 100;

/** A window where one more fits, walls tried in turn from their middle outward; null where none has room. */
export function newOpening(kitchen: Kitchen): Opening | null {
  const id = freeId(kitchen.openings);
  for (const wall of WALLS) {
    const length = wall === 'left' || wall === 'right' ? kitchen.room.depth : kitchen.room.width;
    for (let off = 0; off < length / 2; off += STEP) {
      for (const center of off === 0 ? [length / 2] : [length / 2 - off, length / 2 + off]) {
        const opening: Opening = { ...WINDOW, id, wall, center, facing_deg: 0 };
        if (isFree(kitchen.openings, opening) && fits(kitchen, opening)) return opening;
      }
    }
  }
  return null;
}

const fits = (kitchen: Kitchen, opening: Opening): boolean =>
  checkKitchen({ ...kitchen, openings: [...kitchen.openings, opening] }, 'kitchen').length === 0;

const isFree = (openings: readonly Opening[], { wall, center, width }: Opening): boolean =>
  openings.every((one) => one.wall !== wall || Math.abs(one.center - center) >= (one.width + width) / 2 + STEP);

function freeId(openings: readonly Opening[]): string {
  for (let count = openings.length + 1; ; count++) {
    const id = `window-${count}`;
    if (!openings.some((one) => one.id === id)) return id;
  }
}
