import { layoutAtlas } from './atlas';
import { endingEdges, insetFraction } from './edge-inset';
import { finishGather, gatherPoint, startGather } from './gather-rows';
import { lightKernel } from './kernel/kernel';
import { rectNormal } from './rect-bvh';
import { samplePoint } from './sample-point';
import type { Transport } from './transport';
import type { AtlasLayout, LightRoom, Rect, SparseRows } from './types';

export interface NodeOptions {
  /** Largest distance between nodes, m. */
  readonly spacing?: number;
  /** Rays of the final gather per node. */
  readonly rays?: number;
  readonly seed?: number;
}

/** Display nodes over the fine rectangles and what each receives from the patches. */
export interface NodeGather {
  readonly atlas: AtlasLayout;
  /** One row per node: rectangle after rectangle, u fastest within a block. */
  readonly rows: SparseRows;
  /** Per fine rectangle: its first row; one more entry at the end. */
  readonly first: Uint32Array;
}

/** Rays of a node at full quality: fewer leave soft blotches on walls that see a small bright window sill. */
const FINAL_RAYS = 640;
/** Rays of a node for a first picture. */
export const FIRST_RAYS = 64;

/** Rays between two yields: some milliseconds. */
const RAYS_PER_STEP = 6000;

/**
 * Strips are seen as one: along them nodes may stand farther apart. Not where a strip is cut from a wider face: beside the rest
 * of it, it would show as a band.
 */
function stretch(rect: Rect, [u0, u1, v0, v1]: readonly boolean[]): number {
  const [long, short] = [Math.hypot(...rect.u), Math.hypot(...rect.v)];
  const isWhole = long > short ? v0 && v1 : u0 && u1;
  if (!isWhole) return 1;
  const width = Math.min(long, short);
  return width < 0.025 ? 3 : width < 0.12 ? 2 : 1;
}

/** Gathers every display node. */
export function buildNodes(room: LightRoom, transport: Transport, options: NodeOptions = {}): NodeGather {
  const steps = buildNodesInSteps(room, transport, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same, yielding the share done every few thousand rays, so that a worker can listen in between. */
export function* buildNodesInSteps(
  room: LightRoom,
  transport: Transport,
  { spacing = 0.2, rays = FINAL_RAYS, seed = 7 }: NodeOptions = {},
): Generator<number, NodeGather> {
  const ends = room.fine.map((_, r) => endingEdges(room.fine, transport.fineBvh, r));
  const atlas = layoutAtlas(room.fine, (rect, r) => spacing * stretch(rect, ends[r]!));
  const gatherer = startGather(room, transport, rays, seed);
  const first = new Uint32Array(room.fine.length + 1);
  const point = new Float64Array(3);
  let count = 0;
  const pace = Math.ceil(RAYS_PER_STEP / rays);
  for (let r = 0; r < room.fine.length; r++) {
    const rect = room.fine[r]!;
    const { axis, sign } = rectNormal(rect);
    const nu = atlas.blocks[4 * r + 2]!;
    const nv = atlas.blocks[4 * r + 3]!;
    const [u0, u1, v0, v1] = ends[r] as readonly [boolean, boolean, boolean, boolean];
    for (let j = 0; j < nv; j++) {
      for (let i = 0; i < nu; i++) {
        samplePoint(rect, insetFraction(i, nu, u0, u1), insetFraction(j, nv, v0, v1), point);
        gatherPoint(
          gatherer,
          point[0]!,
          point[1]!,
          point[2]!,
          axis === 0 ? sign : 0,
          axis === 1 ? sign : 0,
          axis === 2 ? sign : 0,
        );
        if (++count % pace === 0) yield r / room.fine.length;
      }
    }
    first[r + 1] = count;
  }
  return { atlas, rows: finishGather(gatherer), first };
}

/** Indirect light per row and band: row . B. `B` holds `bands` values a patch. */
export function gatherNodes(
  gather: { readonly rows: SparseRows },
  radiosity: Float32Array,
  bands: number,
  out: Float32Array = new Float32Array(gather.rows.count * bands),
): Float32Array {
  lightKernel().gatherRows(gather.rows, radiosity, bands, out);
  return out;
}
