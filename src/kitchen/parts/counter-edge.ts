import type { Solid, Vec3 } from '../../engine/light/types';
import type { SurfaceId } from '../../engine/surface';
import type { CounterEdge } from '../../model/kitchen';
import type { Plan } from '../plan/types';

/** A slab of counter, with the axis its pattern runs along. */
export interface Slab {
  readonly box: readonly [min: Vec3, max: Vec3];
  readonly length: 0 | 1;
  readonly surface: SurfaceId;
}

// Measures of counter edges, m. Common practice, no source: a pencil edge is rounded by 1/8 in, a mitred one built up to 60 mm.
const PENCIL = 0.003;
const BEVEL = 0.004;
const MITRED = 0.06;
/** Steps of a quarter circle. */
const STEPS: { readonly [K in CounterEdge]?: number } = { pencil: 4, 'half-bullnose': 6, 'full-bullnose': 6 };

/** A point of an edge's profile: how far in from the front, how far down from the top, its normal, its length along the profile. */
export interface ProfilePoint {
  readonly inward: number;
  readonly down: number;
  readonly normal: readonly [out: number, up: number];
  readonly length: number;
}

/** The edge of one slab. A counter that turns down at its end has square edges, unless they are built up: no other turns a corner. */
export const edgeOf = ({ counter, island }: Plan, { surface }: Pick<Slab, 'surface'>): CounterEdge =>
  surface === 'island-counter' && island?.waterfall !== 'none' && counter.edge !== 'mitred' ? 'eased' : counter.edge;

/** How deep the profile of an edge reaches into the slab; 0 where the edge is square. */
export function profileDepth(edge: CounterEdge, thickness: number): number {
  switch (edge) {
    case 'pencil':
      return Math.min(PENCIL, thickness / 2);
    case 'bevel':
      return Math.min(BEVEL, thickness / 2);
    case 'half-bullnose':
    case 'full-bullnose':
      return thickness / 2;
    case 'eased':
    case 'mitred':
      return 0;
  }
}

/** How far a mitred edge reaches down below the underside of the slab. */
export const counterDrop = ({ counter }: Pick<Plan, 'counter'>): number =>
  counter.edge === 'mitred' ? Math.max(0, MITRED - counter.thickness) : 0;

/**
 * An edge's profile from the top of the slab over its front to its underside, in facets: within each, normals are smooth.
 * Quarter circles (pencil, upper half of a half bullnose), a half circle (full bullnose) or a cut at 45 degrees.
 */
export function edgeProfile(edge: CounterEdge, thickness: number): readonly (readonly ProfilePoint[])[] {
  const r = profileDepth(edge, thickness);
  if (r === 0) return [];
  const steps = STEPS[edge] ?? 0;
  if (edge === 'full-bullnose') return [arc(r, 2 * steps, Math.PI)];
  const turned = edge === 'bevel' ? Math.SQRT2 * r : (Math.PI / 2) * r;
  const front = turned + thickness - r;
  const face = (down: number, length: number): ProfilePoint => ({ inward: 0, down, normal: [1, 0], length });
  const under: ProfilePoint[] = [0, r].map((inward) => ({
    inward,
    down: thickness,
    normal: [0, -1],
    length: front + inward,
  }));
  if (edge !== 'bevel') return [[...arc(r, steps, Math.PI / 2), face(thickness, front)], under];
  const slope: ProfilePoint[] = [r, 0].map((inward) => ({
    inward,
    down: r - inward,
    normal: [Math.SQRT1_2, Math.SQRT1_2],
    length: Math.SQRT2 * (r - inward),
  }));
  return [slope, [face(r, turned), face(thickness, front)], under];
}

/** A circle of radius r from the top outward and down, over `angle`. */
const arc = (r: number, steps: number, angle: number): ProfilePoint[] =>
  Array.from({ length: steps + 1 }, (_, i) => {
    const turn = (angle * i) / steps;
    return {
      inward: r * (1 - Math.sin(turn)),
      down: r * (1 - Math.cos(turn)),
      normal: [Math.sin(turn), Math.cos(turn)],
      length: r * turn,
    };
  });

/** The strips that profiles take from slabs, with some clear before, above and below them. */
export const profileStrips = (plan: Plan, edges: readonly FreeEdge[]): Solid[] =>
  edges.flatMap((edge) => {
    const depth = profileDepth(edgeOf(plan, edge.slab), plan.counter.thickness);
    if (depth === 0) return [];
    const reach = (end: FreeEdge['ends']['from']): number => (end === 'inner' ? depth : 0);
    return [
      stripOf(edge, {
        from: edge.from - reach(edge.ends.from),
        to: edge.to + reach(edge.ends.to),
        inward: [-CLEAR, depth],
        z: [plan.counter.bottom - CLEAR, plan.counter.top + CLEAR],
      }),
    ];
  });

const CLEAR = 0.01;

/** One side of a slab, or a part of it, that nothing stands against. */
export interface FreeEdge {
  readonly slab: Slab;
  /** The axis it looks along, and which way. */
  readonly normal: 0 | 1;
  readonly sign: 1 | -1;
  /** Its plane, and its range along the other axis. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
  /** How it ends: at another free edge of its slab, in an inner corner with that of another, at something, or in the open. */
  readonly ends: { readonly from: EdgeEnd; readonly to: EdgeEnd };
}

export type EdgeEnd = 'outer' | 'inner' | 'stop' | 'open';

/** A box along an edge: `inward` is a range of distances from its plane into the slab. */
export function stripOf(
  { normal, sign, at }: FreeEdge,
  part: {
    readonly from: number;
    readonly to: number;
    readonly inward: readonly [number, number];
    readonly z: readonly [number, number];
  },
): Solid {
  const p = at - sign * part.inward[0];
  const q = at - sign * part.inward[1];
  const [low, high] = [Math.min(p, q), Math.max(p, q)];
  return normal === 0
    ? { min: [low, part.from, part.z[0]], max: [high, part.to, part.z[1]] }
    : { min: [part.from, low, part.z[0]], max: [part.to, high, part.z[1]] };
}
