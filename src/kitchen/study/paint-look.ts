import type { Matrix3 } from '../../engine/color/types';
import { BAND_COUNT } from '../../engine/light/bands';
import { paneTransmittance } from '../../engine/light/glass';
import type { AtlasLayout, LightRoom } from '../../engine/light/types';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import type { Look, SurfaceLook } from '../look';
import type { SeenBy } from '../seen-by';
import { exposedBandColors, exposedColor } from './component-colors';
import { exposureMatrix } from './exposure';
import { halfFromFloat } from './half-float';
import type { LitScheme } from './lit-scheme';
import type { KeyedPattern } from './pattern-spec';
import type { RoomBasis } from './room-study';
import type { LaidSurface } from './scheme';
import type { SettingLight } from './setting-light';

/** Layers of the node atlas: one per component of a surface. */
const LAYERS = 4;

/** A look before its patterns are baked: the keys and specs say which are needed. */
export interface PaintedLook {
  readonly look: Omit<Look, 'patterns'>;
  readonly patterns: readonly KeyedPattern[];
}

/** Colours of everything in the picture for a lit scheme under a setting. Groups not gathered yet add no indirect light. */
export function paintLook(
  study: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  seenBy: SeenBy = 'used-to-it',
): PaintedLook {
  const exposure = exposureMatrix(study, setting, seenBy);
  // Colours beside white are the finish's own: a mirror's tint falls on a picture that has the light's tint already.
  const asKnown = exposureMatrix(study, setting);
  const { surfaces, option } = lit.solved.scheme;
  const patterns = new Map<string, KeyedPattern>();
  for (const { pattern } of surfaces) if (pattern) patterns.set(pattern.key, pattern);
  const bands = surfaces.map((laid) => componentBands(laid, setting, exposure));
  return {
    look: {
      option,
      setting: setting.id,
      seenBy,
      surfaces: surfaces.map((laid, index) => ({
        ...surfaceLook(laid, index, setting, exposure),
        flat: laid.finish.components.map(({ spectrum }) =>
          colorOnWorktop(spectrum, setting, asKnown, study.worktopDirect),
        ),
      })),
      nodeColors: nodeColors(study.room.light, study.nodes.atlas, lit, bands),
      propColors: propColors(study, lit, bands),
      lampColors: lampColors(study.room.light, setting, exposure),
      sky: skyColors(study.room.light, setting, exposure),
    },
    patterns: [...patterns.values()],
  };
}

/** Per component and group: colours per band, null where the group is off. */
type ComponentBands = readonly (readonly (Float32Array | null)[])[];

function componentBands(laid: LaidSurface, setting: SettingLight, exposure: Matrix3): ComponentBands {
  return laid.finish.components.map(({ spectrum }) =>
    setting.levels.map((level, group) =>
      level > 0 ? exposedBandColors(setting.spectra[group]!, spectrum, exposure, level) : null,
    ),
  );
}

function surfaceLook(
  laid: LaidSurface,
  surface: number,
  setting: SettingLight,
  exposure: Matrix3,
): Omit<SurfaceLook, 'flat'> {
  const { components, id, glossGu } = laid.finish;
  return {
    surface,
    finish: id,
    groupColors: components.map(({ spectrum }) =>
      Float32Array.from(
        setting.levels.flatMap((level, group) =>
          exposedColor(setting.spectra[group]!, spectrum, exposure).map((value) => value * level),
        ),
      ),
    ),
    glossGu,
    metal: laid.finish.class === 'metal',
    pattern: laid.pattern?.key ?? null,
  };
}

/** Linear sRGB of a component beside a perfect white (1, 1, 1) in the worktop's direct light; black where there is none. */
function colorOnWorktop(
  spectrum: ReflectanceSpd,
  setting: SettingLight,
  exposure: Matrix3,
  worktopDirect: Float64Array,
): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  let white = 0;
  setting.levels.forEach((level, group) => {
    const lx = level * worktopDirect[group]!;
    const color = exposedColor(setting.spectra[group]!, spectrum, exposure);
    for (let k = 0; k < 3; k++) sum[k]! += lx * color[k]!;
    white += lx * exposedColor(setting.spectra[group]!, null, exposure)[1];
  });
  return white > 0 ? scaled(sum, 1 / white) : sum;
}

