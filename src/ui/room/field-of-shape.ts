import type { ElevationShape } from '../../kitchen/plan/elevation-drawing';
import type { Kitchen, Wall } from '../../model/kitchen';
import { wallAxis } from './wall-axis';

/** The field that sets what a shape of an elevation shows; null where none does. */
export function fieldOfShape(kitchen: Kitchen, wall: Wall, { kind, x, width }: ElevationShape): string | null {
  const run = kitchen.runs.findIndex((one) => one.wall === wall);
  switch (kind) {
    case 'wall':
      return 'room.height';
    case 'front':
    case 'drawer':
    case 'filler':
    case 'panel':
    case 'side':
      return 'base.carcass_height';
    case 'oven':
      return 'cooktop.oven_below';
    case 'fridge':
      return 'fridge';
    case 'dishwasher':
      return 'dishwasher';
    case 'sink':
      return 'sink.center';
    case 'cooktop':
      return 'cooktop.center';
    case 'hood':
      return 'cooktop.hood';
    case 'counter-edge':
      return 'counter.thickness';
    case 'backsplash':
      return `runs[${run}].splash`;
    case 'shelf':
      return `runs[${run}].over`;
    case 'upstand':
      return 'upstand_height';
    case 'wall-unit':
      return 'wall_units.height';
    case 'plinth':
      return 'base.plinth_height';
    case 'tall':
      return 'tall_height';
    case 'open-side':
      return 'open_side.from';
    case 'window':
    case 'door':
      return openingAt(kitchen, wall, x + width / 2);
  }
}

/** The opening of a wall over a place of its elevation; else the door. */
function openingAt(kitchen: Kitchen, wall: Wall, x: number): string | null {
  const along = wallAxis(kitchen, wall).turn(x);
  const at = kitchen.openings.findIndex((one) => one.wall === wall && Math.abs(one.center - along) <= one.width / 2);
  if (at >= 0) return `openings[${at}].center`;
  return wall === 'front' ? 'door.from_right' : null;
}
