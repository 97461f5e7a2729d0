import type { Solid } from '../../engine/light/types';
import type { FixtureKind } from '../../model/fixture';
import type { Kitchen, Wall } from '../../model/kitchen';
import { kitchenBlocks } from '../../model/layout/blocks';
import { lampPlaces } from '../../model/layout/lamp-places';
import { planRows } from '../../model/layout/plan-rows';
import { cooktopBox } from '../parts/cooking';
import { bowlBox } from '../parts/sink';
import { planKitchen } from './plan-kitchen';

interface PlanShape {
  readonly kind: 'counter' | 'tall' | 'wall-unit' | 'island' | 'hood' | 'sink' | 'cooktop';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly depth: number;
}

/** A kitchen seen from above, as rectangles in mm from the front left corner: x right, y towards the back wall. */
export interface PlanDrawing {
  readonly width_mm: number;
  readonly depth_mm: number;
  /** In the order they lie over one another; x, y the corner nearest to the front left of the room. */
  readonly shapes: readonly PlanShape[];
  /** Spans along the opening's wall. */
  readonly openings: readonly {
    readonly id: string;
    readonly wall: Wall;
    readonly from: number;
    readonly to: number;
  }[];
  /** On the front wall. */
  readonly door: { readonly from: number; readonly to: number };
  /** One for each lamp; x, y its middle. */
  readonly lamps: readonly {
    readonly fixture: string;
    readonly kind: FixtureKind;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly depth: number;
  }[];
}

/** The plan of a kitchen whose parts fit its room (see checkKitchen). */
export function drawPlan(kitchen: Kitchen): PlanDrawing {
  const { room, door } = kitchen;
  const rows = planRows(kitchen);
  const plan = planKitchen(kitchen);
  const [min, max] = cooktopBox(plan);
  const doorTo = room.width - door.from_right;
  const blocks = kitchenBlocks(kitchen, rows).map(
    ({ kind, x, y }): PlanShape => ({ kind, x: x[0], y: y[0], width: x[1] - x[0], depth: y[1] - y[0] }),
  );
  const isLow = ({ kind }: PlanShape): boolean => kind === 'counter' || kind === 'island';
  return {
    width_mm: room.width,
    depth_mm: room.depth,
    shapes: [
      ...blocks.filter(isLow),
      shapeOf('sink', bowlBox(plan)),
      shapeOf('cooktop', { min, max }),
      ...blocks.filter((block) => !isLow(block)),
    ],
    openings: kitchen.openings.map(({ id, wall, center, width }) => ({
      id,
      wall,
      from: center - width / 2,
      to: center + width / 2,
    })),
    door: { from: doorTo - door.width, to: doorTo },
    lamps: lampPlaces(kitchen, rows).map(({ fixture, x, y, width, depth }) => ({
      fixture: fixture.id,
      kind: fixture.kind,
      x,
      y,
      width,
      depth,
    })),
  };
}

function shapeOf(kind: PlanShape['kind'], { min, max }: Solid): PlanShape {
  return { kind, x: mm(min[0]), y: mm(min[1]), width: mm(max[0] - min[0]), depth: mm(max[1] - min[1]) };
}

/** Metres as whole tenths of a millimetre. */
const mm = (m: number): number => Math.round(m * 1e4) / 10;