function nodeColors(
  room: LightRoom,
  atlas: AtlasLayout,
  lit: LitScheme,
  bands: readonly ComponentBands[],
): Uint16Array {
  const layer = atlas.width * atlas.height * 4;
  const out = new Uint16Array(layer * LAYERS);
  const color = new Float32Array(3);
  let node = 0;
  for (const [rect, { surface }] of room.fine.entries()) {
    const [x0, y0, nu, nv] = atlas.blocks.subarray(rect * 4, rect * 4 + 4) as unknown as [
      number,
      number,
      number,
      number,
    ];
    const components = bands[surface] ?? [];
    for (let v = 0; v < nv; v++) {
      for (let u = 0; u < nu; u++, node++) {
        const texel = ((y0 + v) * atlas.width + x0 + u) * 4;
        for (let c = 0; c < components.length && c < LAYERS; c++) {
          sumBands(lit.nodeLight, node, components[c]!, color);
          const at = c * layer + texel;
          out[at] = halfFromFloat(color[0]!);
          out[at + 1] = halfFromFloat(color[1]!);
          out[at + 2] = halfFromFloat(color[2]!);
        }
      }
    }
  }
  return out;
}

function propColors(study: RoomBasis, lit: LitScheme, bands: readonly ComponentBands[]): Float32Array[] {
  const color = new Float32Array(3);
  let sample = 0;
  return study.room.light.props.map((prop) => {
    const count = prop.positions.length / 3;
    const out = new Float32Array(count * 3);
    const first = bands[prop.surface]?.[0];
    for (let vertex = 0; vertex < count; vertex++, sample++) {
      if (!first) continue;
      sumBands(lit.propLight, sample, first, color);
      out.set(color, vertex * 3);
    }
    return out;
  });
}

/** Colour of one component at one sample: sum over groups and bands. */
function sumBands(
  light: readonly (Float32Array | null)[],
  sample: number,
  groups: readonly (Float32Array | null)[],
  out: Float32Array,
): void {
  let r = 0;
  let g = 0;
  let b = 0;
  const base = sample * BAND_COUNT;
  for (let group = 0; group < groups.length; group++) {
    const colors = groups[group];
    const values = light[group];
    if (!colors || !values) continue;
    for (let band = 0, at = 0; band < BAND_COUNT; band++, at += 3) {
      const t = values[base + band]!;
      r += t * colors[at]!;
      g += t * colors[at + 1]!;
      b += t * colors[at + 2]!;
    }
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

/** A lamp face seen straight on: exitance of the face as if reflected by a perfect white under that many lx. */
function lampColors(room: LightRoom, setting: SettingLight, exposure: Matrix3): [number, number, number][] {
  return room.lamps.map((lamp) => {
    const { u, v } = lamp.rect;
    const exitance = lamp.lumens / (Math.hypot(...u) * Math.hypot(...v));
    return scaled(exposedColor(setting.spectra[lamp.group]!, null, exposure), exitance * setting.levels[lamp.group]!);
  });
}

/**
 * Sky at the zenith and level ground as seen straight through the glass, in the same scale (pi times luminance). CIE overcast sky:
 * illuminance of the horizontal = 7/9 pi Lz.
 */
function skyColors(room: LightRoom, setting: SettingLight, exposure: Matrix3): Look['sky'] {
  const window = room.windows[0];
  if (!window) return { zenith: [0, 0, 0], ground: [0, 0, 0] };
  const color = exposedColor(setting.spectra[window.group]!, null, exposure);
  const level = setting.levels[window.group]! * paneTransmittance(1) ** window.panes;
  return {
    zenith: scaled(color, (window.skyLx * 9 * level) / 7),
    ground: scaled(color, window.skyLx * window.groundReflectance * level),
  };
}

const scaled = ([r, g, b]: readonly [number, number, number], by: number): [number, number, number] => [
  r * by,
  g * by,
  b * by,
];
