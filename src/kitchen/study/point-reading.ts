import { srgb8FromLinear } from '../../engine/color/display';
import { apply } from '../../engine/color/matrix3';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { ComponentRole } from '../../engine/finish/types';
import { BAND_COUNT } from '../../engine/light/bands';
import type { DirectMap } from '../../engine/light/direct-map';
import { CHANNELS, DIRECT_LAYERS } from '../../engine/light/direct-scene';
import { installedLab, irradianceSpectrum } from '../../engine/light/reading';
import type { PatternSample } from '../../engine/pattern/sample';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import type { ByLayer } from '../look';
import type { SeenBy } from '../seen-by';
import { exposureMatrix } from './exposure';
import type { LitScheme } from './lit-scheme';
import type { RoomBasis } from './room-study';
import { sampleAtlas } from './sample-atlas';
import { adoptedWhite, type SettingLight } from './setting-light';

/** The reading of one point, from the same light the picture draws. */
export interface PointReading {
  readonly surface: string;
  /** The component with the greatest weight there. */
  readonly component: ComponentRole;
  readonly lux: number;
  readonly lab_d65: readonly [number, number, number];
  readonly place_white_lab_d65: readonly [number, number, number];
  /** What the picture shows there without sheen, 8 bit sRGB, and to whom; all else is what an eye used to the light sees. */
  readonly srgb8: readonly [number, number, number];
  readonly seen_by: SeenBy;
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
    return level > 0 && light ? nodeBands(study, light, rect, u, v) : null;
  });
  const irradiance = irradianceSpectrum(setting.spectra, setting.levels, direct, indirect);
  const white = xyzFromEmission(irradiance, observer2);
  if (white.y < 0.01) return null;

  const { weights, gain } = place ?? { weights: [1], gain: 1 };
  const rho = mixed(laid.finish.components, weights, gain);
  const lab = installedLab(irradiance, rho, adoptedWhite(setting, study.worktopDirect));
  const placeWhite = installedLab(irradiance, null, adoptedWhite(setting, study.worktopDirect));
  const reflected = xyzFromEmission(emissionSpd(irradiance.map((e, i) => e * rho[i]!)), observer2);
  const [r, g, b] = apply(exposureMatrix(study, setting, seenBy), [reflected.x, reflected.y, reflected.z]);
  return {
    surface: laid.surface,
    component: laid.finish.components[heaviest(weights)]!.role,
    lux: white.y,
    lab_d65: [lab.l, lab.a, lab.b],
    place_white_lab_d65: [placeWhite.l, placeWhite.a, placeWhite.b],
    srgb8: srgb8FromLinear({ r, g, b }),
    seen_by: seenBy,
  };
}

/** Indirect light in bands at a point between nodes. */
function nodeBands(study: RoomBasis, light: Float32Array, rect: number, u: number, v: number): Float64Array {
  const { atlas, first } = study.nodes;
  const nu = atlas.blocks[4 * rect + 2]!;
  const nv = atlas.blocks[4 * rect + 3]!;
  // Nodes stand rectangle after rectangle: read them as an atlas of this one block.
  const block = { width: nu, height: nv, blocks: Int32Array.of(0, 0, nu, nv) };
  const out = new Float64Array(BAND_COUNT);
  for (let band = 0; band < BAND_COUNT; band++) {
    out[band] = sampleAtlas(block, 0, u, v, (node) => light[(first[rect]! + node) * BAND_COUNT + band]!);
  }
  return out;
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
