import type { Matrix3 } from '../../engine/color/types';
import { exposedColor } from './component-colors';
import type { SettingLight } from './setting-light';

/**
 * Where a perfect white would be brighter than display white in the direct light of a place, what it is over counts by this power:
 * twenty times over looks one and a half times over (our judgment, by eye; 0 would make a patch of sun look no brighter than the shade).
 */
const OVER_POWER = 0.15;

/** What is over divides by itself to this power; the shader takes it from here. */
export const DARKENING_POWER = 1 - OVER_POWER;

/**
 * By how much the picture darkens a place, at least 1: where white would burn out in the direct light there, as an eye adapts to
 * what it looks at. In a patch of sun, or close under a strip, hue, saturation and pattern so stay to be seen; elsewhere nothing
 * changes. The shader does the same.
 * @param direct direct light of the place, lx per group at level 1
 */
export function localExposure(setting: SettingLight, exposure: Matrix3, direct: ArrayLike<number>): number {
  const white = [0, 0, 0];
  setting.levels.forEach((level, group) => {
    if (level === 0) return;
    const color = exposedColor(setting.spectra[group]!, null, exposure);
    for (let k = 0; k < 3; k++) white[k]! += level * direct[group]! * color[k]!;
  });
  return Math.max(1, ...white) ** DARKENING_POWER;
}

/** The same for what is outside a window (our judgment, by eye: the sky still fades to white, the ground shows its color). */
const OUTSIDE_OVER_POWER = 0.25;

/**
 * By how much the picture darkens what is outside, at least 1. `white`: the brightest channel of a perfect white that lies on the open
 * ground, seen through the glass, display white 1. One factor for all of it: sky, skyline and ground keep their contrast.
 */
export const outsideExposure = (white: number): number => Math.max(1, white) ** (1 - OUTSIDE_OVER_POWER);
