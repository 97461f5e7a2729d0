import { differenceCiede2000 } from '../../engine/color/difference';
import { lightnessFromY } from '../../engine/color/lab';
import { xyzFromEmission } from '../../engine/color/xyz';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import type { PlacedSample, Position } from '../stand/types';
import { placeColors } from './place-colors';
import type { LaidScheme } from './scheme';
import { adoptedWhite, type SettingLight } from './setting-light';
import type { LitStand } from './stand-study';

type Triple = readonly [number, number, number];

/** A sample in one position on the stand. */
export interface SampleThere {
  readonly lux: number;
  /** Of its area mean, by eyes used to the light. */
  readonly lab_d65: Triple;
  /** L* of its luminance beside a perfect white that lies on the table: lightness as the eye meets it, light included. */
  readonly lightness: number;
}

/** A sample of an option on the stand: as it lies and as it stands there. */
export interface StandSampleReading {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly label: string;
  /** As it will be in the room, and as it is placed now. */
  readonly position: Position;
  readonly placed: Position;
  readonly flat: SampleThere;
  readonly upright: SampleThere;
  /** CIEDE2000 between both with their lightness as above. */
  readonly between_de00: number;
}

/** The light a stand is to repeat and that it has. */
export interface StandLightReading {
  readonly flat_lux: number;
  readonly upright_lux: number;
  /** Light on a sample that stands on the worktop of the gray room. */
  readonly worktop_upright_lux: number;
}

export interface StandReadings {
  readonly light: StandLightReading;
  readonly samples: readonly StandSampleReading[];
}

/** Below this it is dark. */
const DARK_LX = 0.01;

/** What every sample of an option reads flat and upright on the stand, in the order of deciding; null where it is dark. */
export function readSamples(
  { basis, reached, wanted }: LitStand,
  placed: readonly PlacedSample[],
  scheme: LaidScheme,
  setting: SettingLight,
): StandReadings | null {
  const flat = lightOf(reached.flat, setting);
  const upright = lightOf(reached.upright, setting);
  const flat_lux = luxOf(flat);
  const upright_lux = luxOf(upright);
  if (flat_lux < DARK_LX || upright_lux < DARK_LX) return null;
  const white = adoptedWhite(setting, basis.worktopLight);
  const [readFlat, readUpright] = [placeColors(flat, white), placeColors(upright, white)];
  const there = (light: EmissionSpd, read: typeof readFlat, rho: ReflectanceSpd): SampleThere => {
    const { l, a, b } = read(rho);
    const reflected = xyzFromEmission(emissionSpd(light.map((e, i) => e * rho[i]!)), observer2).y;
    return { lux: luxOf(light), lab_d65: [l, a, b], lightness: lightnessFromY((100 * reflected) / flat_lux) };
  };
  const samples = placed.flatMap((sample): StandSampleReading[] => {
    const laid = scheme.surfaces[SURFACES.indexOf(sample.surface)];
    if (!laid || isEmpty(laid.placement)) return [];
    const lying = there(flat, readFlat, laid.average);
    const standing = there(upright, readUpright, laid.average);
    return [
      {
        surface: sample.surface,
        finish: laid.finish.id,
        label: laid.finish.label,
        position: sample.position,
        placed: sample.placed,
        flat: lying,
        upright: standing,
        between_de00: differenceCiede2000(asSeen(lying), asSeen(standing)),
      },
    ];
  });
  const worktop_upright_lux = luxOf(lightOf(wanted.upright, setting));
  return { light: { flat_lux, upright_lux, worktop_upright_lux }, samples };
}

const asSeen = ({ lightness, lab_d65: [, a, b] }: SampleThere) => ({ l: lightness, a, b });

/** Light of all groups together, W m-2 nm-1. */
function lightOf(lx: ArrayLike<number>, { levels, spectra }: SettingLight): EmissionSpd {
  const sum = spectra[0]!.map(() => 0);
  spectra.forEach((spectrum, group) => {
    const by = levels[group]! * lx[group]!;
    if (by > 0) for (let i = 0; i < sum.length; i++) sum[i]! += by * spectrum[i]!;
  });
  return emissionSpd(sum);
}

const luxOf = (light: EmissionSpd): number => xyzFromEmission(light, observer2).y;
