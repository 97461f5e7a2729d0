import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import { edgeOf, edgeProfile, type FreeEdge, type ProfilePoint, profileDepth } from '../parts/counter-edge';
import { freeEdges } from '../parts/slabs';
import type { Plan } from '../plan/types';
import { emptyMesh, type Mesh, toProp } from './mesh';

/** Light is taken at every vertex: along an edge about this far apart, m. */
const STEP = 0.085;

/** The profiles of the counters' edges; their pattern runs on from the top of the slab. One mesh per finish; none for square edges. */
export function counterEdgeProps(plan: Plan): PropMesh[] {
  const meshes = new Map<SurfaceId, { readonly mesh: Mesh; readonly pattern: number[] }>();
  for (const edge of freeEdges(plan)) {
    const { surface } = edge.slab;
    const facets = edgeProfile(edgeOf(plan, edge.slab), plan.counter.thickness);
    if (facets.length === 0) continue;
    const out = meshes.get(surface) ?? { mesh: emptyMesh(), pattern: [] };
    meshes.set(surface, out);
    for (const facet of [tongue(facets), ...facets]) addFacet(out, plan, edge, facet);
    for (const end of ['from', 'to'] as const) if (edge.ends[end] === 'open') addCap(out, plan, edge, end, facets);
  }
  return [...meshes].map(([surface, { mesh, pattern }]) => ({
    ...toProp(mesh, SURFACES.indexOf(surface), `${surface} edge`),
    pattern: Float32Array.from(pattern),
  }));
}

interface Out {
  readonly mesh: Mesh;
  readonly pattern: number[];
}

/** How far a profile reaches on under the top of the slab, and how far below it, m. */
const TONGUE = { inward: 0.003, down: 0.0003 };

/** A strip under the slab's top where the profile meets it: edge and slab are divided otherwise along their joint, and leave pinholes. */
function tongue(facets: readonly (readonly ProfilePoint[])[]): readonly ProfilePoint[] {
  const first = { ...facets[0]![0]!, normal: [0, 1] } as const;
  return [
    {
      ...first,
      inward: first.inward + TONGUE.inward,
      down: first.down + TONGUE.down,
      length: first.length - TONGUE.inward,
    },
    first,
  ];
}

/** A facet swept along its edge, mitred where the edge turns. */
function addFacet({ mesh, pattern }: Out, plan: Plan, edge: FreeEdge, facet: readonly ProfilePoint[]): void {
  const count = Math.max(1, Math.ceil((edge.to - edge.from) / STEP));
  const first = mesh.positions.length / 3;
  for (let i = 0; i <= count; i++) {
    for (const point of facet) {
      const from = edge.from + turn(edge.ends.from) * point.inward;
      const to = edge.to - turn(edge.ends.to) * point.inward;
      addVertex({ mesh, pattern }, plan, edge, point, from + ((to - from) * i) / count);
    }
  }
  const along = facet.length;
  // Seen from outside, along the edge lies to the left on two of the four sides.
  const isFlipped = (edge.normal === 0) === edge.sign > 0;
  for (let i = 0; i < count; i++) {
    for (let k = 0; k + 1 < along; k++) {
      const a = first + i * along + k;
      const [b, c, d] = [a + 1, a + along, a + along + 1];
      if (isFlipped) mesh.indices.push(a, b, c, b, d, c);
      else mesh.indices.push(a, c, b, b, c, d);
    }
  }
}

/** How much shorter an edge is per depth in: mitred corners. */
const turn = (end: FreeEdge['ends']['from']): number => (end === 'outer' ? 1 : end === 'inner' ? -1 : 0);

function addVertex({ mesh, pattern }: Out, plan: Plan, edge: FreeEdge, point: ProfilePoint, along: number): void {
  const { normal, sign, at, slab } = edge;
  const [out, up] = point.normal;
  const z = plan.counter.top - point.down;
  const across = at - sign * point.inward;
  mesh.positions.push(...(normal === 0 ? [across, along, z] : [along, across, z]));
  mesh.normals.push(...(normal === 0 ? [sign * out, 0, up] : [0, sign * out, up]));
  const depth = profileDepth(edgeOf(plan, slab), plan.counter.thickness);
  const unrolled = at - sign * depth + sign * point.length;
  pattern.push(...(slab.length === normal ? [unrolled, along] : [along, unrolled]));
}

/** The profile's section where it ends in the open. */
function addCap(
  out: Out,
  plan: Plan,
  edge: FreeEdge,
  end: 'from' | 'to',
  facets: readonly (readonly ProfilePoint[])[],
): void {
  const { mesh, pattern } = out;
  const first = mesh.positions.length / 3;
  const depth = profileDepth(edgeOf(plan, edge.slab), plan.counter.thickness);
  // Where facets meet they have a point each.
  const outline = facets.flatMap((facet, i) => (i === 0 ? facet : facet.slice(1)));
  const corner = { inward: depth, down: plan.counter.thickness / 2, normal: [1, 0], length: 0 } as const;
  for (const point of [corner, ...outline]) addVertex({ mesh, pattern }, plan, edge, point, edge[end]);
  const way = end === 'from' ? -1 : 1;
  const normal: Vec3 = edge.normal === 0 ? [0, way, 0] : [way, 0, 0];
  for (let k = 0; k <= outline.length; k++) mesh.normals.splice(3 * (first + k), 3, ...normal);
  const isFlipped = ((edge.normal === 0) === edge.sign > 0) !== way > 0;
  for (let k = 1; k < outline.length; k++) {
    if (isFlipped) mesh.indices.push(first, first + k + 1, first + k);
    else mesh.indices.push(first, first + k, first + k + 1);
  }
}
