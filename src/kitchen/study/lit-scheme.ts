import { BAND_COUNT } from '../../engine/light/bands';
import { gatherNodes, type NodeGather } from '../../engine/light/nodes';
import type { RoomBasis } from './room-study';
import type { SolvedScheme } from './solved-scheme';

/** A solved scheme with the light at every display node and prop vertex, per group: samples x BAND_COUNT. */
export interface LitScheme {
  readonly solved: SolvedScheme;
  /** The nodes the light was gathered at. */
  readonly nodes: NodeGather;
  readonly nodeLight: (Float32Array | null)[];
  readonly propLight: (Float32Array | null)[];
}

export const beginLight = (basis: RoomBasis, solved: SolvedScheme): LitScheme => ({
  solved,
  nodes: basis.nodes,
  nodeLight: solved.radiosity.map(() => null),
  propLight: solved.radiosity.map(() => null),
});

/** Gathers one solved group; groups not solved yet are left alone. */
export function gatherGroup(basis: RoomBasis, lit: LitScheme, group: number): void {
  const radiosity = lit.solved.radiosity[group];
  if (!radiosity || lit.nodeLight[group]) return;
  lit.nodeLight[group] = gatherNodes(basis.nodes, radiosity, BAND_COUNT);
  lit.propLight[group] = gatherNodes(basis.props, radiosity, BAND_COUNT);
}
