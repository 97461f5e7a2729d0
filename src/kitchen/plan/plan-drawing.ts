import type { Solid } from '../../engine/light/types';
import type { FixtureKind } from '../../model/fixture';
import type { Kitchen, OpenSide, Wall } from '../../model/kitchen';
import { type Block, kitchenBlocks } from '../../model/layout/blocks';
import { lampPlaces } from '../../model/layout/lamp-places';
import { planRows } from '../../model/layout/plan-rows';
import { cooktopBox } from '../parts/cooktop';
import { solidAt } from '../parts/side';
import { bowlExtents, sinkSide } from '../parts/sink';
import { waterfallEnds } from '../parts/waterfall';
import { planKitchen } from './plan-kitchen';

interface PlanShape {
  readonly kind: Block['kind'] | 'sink' | 'cooktop' | 'waterfall';
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
  /** On the front wall. It opens into the room: hinged at `hinge`, its free edge swings from the other end to `open`. */
  readonly door: {
    readonly from: number;
    readonly to: number;
    readonly swing: { readonly hinge: readonly [x: number, y: number]; readonly open: readonly [x: number, y: number] };
  };
  /** A wide opening, and how deep the room beyond it is. */
  readonly openSide: (Pick<OpenSide, 'wall' | 'from' | 'to'> & { readonly next_depth_mm: number }) | null;
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
  const { room, open_side } = kitchen;
  const rows = planRows(kitchen);
  const plan = planKitchen(kitchen);
  const [min, max] = cooktopBox(plan);
  const blocks = kitchenBlocks(kitchen, rows).map(
    ({ kind, x, y }): PlanShape => ({ kind, x: x[0], y: y[0], width: x[1] - x[0], depth: y[1] - y[0] }),
  );
  const isLow = ({ kind }: PlanShape): boolean => kind === 'counter' || kind === 'island';
  return {
    width_mm: room.width,
    depth_mm: room.depth,
    shapes: [
      ...blocks.filter(isLow),
      ...waterfallEnds(plan).map((end) => shapeOf('waterfall', end)),
      ...bowlExtents(plan).map((bowl) => shapeOf('sink', solidAt(sinkSide(plan), bowl))),
      shapeOf('cooktop', { min, max }),
      ...blocks.filter((block) => !isLow(block)),
    ],
    openings: kitchen.openings.map(({ id, wall, center, width }) => ({
      id,
      wall,
      from: center - width / 2,
      to: center + width / 2,
    })),
    door: doorOf(kitchen),
    openSide: open_side && {
      wall: open_side.wall,
      from: open_side.from,
      to: open_side.to,
      next_depth_mm: open_side.next_depth,
    },
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

/** Its lever is at the low end: it hangs at the other. */
function doorOf({ room, door }: Kitchen): PlanDrawing['door'] {
  const to = room.width - door.from_right;
  return { from: to - door.width, to, swing: { hinge: [to, 0], open: [to, door.width] } };
}

function shapeOf(kind: PlanShape['kind'], { min, max }: Solid): PlanShape {
  return { kind, x: mm(min[0]), y: mm(min[1]), width: mm(max[0] - min[0]), depth: mm(max[1] - min[1]) };
}

/** Metres as whole tenths of a millimetre. */
const mm = (m: number): number => Math.round(m * 1e4) / 10;
