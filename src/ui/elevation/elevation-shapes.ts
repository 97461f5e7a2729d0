import type { SurfaceId } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';

/** A rectangle of the flat drawing, mm; x to the right, y down. */
interface ElevationShape {
  readonly surface: SurfaceId;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Elevation {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly ElevationShape[];
}

/** Depth of the floor and of the tops as drawn: seen from a little above, so that flat surfaces show at all. */
const FLOOR_STRIP = 620;
const TOP_STRIP = 110;
const CEILING_STRIP = 120;
const TALL_WIDTH = 1200;
const DOOR_MODULE = 600;
const GAP = 6;
const HANDLE = { width: 140, height: 14 };

/** A plain front view of the kitchen, back to front, from its dimensions: every surface that carries a finish shows once. */
export function elevationOf(kitchen: Kitchen): Elevation {
  const { room, base, counter, wall_units, island } = kitchen;
  const floorY = CEILING_STRIP + room.height;
  const shapes: ElevationShape[] = [];
  const put = (surface: SurfaceId, x: number, y: number, width: number, height: number) =>
    shapes.push({ surface, x, y, width, height });

  put('wall', 0, CEILING_STRIP, room.width, room.height);
  put('ceiling', 0, 0, room.width, CEILING_STRIP);
  put('floor', 0, floorY, room.width, FLOOR_STRIP);

  const counterTop = floorY - base.plinth_height - base.carcass_height - counter.thickness;
  const left = TALL_WIDTH;
  const run = room.width - left;
  const splashTop = counterTop - wall_units.gap_above_counter;
  put('backsplash', left, splashTop, run, wall_units.gap_above_counter);
  put('upstand', left, counterTop - kitchen.upstand_height, run, kitchen.upstand_height);
  put('counter', left, counterTop - TOP_STRIP / 2, run, counter.thickness + TOP_STRIP / 2);

  const baseTop = counterTop + counter.thickness;
  fronts('base-fronts', left, baseTop, run, base.carcass_height);
  put('plinth', 0, floorY - base.plinth_height, room.width, base.plinth_height);
  fronts('wall-fronts', left, splashTop - wall_units.height, run, wall_units.height);
  const tallTop = floorY - kitchen.tall_height;
  fronts('tall-fronts', 0, tallTop, TALL_WIDTH, kitchen.tall_height - base.plinth_height);
  put('appliance', DOOR_MODULE + 20, floorY - 1500, DOOR_MODULE - 40, 590);
  put('tap', left + run * 0.4, counterTop - 360, 40, 300);
  put('sink', left + run * 0.4 - 260, counterTop - TOP_STRIP / 2 + 12, 560, 26);

  const islandTop = floorY + FLOOR_STRIP * 0.45 - base.carcass_height;
  const islandX = Math.min(island.x, room.width - island.width);
  put('island-counter', islandX, islandTop - TOP_STRIP, island.width, TOP_STRIP + counter.thickness);
  fronts('island-fronts', islandX + 20, islandTop + counter.thickness, island.width - 40, base.carcass_height);
  return { width: room.width, height: floorY + FLOOR_STRIP, shapes };

  function fronts(surface: SurfaceId, x: number, y: number, width: number, height: number) {
    const count = Math.max(1, Math.round(width / DOOR_MODULE));
    const module = width / count;
    for (let i = 0; i < count; i++) {
      put(surface, x + i * module + GAP / 2, y + GAP / 2, module - GAP, height - GAP);
      if (surface !== 'island-fronts') {
        const handleY = surface === 'wall-fronts' ? y + height - 60 : y + 50;
        put('hardware', x + (i + 0.5) * module - HANDLE.width / 2, handleY, HANDLE.width, HANDLE.height);
      }
    }
  }
}
