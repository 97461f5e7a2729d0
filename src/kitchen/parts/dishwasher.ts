import type { Assembly } from './assembly';
import { addFront, FRONT_GAP, FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { outward } from './handles';
import { pointAt } from './side';

/** Control strip over the door, m. Common practice, no source. */
const STRIP = 0.12;
const HANDLE = { stand: 0.03, fromEnd: 0.06, belowStrip: 0.035 };
const CLEAR = 0.004;

/** A dishwasher that shows: a control strip over a door with a bar. `cell` runs from module edge to module edge. */
export function addFreeDishwasher(parts: Assembly, { side, back }: FrontZone, { a, z }: FrontPlace): void {
  const wide = [a[0] + CLEAR, a[1] - CLEAR] as const;
  const sheet = parts.newPiece();
  const top = z[1] - CLEAR;
  const whole = { a: wide, back, surface: 'appliance', grain: side.along, sheet, fivePiece: false } as const;
  addFront(parts, side, { ...whole, z: [top - STRIP, top] });
  const doorTop = top - STRIP - FRONT_GAP;
  addFront(parts, side, { ...whole, z: [z[0] + CLEAR, doorTop] });
  const d = back + FRONT_THICKNESS + HANDLE.stand;
  parts.bars.push({
    kind: 'bar',
    surface: 'appliance',
    from: pointAt(side, wide[0] + HANDLE.fromEnd, d, doorTop - HANDLE.belowStrip),
    to: pointAt(side, wide[1] - HANDLE.fromEnd, d, doorTop - HANDLE.belowStrip),
    stand: outward(side, HANDLE.stand),
  });
}
