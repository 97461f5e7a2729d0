import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP, FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { outward } from './handles';
import { pointAt } from './side';

/** Built-in oven: niche height, height of its control strip, m. Common practice, no source. */
export const OVEN_HEIGHT = 0.595;
const CONTROL_HEIGHT = 0.1;
const HANDLE = { stand: 0.035, belowStrip: 0.04, fromEnd: 0.05 };
const DIAL = { stand: 0.022, fromEnd: 0.12 };

/** Control strip with two dials over a framed glass door with a bar. `place` is the niche, from module edge to module edge. */
export function addOven(parts: Assembly, _plan: Plan, zone: FrontZone, place: FrontPlace): void {
  const { side, back } = zone;
  const a = [place.a[0] + FRONT_GAP / 2, place.a[1] - FRONT_GAP / 2] as const;
  const [bottom, top] = place.z;
  const sheet = parts.newPiece();
  const split = top - CONTROL_HEIGHT;
  const whole = { a, back, surface: 'appliance', grain: side.along, sheet } as const;
  addFront(parts, side, { ...whole, z: [split, top], fivePiece: false });
  addFront(parts, side, { ...whole, z: [bottom, split - FRONT_GAP], fivePiece: true });
  const face = back + FRONT_THICKNESS;
  const level = split - HANDLE.belowStrip;
  parts.bars.push({
    kind: 'bar',
    surface: 'appliance',
    from: pointAt(side, a[0] + HANDLE.fromEnd, face + HANDLE.stand, level),
    to: pointAt(side, a[1] - HANDLE.fromEnd, face + HANDLE.stand, level),
    stand: outward(side, HANDLE.stand),
  });
  for (const x of [place.a[0] + DIAL.fromEnd, place.a[1] - DIAL.fromEnd]) {
    const at = pointAt(side, x, face + DIAL.stand, top - CONTROL_HEIGHT / 2);
    parts.bars.push({ kind: 'dial', surface: 'appliance', from: at, to: at, stand: outward(side, DIAL.stand) });
  }
}
