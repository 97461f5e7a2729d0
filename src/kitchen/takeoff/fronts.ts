import type { SurfaceId } from '../../engine/surface';
import { type Drawn, furniture } from './drawn';
import { grouped, real } from './measured-parts';
import type { SurfaceTakeoff } from './types';

const FRONTS: readonly SurfaceId[] = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'];

/**
 * Fronts and what is made with them, in the sizes they are drawn in: doors, drawers, panels (of wall units the sides that show),
 * fillers, face frames, light rails, shelves. Carcasses are not: neither their insides nor tops and undersides of wall units.
 */
export function measureFronts(drawn: Drawn): SurfaceTakeoff[] {
  const all = real(furniture(drawn).flatMap(({ made }) => made));
  return FRONTS.flatMap((surface) => {
    const made = all.filter((part) => part.surface === surface);
    if (made.length === 0) return [];
    const area = made.reduce((sum, { length, width }) => sum + length * width, 0);
    return [{ surface, area_m2: area, gross_m2: area, deductions: [], parts: grouped(made) }];
  });
}
