import { adaptationMatrix } from '../../engine/color/adapt';
import { linearSrgbFromXyzD65 } from '../../engine/color/display';
import { multiply } from '../../engine/color/matrix3';
import type { Matrix3 } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';

/** Linear display value of a perfect white on the worktop of the reference room: leaves room for brighter places. */
const WORKTOP_WHITE = 0.9;

/**
 * From XYZ of reflected light (Y in lx, i.e. pi times luminance) to exposed, adapted linear sRGB (1 = display white):
 * CAT16 from the adopted white to D65 at D = 1, then one factor from the setting's reference illuminance. It depends on
 * room and lamps only, so options share it and a changed finish never changes the exposure.
 */
export function exposureMatrix(study: RoomBasis, setting: SettingLight): Matrix3 {
  const lx = setting.levels.reduce((sum, level, group) => sum + level * study.referenceLx[group]!, 0);
  const adapt = adaptationMatrix(adoptedWhite(setting, study.worktopDirect), D65_2);
  const display = multiply(DISPLAY, adapt);
  const factor = lx > 0 ? WORKTOP_WHITE / lx : 0;
  return display.map((value) => value * factor) as unknown as Matrix3;
}

/** Linear sRGB from XYZ D65 as a matrix, Y = 1 for display white. */
const DISPLAY: Matrix3 = (() => {
  const [x, y, z] = [
    linearSrgbFromXyzD65({ x: 100, y: 0, z: 0 }),
    linearSrgbFromXyzD65({ x: 0, y: 100, z: 0 }),
    linearSrgbFromXyzD65({ x: 0, y: 0, z: 100 }),
  ];
  return [x.r, y.r, z.r, x.g, y.g, z.g, x.b, y.b, z.b];
})();
