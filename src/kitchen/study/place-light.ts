import { BAND_COUNT } from '../../engine/light/bands';
import type { DirectMap } from '../../engine/light/direct-map';
import { CHANNELS, DIRECT_LAYERS } from '../../engine/light/direct-scene';
import type { NodeGather } from '../../engine/light/nodes';
import { directAtVertex } from '../../engine/light/prop-gather';
import { samplePoint } from '../../engine/light/sample-point';
import type { SparseRows, Vec3 } from '../../engine/light/types';
import type { ByLayer } from '../look';
import type { PatternEdges } from './brush-line';
import type { LitScheme } from './lit-scheme';
import { normalOf } from './mirrored-room-of';
import type { RoomBasis } from './room-study';
import { sampleAtlas, texelsAround } from './sample-atlas';
import type { SettingLight } from './setting-light';

/** A place of the room and its light, as the picture has them. */
export interface PlaceLight {
  readonly surface: number;
  readonly point: Vec3;
  readonly normal: Vec3;
  /** How the pattern runs there; null where a prop shows one plain color. */
  readonly pattern: PatternEdges | null;
  /** Direct light, lx per group at level 1. */
  readonly direct: readonly number[];
  /** Indirect light in bands per group at level 1; null where the group is off. */
  readonly indirect: readonly (Float64Array | null)[];
  /** What the place sees of each patch. */
  readonly gather: Float64Array;
}

/** A place on a prop's mesh: between three of its vertices, by weights that sum to 1. */
export interface PropPlace {
  readonly prop: number;
  readonly vertices: readonly [number, number, number];
  readonly weights: readonly [number, number, number];
}

/** Light at (u, v) of a fine rectangle, from direct maps and nodes; null where there is none. */
export function lightOnRect(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap>,
  rect: number,
  u: number,
  v: number,
): PlaceLight | null {
  const fine = study.room.light.fine[rect];
  if (!fine) return null;
  const point = new Float64Array(3);
  samplePoint(fine, u, v, point);
  const direct = setting.levels.map((_, group) => {
    const layer = DIRECT_LAYERS.findLastIndex(({ firstGroup }) => group >= firstGroup);
    const map = maps[layer];
    const channel = group - DIRECT_LAYERS[layer]!.firstGroup;
    return map ? sampleAtlas(map.atlas, rect, u, v, (texel) => map.data[CHANNELS * texel + channel]!) : 0;
  });
  const around = nodesAround(lit.nodes, rect, u, v);
  return {
    surface: fine.surface,
    point: [point[0]!, point[1]!, point[2]!],
    normal: normalOf(fine),
    pattern: {
      edges: [fine.u, fine.v],
      onPattern: [
        [fine.pattern.su, fine.pattern.tu],
        [fine.pattern.sv, fine.pattern.tv],
      ],
    },
    direct,
    ...indirectOf(study, setting, lit.nodeLight, lit.nodes.rows, around),
  };
}

/** Light on a prop, from its vertices; null where there is no such prop. */
export function lightOnProp(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  { prop, vertices, weights }: PropPlace,
): PlaceLight | null {
  const { light } = study.room;
  const mesh = light.props[prop];
  const first = study.props.first[prop];
  if (!mesh || first === undefined || vertices.some((vertex) => vertex >= mesh.positions.length / 3)) return null;
  const mean = (values: ArrayLike<number>): Vec3 =>
    [0, 1, 2].map((k) =>
      vertices.reduce((sum, at, i) => sum + weights[i]! * values[3 * at + k]!, 0),
    ) as unknown as Vec3;
  const normal = mean(mesh.normals);
  const length = Math.hypot(...normal) || 1;
  const lit3 = vertices.map((vertex) => directAtVertex(light, study.transport, prop, vertex));
  return {
    surface: mesh.surface,
    point: mean(mesh.positions),
    normal: normal.map((x) => x / length) as unknown as Vec3,
    pattern: mesh.pattern ? edgesOf(mesh.positions, mesh.pattern, vertices) : null,
    direct: setting.levels.map((_, group) => lit3.reduce((sum, lx, i) => sum + weights[i]! * lx[group]!, 0)),
    ...indirectOf(
      study,
      setting,
      lit.propLight,
      study.props.rows,
      vertices.map((vertex, i) => [first + vertex, weights[i]!]),
    ),
  };
}

function edgesOf(positions: Float32Array, pattern: Float32Array, [a, b, c]: PropPlace['vertices']): PatternEdges {
  const edge = (to: number): Vec3 =>
    [0, 1, 2].map((k) => positions[3 * to + k]! - positions[3 * a + k]!) as unknown as Vec3;
  const along = (to: number) =>
    [pattern[2 * to]! - pattern[2 * a]!, pattern[2 * to + 1]! - pattern[2 * a + 1]!] as const;
  return { edges: [edge(b), edge(c)], onPattern: [along(b), along(c)] };
}

type Weighted = readonly (readonly [row: number, weight: number])[];

function indirectOf(
  study: RoomBasis,
  setting: SettingLight,
  light: LitScheme['nodeLight'],
  rows: SparseRows,
  around: Weighted,
): Pick<PlaceLight, 'indirect' | 'gather'> {
  return {
    indirect: setting.levels.map((level, group) => {
      const ofGroup = light[group];
      return level > 0 && ofGroup ? bandsOf(ofGroup, around) : null;
    }),
    gather: rowOf(study.transport.patches.count, rows, around),
  };
}

function bandsOf(light: Float32Array, around: Weighted): Float64Array {
  const out = new Float64Array(BAND_COUNT);
  for (const [row, weight] of around) {
    for (let band = 0; band < BAND_COUNT; band++) out[band]! += weight * light[row * BAND_COUNT + band]!;
  }
  return out;
}

/** What a place sees of the patches: the rows around it, by the same weights. */
function rowOf(patches: number, { start, column, value }: SparseRows, around: Weighted): Float64Array {
  const row = new Float64Array(patches);
  for (const [from, weight] of around) {
    for (let e = start[from]!; e < start[from + 1]!; e++) row[column[e]!]! += weight * value[e]!;
  }
  return row;
}

/** Rows of the nodes around a point and their weights, as the picture has them between nodes. */
function nodesAround({ atlas, first }: NodeGather, rect: number, u: number, v: number): Weighted {
  const nu = atlas.blocks[4 * rect + 2]!;
  const nv = atlas.blocks[4 * rect + 3]!;
  return texelsAround(nu, nv, u, v).map(([texel, weight]) => [first[rect]! + texel, weight]);
}
