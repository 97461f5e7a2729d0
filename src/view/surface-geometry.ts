import { BufferAttribute, BufferGeometry } from 'three';
import type { AtlasLayout, FineRect, LightRoom } from '../engine/light/types';
import { piecesOf } from '../kitchen/study/lay-pattern';
import { cornersByLine, cornersOf, edgeLine, STEPS_PER_M, stepsOf } from './edge-lines';
import { rectNormal } from './rect-normal';

/** Faces narrower than this show no mirrored light: at most a pixel or two wide, it would only glitter. */
const LEAST_MIRROR_M = 0.021;

/** What a vertex carries: place, normal, pattern coordinates (m), its piece counted among the surface's, and where it reads the two light atlases. */
class VertexLists {
  readonly positions: number[] = [];
  readonly normals: number[] = [];
  readonly patternMetres: number[] = [];
  readonly pieces: number[] = [];
  readonly directUv: number[] = [];
  readonly nodeUv: number[] = [];
  readonly indices: number[] = [];

  get count(): number {
    return this.positions.length / 3;
  }

  toGeometry(): BufferGeometry {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(this.positions), 3));
    geometry.setAttribute('normal', new BufferAttribute(new Int8Array(this.normals), 4, true));
    geometry.setAttribute('patternMetres', new BufferAttribute(new Float32Array(this.patternMetres), 2));
    geometry.setAttribute('piece', new BufferAttribute(new Float32Array(this.pieces), 1));
    geometry.setAttribute('directUv', new BufferAttribute(new Float32Array(this.directUv), 2));
    geometry.setAttribute('nodeUv', new BufferAttribute(new Float32Array(this.nodeUv), 2));
    geometry.setIndex(new BufferAttribute(new Uint32Array(this.indices), 1));
    return geometry;
  }
}

/**
 * One geometry per surface of the room (null where a surface has no rectangle), and one for what is black, last.
 * Neighbouring rectangles share every corner on their common edges, so no background shows between them.
 */
export function surfaceGeometries(
  room: LightRoom,
  directAtlas: AtlasLayout,
  nodeAtlas: AtlasLayout,
): readonly (BufferGeometry | null)[] {
  const lists = Array.from({ length: room.surfaces.length + 1 }, () => new VertexLists());
  const pieces = room.surfaces.map((_, surface) => piecesOf(room.fine.filter((rect) => rect.surface === surface)));
  const corners = cornersByLine(room.fine);
  room.fine.forEach((rect, index) => {
    const list = lists[rect.surface < 0 ? room.surfaces.length : rect.surface]!;
    addRect(list, rect, index, pieces[rect.surface]?.indexOf(rect.piece) ?? 0, corners, directAtlas, nodeAtlas);
  });
  return lists.map((list) => (list.count > 0 ? list.toGeometry() : null));
}

function addRect(
  list: VertexLists,
  rect: FineRect,
  index: number,
  piece: number,
  corners: ReadonlyMap<string, readonly number[]>,
  directAtlas: AtlasLayout,
  nodeAtlas: AtlasLayout,
): void {
  const narrow = Math.min(Math.hypot(...rect.u), Math.hypot(...rect.v)) < LEAST_MIRROR_M;
  const normal = [...rectNormal(rect).map((c) => Math.round(c * 127)), narrow ? 0 : 127];
  const { pattern } = rect;
  const first = list.count;
  const put = (u: number, v: number): void => {
    for (let k = 0; k < 3; k++) {
      list.positions.push(stepsOf(rect.origin[k]! + u * rect.u[k]! + v * rect.v[k]!) / STEPS_PER_M);
    }
    list.normals.push(...normal);
    list.patternMetres.push(pattern.s0 + u * pattern.su + v * pattern.sv, pattern.t0 + u * pattern.tu + v * pattern.tv);
    list.pieces.push(piece);
    putAtlasUv(list.directUv, directAtlas, index, u, v);
    putAtlasUv(list.nodeUv, nodeAtlas, index, u, v);
  };

  const outline = outlineWithNeighbours(rect, corners);
  if (outline.length === 4) {
    for (const [u, v] of outline) put(u, v);
    list.indices.push(first, first + 1, first + 2, first, first + 2, first + 3);
    return;
  }
  put(0.5, 0.5);
  for (const [u, v] of outline) put(u, v);
  for (let i = 0; i < outline.length; i++) {
    list.indices.push(first, first + 1 + i, first + 1 + ((i + 1) % outline.length));
  }
}

/** Texture coordinates of a point of a rectangle: blocks include both ends of an edge; one sample is constant. */
function putAtlasUv(into: number[], atlas: AtlasLayout, index: number, u: number, v: number): void {
  const [x, y, alongU, alongV] = atlas.blocks.subarray(4 * index, 4 * index + 4) as unknown as number[];
  into.push((x! + 0.5 + u * (alongU! - 1)) / atlas.width, (y! + 0.5 + v * (alongV! - 1)) / atlas.height);
}

/** The outline of a rectangle as (u, v) in 0-1, counter-clockwise from outside, with the corners of its neighbours on it. */
function outlineWithNeighbours(
  rect: FineRect,
  corners: ReadonlyMap<string, readonly number[]>,
): readonly (readonly [number, number])[] {
  const outline: [number, number][] = [];
  const places = cornersOf(rect);
  const coordinates = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  for (let i = 0; i < 4; i++) {
    const start = coordinates[i]!;
    const end = coordinates[(i + 1) % 4]!;
    outline.push([start[0], start[1]]);
    const edge = edgeLine(places[i]!, places[(i + 1) % 4]!);
    const between = (corners.get(edge.line) ?? []).filter((step) => step > edge.from && step < edge.to);
    const forward = stepsOf(places[i]![edge.axis]!) === edge.from;
    for (const step of forward ? between : [...between].reverse()) {
      const along = (step - edge.from) / (edge.to - edge.from);
      const f = forward ? along : 1 - along;
      outline.push([start[0] + f * (end[0] - start[0]), start[1] + f * (end[1] - start[1])]);
    }
  }
  return outline;
}
