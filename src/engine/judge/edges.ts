import { lrvFromReflectance } from '../color/lrv';
import { averageComponent } from '../finish/average';
import type { LaidFinish } from '../finish/types';
import type { SurfaceId } from '../surface';
import type { Severity } from './assessment';
import type { JudgeInput } from './input';
import { inDecisionOrder, joined, surfacesPhrase } from './surface-words';

/**
 * LRV differences, points 0-100 (BS 8300-2:2018 Annex B, as quoted): 30 wanted, 20 may do in good light. The standard is
 * written for buildings other than homes; that it serves for edges in a kitchen is our judgment. Bowman-Sapolinski contrast,
 * percent (AS 1428.1, as quoted): 30 between building elements.
 */
export const EDGE = { wanted: 30, least: 20, contrast: 30 } as const;

/** Edges that people have to find with the eye: where a counter ends, where the floor does. */
export const EDGES: readonly (readonly [SurfaceId, SurfaceId])[] = [
  ['counter', 'base-fronts'],
  ['island-counter', 'island-fronts'],
  ['floor', 'base-fronts'],
  ['floor', 'tall-fronts'],
  ['floor', 'island-fronts'],
  ['floor', 'plinth'],
  ['floor', 'wall'],
];

/**
 * A counter seen against the floor, at an overhang or an end: the fronts stand between the two in most views, so it counts
 * only for people with low vision, and only where it is weak. Our judgment.
 */
const OVER_FLOOR: readonly (readonly [SurfaceId, SurfaceId])[] = [
  ['counter', 'floor'],
  ['island-counter', 'floor'],
];

/** Fronts that stand on a toe kick where there is one. */
const ON_PLINTH: readonly SurfaceId[] = ['base-fronts', 'tall-fronts', 'island-fronts'];

/** Two surfaces, or several laid alike, that meet along an edge, with the light reflectance of both sides. */
export interface Edge {
  /** Same two finishes, same key: one finding, wherever they meet. */
  readonly key: string;
  readonly first: readonly SurfaceId[];
  readonly second: readonly SurfaceId[];
  readonly finishes: readonly [LaidFinish, LaidFinish];
  /** A counter seen over the floor. */
  readonly isOverFloor: boolean;
  readonly lrv: readonly [number, number];
}

export interface WeakEdge extends Edge {
  readonly difference: number;
  /** Bowman-Sapolinski contrast, percent. */
  readonly contrast: number;
  /** Weak by both measures; else soft. */
  readonly isWeak: boolean;
  readonly severity: Severity;
  /** Someone with low vision uses the kitchen. */
  readonly forLowVision: boolean;
}

/**
 * Bowman-Sapolinski luminance contrast of two LRV (0-100), percent: 125 |Y2 - Y1| / (Y1 + Y2 + 25).
 * AS 1428.1 asks for 30 between building elements.
 */
export const bowmanSapolinski = (y1: number, y2: number): number => (125 * Math.abs(y2 - y1)) / (y1 + y2 + 25);

/**
 * How weak an edge between two LRV (0-100) is: below 20 points visible, below 30 a note, else no weak edge. Where the two
 * measures disagree, 20 points being too few and the Bowman-Sapolinski contrast enough, it is a note: our judgment.
 */
export function edgeSeverity(y1: number, y2: number): Severity | null {
  const difference = Math.abs(y1 - y2);
  if (difference >= EDGE.wanted) return null;
  return difference < EDGE.least && bowmanSapolinski(y1, y2) < EDGE.contrast ? 'visible' : 'note';
}

/** Weighs more for someone who sees badly: one grade. Our judgment. */
const GRAVER: Readonly<Record<Severity, Severity>> = { note: 'visible', visible: 'grave', grave: 'grave' };

/**
 * Edges of the kitchen, those between surfaces of one finish, too. The floor ends at a toe kick of another finish, not at the
 * fronts above it.
 * @param finishOf id of the finish on a surface; undefined where the kitchen has none
 * @param overFloor whether counters seen over the floor count
 */
export function edgesBetween(
  finishOf: (surface: SurfaceId) => string | undefined,
  overFloor: boolean,
): { readonly edge: readonly [SurfaceId, SurfaceId]; readonly isOverFloor: boolean }[] {
  const plinth = finishOf('plinth');
  const isCovered = (front: SurfaceId) =>
    ON_PLINTH.includes(front) && plinth !== undefined && plinth !== finishOf(front);
  return [...EDGES, ...(overFloor ? OVER_FLOOR : [])].flatMap((edge, i) => {
    const [a, b] = edge.map(finishOf);
    if (a === undefined || b === undefined || (edge[0] === 'floor' && isCovered(edge[1]))) return [];
    return [{ edge, isOverFloor: i >= EDGES.length }];
  });
}

/** Every edge of the kitchen that counts, merged where the same two finishes meet. */
function edgesOf(input: JudgeInput): Edge[] {
  const bySurface = new Map(input.surfaces.map((s) => [s.surface, s.finish]));
  const merged = new Map<string, Omit<Edge, 'key' | 'lrv'> & { first: SurfaceId[]; second: SurfaceId[] }>();
  for (const { edge: met, isOverFloor } of edgesBetween((s) => bySurface.get(s)?.id, input.lowVision === true)) {
    const [one, other] = met;
    const a = bySurface.get(one)!;
    const b = bySurface.get(other)!;
    // One finish on both sides is how it was meant; who sees badly still has to find the edge.
    if (a.id === b.id && !input.lowVision) continue;
    const key = JSON.stringify([a.id, b.id, isOverFloor]);
    const edge = merged.get(key);
    if (edge) {
      edge.first.push(one);
      edge.second.push(other);
    } else merged.set(key, { first: [one], second: [other], finishes: [a, b], isOverFloor });
  }
  return [...merged].map(([key, edge]) => ({
    ...edge,
    key,
    first: inDecisionOrder(edge.first),
    second: inDecisionOrder(edge.second),
    lrv: [meanLrv(edge.finishes[0]), meanLrv(edge.finishes[1])],
  }));
}

const meanLrv = (finish: LaidFinish): number => lrvFromReflectance(averageComponent(finish.components).spectrum);

/** Edges that may be hard to see, from area means, matt, dry and in one light; graver for people with low vision. */
export function weakEdges(input: JudgeInput): WeakEdge[] {
  return edgesOf(input).flatMap((edge) => {
    const found = edgeSeverity(...edge.lrv);
    if (!found || (edge.isOverFloor && found === 'note')) return [];
    const plain = edge.isOverFloor ? 'note' : found;
    return [
      {
        ...edge,
        difference: Math.abs(edge.lrv[0] - edge.lrv[1]),
        contrast: bowmanSapolinski(...edge.lrv),
        // What counts under error is how weak it is, not for whom.
        isWeak: found === 'visible',
        severity: input.lowVision ? GRAVER[plain] : plain,
        forLowVision: input.lowVision === true,
      },
    ];
  });
}

/** "the floor", "the base fronts and the tall fronts": both sides of an edge, named. */
export const edgePhrase = (edge: Edge): string =>
  joined([surfacesPhrase(edge.first).text, surfacesPhrase(edge.second).text]);
