import type { FineRect } from '../engine/light/types';
import { SURFACES } from '../engine/surface';
import type { Kitchen } from '../model/kitchen';
import { type BeamRecord, GROUPS } from '../model/project';
import { buildCoarse } from './coarse';
import { meetingSurfaces } from './edges';
import { buildFine } from './fine';
import { blindCloths } from './parts/blinds';
import { lampFaces } from './parts/lamps';
import { windowApertures } from './parts/window';
import { planKitchen } from './plan/plan-kitchen';
import type { Plan } from './plan/types';
import { detailProps, detailShades } from './props/detail-props';
import type { Room } from './types';
import { eyeLimits, viewpoints } from './viewpoints';

/**
 * Builds a kitchen: geometry for light and for the picture, lamps, windows and viewpoints, in m.
 * Expects a kitchen whose parts fit its room (see checkKitchen).
 */
export function buildRoom(kitchen: Kitchen, beams: readonly BeamRecord[] = []): Room {
  const plan = planKitchen(kitchen);
  const fine = buildFine(plan);
  return {
    light: {
      surfaces: SURFACES,
      groups: GROUPS,
      coarse: buildCoarse(plan).rects,
      fine: fine.rects,
      lamps: lampFaces(plan, beams),
      windows: windowApertures(plan),
      blinds: blindCloths(plan),
      props: detailProps(plan, fine),
      shades: detailShades(plan),
      worktop: worktopIndices(fine.rects, plan),
    },
    surfaces: SURFACES,
    viewpoints: viewpoints(plan),
    eyeLimits: eyeLimits(plan),
    size: [plan.width, plan.depth, plan.height],
    edges: meetingSurfaces(fine.rects),
  };
}

/** The tops of the counters on the walls, where one works. */
function worktopIndices(rects: readonly FineRect[], plan: Plan): number[] {
  const counter = SURFACES.indexOf('counter');
  return rects.flatMap(({ surface, origin, u, v }, index) => {
    const up = u[0] * v[1] - u[1] * v[0] > 0;
    return surface === counter && up && Math.abs(origin[2] - plan.counter.top) < 1e-6 ? [index] : [];
  });
}
