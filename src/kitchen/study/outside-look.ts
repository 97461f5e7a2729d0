import type { Matrix3 } from '../../engine/color/types';
import { paneLx } from '../../engine/daylight/pane-lx';
import { loweredBlind } from '../../engine/daylight/roller-blind';
import { facingLuminance } from '../../engine/daylight/upright-lx';
import { paneTransmittance } from '../../engine/light/glass';
import type { LightRoom, Vec3, WindowAperture } from '../../engine/light/types';
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
  const transmittance = paneTransmittance(1, window.panes);
  /** A perfect white in this many lx of a group outside, as seen through the glass. */
  const white = (group: number, lx: number): Rgb => {
    const [r, g, b] = exposedColor(spectra[group]!, null, exposure);
    const by = lx * transmittance;
    return [r * by, g * by, b * by];
  };
  const color = (group: number, luminance: number): Rgb => white(group, Math.PI * luminance * levels[group]!);
  const { sky, sun, ground, facing } = window.groups;
  const lowered = loweredBlind(levels[sky]!);
  const [bySky, bySun] = [white(sky, sky_lx), white(sun, sun_lx)];
  return {
    zenith: color(sky, outdoors.sky.zenith_cdm2),
    ground: color(ground, outdoors.ground_cdm2),
    facing: wall ? color(facing, facingLuminance(outdoors, outwardOf(wall))) : [0, 0, 0],
    sky: outdoors.sky,
    sunShines: outdoors.sun !== null,
    isBrick: outdoors.facing === 'brick',
    blind: levels[sky]!,
    covered: lowered.covered,
    cloths: (room.blinds ?? []).map(({ pane }) => {
      const lx = paneLx(outdoors, outwardOf(pane), pane.panes, pane.facing_deg);
      const parts = (['sky', 'sun', 'ground', 'facing'] as const).map((kind) =>
        exposedColor(spectra[pane.groups[kind]]!, null, exposure).map((channel) => channel * lx[kind]),
      );
      const channel = (k: number) => lowered.transmittance * parts.reduce((sum, part) => sum + part[k]!, 0);
      return [channel(0), channel(1), channel(2)] as const;
    }),
    darkenedBy: outsideExposure(Math.max(...bySky.map((channel, k) => channel + bySun[k]!))),
  };
}

/** Unit normal of a pane away from the room. */
function outwardOf({ rect }: WindowAperture): Vec3 {
  const [x, y, z] = normalOf(rect);
  return [-x, -y, -z];
}
