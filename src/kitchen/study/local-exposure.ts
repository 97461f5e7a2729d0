import type { Matrix3 } from '../../engine/color/types';
import { exposedColor } from './component-colors';
import type { SettingLight } from './setting-light';

/**
 * By how much the picture darkens a place, at least 1: where a perfect white would be brighter than display white in the direct
 * light there, the place is shown as if it were just that bright. In a patch of sun, or close under a strip, hue, saturation and
 * pattern so stay to be seen, as to an eye that looks there; elsewhere nothing changes. The shader does the same.
 * @param direct direct light of the place, lx per group at level 1
 */
export function localExposure(setting: SettingLight, exposure: Matrix3, direct: ArrayLike<number>): number {
  const white = [0, 0, 0];
  setting.levels.forEach((level, group) => {
    if (level === 0) return;
    const color = exposedColor(setting.spectra[group]!, null, exposure);
    for (let k = 0; k < 3; k++) white[k]! += level * direct[group]! * color[k]!;
  });
  return Math.max(1, ...white);
}
