import { joined, surfaceName } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import type { Kitchen, Run } from '../../model/kitchen';
import type { ScheduleItem } from './types';

export const WALLS = { left: 'left wall', back: 'back wall', right: 'right wall', front: 'wall of the door' } as const;

/** Where in the kitchen an item is, from how the kitchen is laid out. */
export function locationOf(kitchen: Kitchen, surfaces: readonly SurfaceId[]): string {
  return joined([...new Set(surfaces.flatMap((surface) => placesOf(kitchen, surface)))]);
}

/** What an item is, as a part of the kitchen. */
export function elementOf({ surfaces, kind }: Pick<ScheduleItem, 'surfaces' | 'kind'>): string {
  const names = surfaces.map((surface, i) => (i === 0 ? surfaceName(surface) : surfaceName(surface).toLowerCase()));
  return kind === 'grout' ? `Grout of ${joined(surfaces.map((one) => surfaceName(one).toLowerCase()))}` : joined(names);
}

function placesOf(kitchen: Kitchen, surface: SurfaceId): readonly string[] {
  const on = (is: (run: Run) => boolean): readonly string[] => kitchen.runs.filter(is).map(({ wall }) => WALLS[wall]);
  const island = kitchen.island?.joined ? 'peninsula' : 'island';
  switch (surface) {
    case 'counter':
    case 'base-fronts':
      return on(() => true);
    case 'plinth':
    case 'hardware':
      return [...on(() => true), ...(kitchen.island ? [island] : [])];
    case 'island-counter':
    case 'island-fronts':
      return [island];
    case 'upstand':
      return on(({ splash }) => splash === 'upstand');
    case 'backsplash':
      return on(({ splash }) => splash !== 'upstand');
    case 'wall-fronts':
      return on(({ over }) => over !== 'none');
    case 'tall-fronts':
      return on(({ tall_from, tall_to }) => tall_from.length + tall_to.length > 0);
    case 'sink':
    case 'tap':
      return [WALLS[kitchen.sink.run]];
    case 'appliance':
      return [WALLS[kitchen.cooktop.run]];
    case 'floor':
    case 'ceiling':
      return ['whole room'];
    case 'wall':
      return ['all walls'];
    case 'frame':
      return ['openings and door'];
  }
}
