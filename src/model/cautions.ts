import type { FinishClass } from '../engine/finish/types';
import type { Assessment } from '../engine/judge/assessment';
import type { SurfaceId } from '../engine/surface';
import type { Finish, Option, Project } from './project';

/** Something to heed before ordering. For `low-vision`: which surfaces meet, and by how much LRV they differ. */
export type Caution =
  | { readonly code: 'dust' | 'heat' | 'slip' | 'glare' }
  | {
      readonly code: 'low-vision';
      readonly surfaces: readonly [SurfaceId, SurfaceId];
      readonly stepLrv: number;
    };

/** Classes that give off silica dust when cut. */
const DUSTY: readonly FinishClass[] = ['stone', 'engineered', 'porcelain'];
/** Floors that can be slippery when wet. */
const HARD: readonly FinishClass[] = ['stone', 'engineered', 'porcelain', 'glazed'];
/** From here on a surface counts as polished (MPI gloss levels: G6 starts at 70 units at 60 degrees). */
const POLISHED_GU = 70;
/** Light reflectance difference that adjoining surfaces should have (BS 8300-2; written for buildings other than homes). */
const VISIBLE_STEP_LRV = 20;

/** Pairs that meet along an edge one walks into or works at. */
const EDGES: readonly (readonly [SurfaceId, SurfaceId])[] = [
  ['counter', 'floor'],
  ['floor', 'base-fronts'],
  ['counter', 'base-fronts'],
  ['floor', 'wall'],
];

/** What to heed before ordering, from what is laid and what the room holds. The standing lines are not among them. */
export function cautionsFor(project: Project, option: Option, assessment: Assessment | null): readonly Caution[] {
  const laid = (surface: SurfaceId): Finish | undefined =>
    project.library.find((finish) => finish.id === option.scheme[surface].finish);
  const counters = [laid('counter'), laid('island-counter')].filter((finish) => finish !== undefined);
  const floor = laid('floor');
  const cautions: Caution[] = [];
  if (counters.some((finish) => DUSTY.includes(finish.class))) {
    cautions.push({ code: 'dust' });
  }
  // Every kitchen has a place to cook.
  cautions.push({ code: 'heat' });
  if (floor && HARD.includes(floor.class)) cautions.push({ code: 'slip' });
  if (counters.some((finish) => finish.gloss_gu >= POLISHED_GU)) {
    cautions.push({ code: 'glare' });
  }
  return [...cautions, ...weakEdges(assessment)];
}

function weakEdges(assessment: Assessment | null): readonly Caution[] {
  if (!assessment) return [];
  const lrvOf = (surface: SurfaceId) => assessment.surfaces.find((one) => one.surface === surface)?.average.lrv;
  return EDGES.flatMap(([a, b]): readonly Caution[] => {
    const [lrvA, lrvB] = [lrvOf(a), lrvOf(b)];
    if (lrvA === undefined || lrvB === undefined) return [];
    const step = Math.abs(lrvA - lrvB);
    if (step >= VISIBLE_STEP_LRV) return [];
    return [{ code: 'low-vision', surfaces: [a, b], stepLrv: step }];
  });
}
