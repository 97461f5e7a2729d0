import { checkKitchen } from '../check-kitchen';
import type { Kitchen, Opening } from '../kitchen';
import { counterTop } from '../layout/hood-place';
import { NOSING } from '../layout/measures';
import { wallLength } from '../layout/run-ends';

const STEP = 50;
/** A window smaller than this is left out, mm. */
const LEAST = 500;

/** A kitchen with as many of the openings as fit: each where it is, else moved or made smaller as little as it takes, else left out. */
export function fitOpenings(kitchen: Kitchen, openings: readonly Opening[]): Kitchen {
  let fitted: Kitchen = { ...kitchen, openings: [] };
  for (const opening of openings) {
    for (const one of variants(fitted, opening)) {
      const next = { ...fitted, openings: [...fitted.openings, one] };
      if (checkKitchen(next, '').length > 0) continue;
      fitted = next;
      break;
    }
  }
  return fitted;
}

/** The opening as it is, over the counter, beside its place, narrower: nearest first. */
function* variants(kitchen: Kitchen, opening: Opening): Generator<Opening> {
  const head = opening.sill + opening.height;
  const sill = counterTop(kitchen) + kitchen.upstand_height + NOSING.thickness + 8;
  const length = wallLength(kitchen, opening.wall);
  const lower: Opening = { ...opening, height: Math.min(opening.height, kitchen.room.height - opening.sill - 100) };
  const higher: Opening = { ...opening, sill, height: Math.min(head, kitchen.room.height - 100) - sill };
  const heights = opening.kind === 'window' ? [lower, higher] : [lower];
  for (let width = opening.width; width >= LEAST; width -= 200) {
    for (let off = 0; off <= length; off += STEP) {
      for (const center of off === 0 ? [opening.center] : [opening.center - off, opening.center + off]) {
        if (center - width / 2 < STEP || center + width / 2 > length - STEP) continue;
        for (const one of heights) {
          const leaves = width < 900 ? 1 : opening.leaves;
          if (one.height >= 300) yield { ...one, center, width, leaves };
        }
      }
      if (off > 1500) break;
    }
  }
}
