import type { SurfaceId } from '../../engine/surface';
import { drawElevation, drawIsland, type ElevationShape } from '../../kitchen/plan/elevation-drawing';
import type { Kitchen, Wall } from '../../model/kitchen';

/** A rectangle of the flat drawing, mm; x to the right, y down. */
interface FlatShape {
  /** Null: nothing that takes a finish (glass, the next room). */
  readonly surface: SurfaceId | null;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A wall with ceiling and floor, back to front. */
export interface FlatDrawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly FlatShape[];
}

/** Depth of ceiling, floor and counters as drawn, mm: seen from a little above or below, so that flat surfaces show at all. */
const CEILING_STRIP = 160;
const FLOOR_STRIP = 620;
const TOP_STRIP = 90;
/** How far an island stands forward on the floor as drawn, mm. */
const FORWARD = 480;

/** One wall of the kitchen in flat rectangles; before the back wall stands the island. */
export function flatDrawing(kitchen: Kitchen, wall: Wall): FlatDrawing {
  const { width_mm: width, height_mm: height, shapes } = drawElevation(kitchen, wall);
  const floor = CEILING_STRIP + height;
  const island = wall === 'back' ? drawIsland(kitchen) : null;
  return {
    width,
    height: floor + FLOOR_STRIP,
    shapes: [
      ...placed(shapes, 0, floor),
      { surface: 'ceiling', x: 0, y: 0, width, height: CEILING_STRIP },
      { surface: 'floor', x: 0, y: floor, width, height: FLOOR_STRIP },
      ...(island ? placed(island.shapes, kitchen.island?.x ?? 0, floor + FORWARD) : []),
    ],
  };
}

/** Shapes of an elevation on the ground they stand on, each edge of a counter with a strip of its top. */
const placed = (shapes: readonly ElevationShape[], left: number, ground: number): readonly FlatShape[] =>
  shapes.map(({ kind, surface, x, z, width, height }) => {
    const strip = kind === 'counter-edge' && width > height ? TOP_STRIP : 0;
    return { surface, x: left + x, y: ground - z - height - strip, width, height: height + strip };
  });
