import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addPlinth, backSide } from './base-units';
import { addFront, FRONT_GAP, FRONT_THICKNESS } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, pointAt } from './side';
import { addDoor, addUnitFronts, type FrontZone, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** Built-in oven: niche height and height of its control panel, m. */
export const OVEN_HEIGHT = 0.595;
const CONTROL_HEIGHT = 0.1;
const OVEN_HANDLE_STAND = 0.035;

/** Side panel, carcass, plinth; drawers, oven and door in one unit, fridge and freezer behind doors in the other. */
export function addTallUnits(parts: Assembly, plan: Plan): void {
  const side = backSide(plan);
  const back = plan.baseDepth - FRONT_THICKNESS;
  const { panel, oven, fridge, top } = plan.tall;
  const skin = () => {
    const piece = parts.newPiece();
    return { surface: 'tall-fronts', coordinates: grained(2, piece), piece } as const;
  };
  parts.box(skin(), ...boxAt(side, { a: [panel.from, panel.to], d: [0, plan.counter.depth], z: [0, top] }));
  parts.box(skin(), ...boxAt(side, { a: [panel.to, plan.width], d: [0, back], z: [plan.plinth.top, top] }));
  addPlinth(
    parts,
    boxAt(side, {
      a: [panel.to, plan.width],
      d: [0, plan.baseDepth - plan.plinth.recess],
      z: [0, plan.plinth.top],
    }),
    0,
  );
  parts.box(
    skin(),
    ...boxAt(side, {
      a: [fridge.to + FRONT_GAP / 2, plan.width],
      d: [back, plan.baseDepth],
      z: [plan.plinth.top + GAP_BELOW, top - GAP_ABOVE],
    }),
  );

  const low: FrontZone = {
    side,
    back,
    z: [plan.plinth.top, plan.counter.bottom],
    surface: 'tall-fronts',
    fivePiece: plan.fivePiece,
    handleEnd: 'top',
  };
  const high: FrontZone = { ...low, handleEnd: 'bottom' };
  const doorTop = top - GAP_ABOVE;
  const ovenTop = plan.counter.bottom + OVEN_HEIGHT;
  const [ovenSpan, fridgeSpan] = [oven, fridge].map((s) => [s.from + FRONT_GAP / 2, s.to - FRONT_GAP / 2] as const);

  addUnitFronts(parts, low, { kind: 'drawers', ...oven, handle: 'low' });
  addOven(parts, plan, ovenSpan!, ovenTop);
  addDoor(parts, high, { a: ovenSpan!, z: [ovenTop + FRONT_GAP, doorTop] }, 'high', parts.newPiece());

  const sheet = parts.newPiece();
  addDoor(
    parts,
    low,
    { a: fridgeSpan!, z: [plan.plinth.top + GAP_BELOW, plan.counter.bottom - GAP_ABOVE] },
    'low',
    sheet,
  );
  addDoor(parts, high, { a: fridgeSpan!, z: [plan.counter.bottom, doorTop] }, 'low', sheet);
}

/** Control panel over a framed glass door with a bar handle. */
function addOven(parts: Assembly, plan: Plan, a: readonly [number, number], top: number): void {
  const side = backSide(plan);
  const back = plan.baseDepth - FRONT_THICKNESS;
  const sheet = parts.newPiece();
  const split = top - CONTROL_HEIGHT;
  const whole = { a, back, surface: 'appliance', sheet } as const;
  addFront(parts, side, { ...whole, z: [split, top], fivePiece: false });
  addFront(parts, side, { ...whole, z: [plan.counter.bottom, split - FRONT_GAP], fivePiece: true });
  const z = split - 0.04;
  const d = plan.baseDepth + OVEN_HANDLE_STAND;
  parts.bars.push({
    surface: 'appliance',
    from: pointAt(side, a[0] + 0.05, d, z),
    to: pointAt(side, a[1] - 0.05, d, z),
    stand: [0, -OVEN_HANDLE_STAND, 0],
  });
}
