import { adaptationDegree } from '../../engine/appearance/viewing-conditions';
import { adaptationMatrix } from '../../engine/color/adapt';
import { linearSrgbFromXyzD65 } from '../../engine/color/display';
import { apply, multiply } from '../../engine/color/matrix3';
import type { Matrix3 } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import type { SeenBy } from '../seen-by';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';

/**
 * White paint reaches display white in the brightest places seen, this share of the overviews: what is brighter still (the
 * counter under the window, the tile under a strip) clips, as it would in a photograph, and the rest keeps its lightness.
 */
const BRIGHTEST_SHARE = 0.05;
const WHITE_PAINT = 0.85;

/**
 * From XYZ of reflected light (Y in lx, i.e. pi times luminance) to exposed, adapted linear sRGB (1 = display white):
 * CAT16 from the adopted white to D65 as far as `seenBy` is adapted, then one factor per setting, from the light on what the
 * overviews show of a room of standard reflectances. It depends on room and lamps only, so options share it and a changed
 * finish never moves it. Where white keeps a tint, its strongest channel reaches display white, so that no more clips than
 * in the neutral picture.
 */
export function exposureMatrix(basis: RoomBasis, setting: SettingLight, seenBy: SeenBy = 'used-to-it'): Matrix3 {
  const bright = brightestLx(basis.referenceView, setting.levels);
  const white = adoptedWhite(setting, basis.worktopLight);
  const display = multiply(DISPLAY, adaptationMatrix(white, D65_2, degreeOf(seenBy, setting, basis.worktopLight)));
  const strongest = Math.max(...apply(display, [white.x / white.y, 1, white.z / white.y]));
  const factor = bright > 0 ? 1 / (WHITE_PAINT * bright * strongest) : 0;
  return display.map((value) => value * factor) as unknown as Matrix3;
}

/** Degree of adaptation D, 0-1. A camera set to daylight has none: D65 stays where it is, and so does everything else. */
function degreeOf(seenBy: SeenBy, { levels }: SettingLight, worktopLight: ArrayLike<number>): number {
  if (seenBy === 'used-to-it') return 1;
  if (seenBy === 'daylight-camera') return 0;
  const worktopLx = levels.reduce((sum, level, group) => sum + level * worktopLight[group]!, 0);
  // A fifth of the luminance of white, by custom of CIE 159:2004 and CIE 248:2022; average surround, F = 1.
  return adaptationDegree(1, (0.2 * worktopLx) / Math.PI);
}

/** The illuminance that BRIGHTEST_SHARE of the points seen exceed. */
function brightestLx(view: readonly Float64Array[], levels: readonly number[]): number {
  const points = view[0]?.length ?? 0;
  if (points === 0) return 0;
  const lx = new Float64Array(points);
  levels.forEach((level, group) => {
    for (let i = 0; i < points; i++) lx[i]! += level * view[group]![i]!;
  });
  lx.sort();
  return lx[Math.floor((1 - BRIGHTEST_SHARE) * (points - 1))]!;
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
