import { adaptXyz } from '../../engine/color/adapt';
import { differenceCiede2000 } from '../../engine/color/difference';
import { labD65FromXyzD65 } from '../../engine/color/lab';
import type { Lab, White, Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { xyzFromEmission } from '../../engine/color/xyz';
import { bodySpectrum } from '../../engine/sheen/sheen';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import { type MirroredLight, veilOver } from './mirrored';

/** What a mirror does to the colour one sees. */
export type VeilLevel = 'not-seen' | 'changes-color' | 'hides-color';

/** A colour as an eye sees it at one place with what the surface mirrors there. */
export interface VeiledReading {
  /** Beside a perfect matt white held there: its lightness may pass 100 where a lamp or the sky mirrors. */
  readonly lab_d65: readonly [number, number, number];
  /** From the reading without the mirror to this. */
  readonly shift_de00: number;
  readonly level: VeilLevel;
  /** Luminance of the veil over that of the perfect white there. */
  readonly veil: number;
}

/** Half of the observers see a difference from here on (Paravina et al. 2015, see ../../engine/change/limits.ts). */
const SEEN_DE00 = 0.8;

/** A veil this many times as bright as what the body sends hides its colour. Our judgment. */
const HIDING = 1;

/**
 * The colour of a place of reflectance `rho` under `irradiance` (W m-2 nm-1) with what it mirrors, and how far that is from the
 * reading without, which takes the whole reflectance as matt. The white is the same for both and has no veil. The place must be lit.
 */
export function veiledReading(
  irradiance: EmissionSpd,
  rho: ReflectanceSpd,
  mirrored: MirroredLight,
  adoptedWhite: Xyz<White>,
): VeiledReading {
  const white = xyzFromEmission(irradiance, observer2).y;
  const lab = (light: EmissionSpd) => labBeside(white, light, adoptedWhite);
  const body = bodySpectrum(mirrored.split, rho);
  const veil = veilOver(mirrored, rho);
  const without = lab(emissionSpd(irradiance.map((e, i) => e * rho[i]!)));
  const ownLight = emissionSpd(irradiance.map((e, i) => e * body[i]!));
  const veiled = lab(emissionSpd(ownLight.map((e, i) => e + veil[i]!)));
  const shift = differenceCiede2000(without, veiled);
  const veilY = xyzFromEmission(veil, observer2).y;
  const hides = veilY > HIDING * xyzFromEmission(ownLight, observer2).y;
  return {
    lab_d65: [veiled.l, veiled.a, veiled.b],
    shift_de00: shift,
    level: shift < SEEN_DE00 ? 'not-seen' : hides ? 'hides-color' : 'changes-color',
    veil: veilY / white,
  };
}

/** Colour of light from a place whose perfect white has luminance `white` on the same scale, adapted as `installedLab` does. */
function labBeside(white: number, light: EmissionSpd, adoptedWhite: Xyz<White>): Lab<'D65-2'> {
  const { x, y, z } = xyzFromEmission(light, observer2);
  const k = 100 / white;
  const by = 100 / adoptedWhite.y;
  const from: Xyz<White> = { x: by * adoptedWhite.x, y: 100, z: by * adoptedWhite.z };
  return labD65FromXyzD65(adaptXyz<'D65-2'>({ x: k * x, y: k * y, z: k * z } as Xyz<'setting-2'>, from, D65_2));
}
