import { BAND_COUNT } from '../../engine/light/bands';
import { gatherNodes } from '../../engine/light/nodes';
import type { RoomStudy } from './room-study';
import type { SolvedScheme } from './solved-scheme';

/** A solved scheme with the light at every display node and prop vertex, per group: samples x BAND_COUNT. */
export interface LitScheme {
  readonly solved: SolvedScheme;
  readonly nodeLight: (Float32Array | null)[];
  readonly propLight: (Float32Array | null)[];
}

export const beginLight = (solved: SolvedScheme): LitScheme => ({
  solved,
  nodeLight: solved.radiosity.map(() => null),
  propLight: solved.radiosity.map(() => null),
});

/** Gathers one solved group; groups not solved yet are left alone. */
export function gatherGroup(study: RoomStudy, lit: LitScheme, group: number): void {
  const radiosity = lit.solved.radiosity[group];
  if (!radiosity || lit.nodeLight[group]) return;
  lit.nodeLight[group] = gatherNodes(study.nodes, radiosity, BAND_COUNT);
  lit.propLight[group] = gatherNodes(study.props, radiosity, BAND_COUNT);
}
