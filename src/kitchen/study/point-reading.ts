import { differenceCiede2000 } from '../../engine/color/difference';
import { labD65FromReflectance } from '../../engine/color/lab-from-reflectance';
import { apply } from '../../engine/color/matrix3';
import { pictureSrgb8 } from '../../engine/color/picture-light';
import type { White, Xyz } from '../../engine/color/types';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { ComponentRole } from '../../engine/finish/types';
import { BAND_COUNT } from '../../engine/light/bands';
import type { DirectMap } from '../../engine/light/direct-map';
import { CHANNELS, DIRECT_LAYERS } from '../../engine/light/direct-scene';
import type { NodeGather } from '../../engine/light/nodes';
import { installedLab, irradianceSpectrum } from '../../engine/light/reading';
import type { Vec3 } from '../../engine/light/types';
import type { PatternSample } from '../../engine/pattern/sample';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import type { ByLayer } from '../look';
import type { SeenBy } from '../seen-by';
import { exposureMatrix } from './exposure';
import { type LightPart, lightParts } from './light-parts';
import type { LitScheme } from './lit-scheme';
import { localExposure } from './local-exposure';
import type { MirroredReading } from './mirrored-reading';
import { readMirrored } from './read-mirrored';
import type { RoomBasis } from './room-study';
import { sampleAtlas, texelsAround } from './sample-atlas';
import { adoptedWhite, type SettingLight } from './setting-light';

/** The reading of one point, from the same light the picture draws. */
export interface PointReading {
  readonly surface: string;
  /** The component with the greatest weight there. */
  readonly component: ComponentRole;
  readonly lux: number;
  /** The part of it that comes straight from lamps and windows. */
  readonly lux_direct: number;
  /** Where the light comes from, the largest part first. */
  readonly parts: readonly LightPart[];
  readonly lab_d65: readonly [number, number, number];
  /** The reading against the sample of the same spot in daylight. */
  readonly shift_de00: number;
  readonly place_white_lab_d65: readonly [number, number, number];
  /** What the picture shows there without sheen, 8 bit sRGB, and to whom; all else is what an eye used to the light sees. */
  readonly srgb8: readonly [number, number, number];
  /** A perfect white held there, as the same picture would show it. */
  readonly white_srgb8: readonly [number, number, number];
  readonly seen_by: SeenBy;
  /** What it mirrors to the eye; null without an eye, or where it mirrors nothing that counts. */
  readonly mirrored: MirroredReading | null;
}

/** Light and colour at a point of a fine rectangle; null where it is black, dark, or not lit yet. `place`: its pattern there. */
export function readPoint(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap>,
  rect: number,
  u: number,
  v: number,
  place: PatternSample | null,
  eye: Vec3 | null = null,
  seenBy: SeenBy = 'used-to-it',
): PointReading | null {
  const fine = study.room.light.fine[rect];
  const laid = fine ? lit.solved.scheme.surfaces[fine.surface] : undefined;
  if (!fine || !laid) return null;
  const direct = setting.levels.map((_, group) => {
    const layer = DIRECT_LAYERS.findLastIndex(({ firstGroup }) => group >= firstGroup);
    const map = maps[layer];
    const channel = group - DIRECT_LAYERS[layer]!.firstGroup;
    return map ? sampleAtlas(map.atlas, rect, u, v, (texel) => map.data[CHANNELS * texel + channel]!) : 0;
  });
  const indirect = setting.levels.map((level, group) => {
    const light = lit.nodeLight[group];
    return level > 0 && light ? nodeBands(lit.nodes, light, rect, u, v) : null;
  });
  const irradiance = irradianceSpectrum(setting.spectra, setting.levels, direct, indirect);
  const white = xyzFromEmission(irradiance, observer2);
  if (white.y < 0.01) return null;

  const { weights, gain } = place ?? { weights: [1], gain: 1 };
  const rho = mixed(laid.finish.components, weights, gain);
  const component = laid.finish.components[heaviest(weights)]!.role;
  const adopted = adoptedWhite(setting, study.worktopLight);
  const lab = installedLab(irradiance, rho, adopted);
  const placeWhite = installedLab(irradiance, null, adopted);
  const reflected = xyzFromEmission(emissionSpd(irradiance.map((e, i) => e * rho[i]!)), observer2);
  const exposure = exposureMatrix(study, setting, seenBy);
  const over = localExposure(setting, exposure, direct);
  const shown = ({ x, y, z }: Xyz<White>) => {
    const [r, g, b] = apply(exposure, [x / over, y / over, z / over]);
    return pictureSrgb8({ r, g, b });
  };
  const parts = lightParts(
    { direct, gather: nodeRow(study.transport.patches.count, lit.nodes, rect, u, v) },
    study,
    lit.solved,
    setting,
  );
  return {
    surface: laid.surface,
    component,
    lux: white.y,
    lux_direct: setting.levels.reduce((sum, level, group) => sum + level * direct[group]!, 0),
    parts,
    lab_d65: [lab.l, lab.a, lab.b],
    shift_de00: differenceCiede2000(labD65FromReflectance(rho), lab),
    place_white_lab_d65: [placeWhite.l, placeWhite.a, placeWhite.b],
    srgb8: shown(reflected),
    white_srgb8: shown(white),
    seen_by: seenBy,
    // Joints are matt whatever they lie between.
    mirrored:
      eye && component !== 'grout'
        ? readMirrored(study, lit, setting, maps, { rect, u, v, eye }, irradiance, rho)
        : null,
  };
}

/** Indirect light in bands at a point between nodes. */
function nodeBands(nodes: NodeGather, light: Float32Array, rect: number, u: number, v: number): Float64Array {
  const out = new Float64Array(BAND_COUNT);
  for (const [node, weight] of nodesAround(nodes, rect, u, v)) {
    for (let band = 0; band < BAND_COUNT; band++) out[band]! += weight * light[node * BAND_COUNT + band]!;
  }
  return out;
}

/** What the same point sees of the patches: the rows of the nodes around it, by the same weights. */
function nodeRow(patches: number, nodes: NodeGather, rect: number, u: number, v: number): Float64Array {
  const { start, column, value } = nodes.rows;
  const row = new Float64Array(patches);
  for (const [node, weight] of nodesAround(nodes, rect, u, v)) {
    for (let e = start[node]!; e < start[node + 1]!; e++) row[column[e]!]! += weight * value[e]!;
  }
  return row;
}

/** Rows of the nodes around a point and their weights, as the picture has them between nodes. */
function nodesAround(
  { atlas, first }: NodeGather,
  rect: number,
  u: number,
  v: number,
): [node: number, weight: number][] {
  const nu = atlas.blocks[4 * rect + 2]!;
  const nv = atlas.blocks[4 * rect + 3]!;
  return texelsAround(nu, nv, u, v).map(([texel, weight]) => [first[rect]! + texel, weight]);
}

/** Reflectance of a spot: components by weight, lightened or darkened by the pattern's gain. */
function mixed(
  components: readonly { readonly spectrum: ReflectanceSpd }[],
  weights: readonly number[],
  gain: number,
): ReflectanceSpd {
  const first = components[0]!.spectrum;
  return first.map(
    (_, i) => gain * components.reduce((sum, component, c) => sum + (weights[c] ?? 0) * component.spectrum[i]!, 0),
  ) as ReflectanceSpd;
}

const heaviest = (weights: readonly number[]): number => weights.indexOf(Math.max(...weights));
