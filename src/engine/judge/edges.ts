import { lrvFromReflectance } from '../color/lrv';
import { averageComponent } from '../finish/average';
import type { LaidFinish } from '../finish/types';
import type { SurfaceId } from '../surface';
import type { Severity } from './assessment';
import type { JudgeInput } from './input';
import { inDecisionOrder, joined, surfacesPhrase } from './surface-words';

/**
 * LRV differences, points 0-100 (BS 8300-2:2018 Annex B, as quoted): 30 wanted, 20 may do in good light. The standard is
 * written for buildings other than homes; that it serves for edges in a kitchen is our judgment.
 */
export const EDGE = { wanted: 30, least: 20 } as const;

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

/** Two finishes that meet along an edge, with the light reflectance of both. */
export interface Edge {
  /** Same two finishes, same key: one finding, wherever they meet. */
  readonly key: string;
  readonly first: readonly SurfaceId[];
  readonly second: readonly SurfaceId[];
  readonly finishes: readonly [LaidFinish, LaidFinish];
  readonly lrv: readonly [number, number];
}

export interface WeakEdge extends Edge {
  readonly difference: number;
  /** Bowman-Sapolinski contrast, percent. */
  readonly contrast: number;
  readonly severity: Severity;
}

/**
 * Bowman-Sapolinski luminance contrast of two LRV (0-100), percent: 125 |Y2 - Y1| / (Y1 + Y2 + 25).
 * AS 1428.1 asks for 30 between building elements.
 */
export const bowmanSapolinski = (y1: number, y2: number): number => (125 * Math.abs(y2 - y1)) / (y1 + y2 + 25);

/** Below 20 points visible, below 30 a note, else no weak edge. */
export function edgeSeverity(difference: number): Severity | null {
  if (difference < EDGE.least) return 'visible';
  return difference < EDGE.wanted ? 'note' : null;
}

/** Every edge of the kitchen between different finishes, merged where the same two finishes meet. */
function edgesOf(input: JudgeInput): Edge[] {
  const bySurface = new Map(input.surfaces.map((s) => [s.surface, s.finish]));
  const merged = new Map<string, { first: SurfaceId[]; second: SurfaceId[]; finishes: [LaidFinish, LaidFinish] }>();
  for (const [one, other] of EDGES) {
    const a = bySurface.get(one);
    const b = bySurface.get(other);
    if (!a || !b || a.id === b.id) continue;
    const key = `${a.id}|${b.id}`;
    const edge = merged.get(key);
    if (edge) {
      edge.first.push(one);
      edge.second.push(other);
    } else merged.set(key, { first: [one], second: [other], finishes: [a, b] });
  }
  return [...merged].map(([key, { first, second, finishes }]) => ({
    key,
    first: inDecisionOrder(first),
    second: inDecisionOrder(second),
    finishes,
    lrv: [meanLrv(finishes[0]), meanLrv(finishes[1])],
  }));
}

const meanLrv = (finish: LaidFinish): number => lrvFromReflectance(averageComponent(finish.components).spectrum);

/** Edges that may be hard to see, from area means, matt, dry and in one light. */
export function weakEdges(input: JudgeInput): WeakEdge[] {
  return edgesOf(input).flatMap((edge) => {
    const difference = Math.abs(edge.lrv[0] - edge.lrv[1]);
    const severity = edgeSeverity(difference);
    return severity ? [{ ...edge, difference, contrast: bowmanSapolinski(...edge.lrv), severity }] : [];
  });
}

/** "the floor", "the base fronts and the tall fronts": both sides of an edge, named. */
export const edgePhrase = (edge: Edge): string =>
  joined([surfacesPhrase(edge.first).text, surfacesPhrase(edge.second).text]);
