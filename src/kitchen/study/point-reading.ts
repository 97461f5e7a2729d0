import { differenceCiede2000 } from '../../engine/color/difference';
import { labD65FromReflectance } from '../../engine/color/lab-from-reflectance';
import { apply } from '../../engine/color/matrix3';
import { pictureSrgb8 } from '../../engine/color/picture-light';
import type { White, Xyz } from '../../engine/color/types';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { ComponentRole } from '../../engine/finish/types';
import type { DirectMap } from '../../engine/light/direct-map';
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
import { lightOnProp, lightOnRect, type PlaceLight, type PropPlace } from './place-light';
import { readMirrored } from './read-mirrored';
import type { RoomBasis } from './room-study';
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
  /** By how much the picture darkens the place, at least 1 (see local-exposure.ts): both of these are that much darker. */
  readonly darkened: number;
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
  const light = lightOnRect(study, lit, setting, maps, rect, u, v);
  return light && readPlace(study, lit, setting, maps, light, place, eye, seenBy);
}

/** The same at a place of a prop. */
export function readPropPoint(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap>,
  onProp: PropPlace,
  place: PatternSample | null,
  eye: Vec3 | null = null,
  seenBy: SeenBy = 'used-to-it',
): PointReading | null {
  const light = lightOnProp(study, lit, setting, onProp);
  return light && readPlace(study, lit, setting, maps, light, place, eye, seenBy);
}

function readPlace(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap>,
  { surface, point, normal, pattern, direct, indirect, gather }: PlaceLight,
  place: PatternSample | null,
  eye: Vec3 | null,
  seenBy: SeenBy,
): PointReading | null {
  const laid = lit.solved.scheme.surfaces[surface];
  if (!laid) return null;
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
  const parts = lightParts({ direct, gather }, study, lit.solved, setting);
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
    darkened: over,
    seen_by: seenBy,
    // Joints are matt whatever they lie between.
    mirrored:
      eye && component !== 'grout'
        ? readMirrored(study, lit, setting, maps, { surface, point, normal, pattern, eye, direct }, irradiance, rho)
        : null,
  };
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
