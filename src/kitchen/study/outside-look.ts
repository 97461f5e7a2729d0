import type { Matrix3 } from '../../engine/color/types';
import { facingLuminance } from '../../engine/daylight/upright-lx';
import { paneTransmittance } from '../../engine/light/glass';
import type { LightRoom } from '../../engine/light/types';
import type { OutsideLook } from '../look';
import { exposedColor } from './component-colors';
import { outsideExposure } from './local-exposure';
import { normalOf } from './mirrored-room-of';
import type { SettingLight } from './setting-light';

type Rgb = readonly [number, number, number];

/** Sky, ground and facing wall as seen straight through the glass: pi times luminance, exposed linear sRGB. Null by night. */
export function outsideLook(
  room: LightRoom,
  { daylight, spectra, levels }: SettingLight,
  exposure: Matrix3,
): OutsideLook | null {
  const [window] = room.windows;
  if (!window || !daylight) return null;
  const { outdoors, sky_lx, sun_lx } = daylight;
  const wall = room.windows.find(({ facing_deg }) => facing_deg > 0);
  const inward = normalOf((wall ?? window).rect);
  const transmittance = paneTransmittance(1, window.panes);
  /** A perfect white in this many lx of a group outside, as seen through the glass. */
  const white = (group: number, lx: number): Rgb => {
    const [r, g, b] = exposedColor(spectra[group]!, null, exposure);
    const by = lx * transmittance;
    return [r * by, g * by, b * by];
  };
  const color = (group: number, luminance: number): Rgb => white(group, Math.PI * luminance * levels[group]!);
  const { sky, sun, ground, facing } = window.groups;
  const [bySky, bySun] = [white(sky, sky_lx), white(sun, sun_lx)];
  return {
    zenith: color(sky, outdoors.sky.zenith_cdm2),
    ground: color(ground, outdoors.ground_cdm2),
    facing: wall ? color(facing, facingLuminance(outdoors, [-inward[0], -inward[1], -inward[2]])) : [0, 0, 0],
    sky: outdoors.sky,
    sunShines: outdoors.sun !== null,
    isBrick: outdoors.facing === 'brick',
    blind: levels[sky]!,
    darkenedBy: outsideExposure(Math.max(...bySky.map((channel, k) => channel + bySun[k]!))),
  };
}
