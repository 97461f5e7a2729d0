import type { Matrix3 } from '../../engine/color/types';
import { lightKernel } from '../../engine/light/kernel/kernel';
import type { BandSum } from '../../engine/light/kernel/types';
import type { AtlasLayout, LightRoom } from '../../engine/light/types';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import type { Look, SurfaceLook } from '../look';
import type { SeenBy } from '../seen-by';
import { exposedBandColors, exposedColor } from './component-colors';
import { exposureMatrix } from './exposure';
import { halfFromFloat } from './half-float';
import { pieceShifts } from './lay-pattern';
import type { LitScheme } from './lit-scheme';
import { outsideLook } from './outside-look';
import type { KeyedPattern } from './pattern-spec';
import type { RoomBasis } from './room-study';
import { isBrushed, type LaidSurface } from './scheme';
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
        shifts:
          laid.pattern && laid.surface !== 'stand'
            ? pieceShifts(study.room.light, laid.surface, laid.pattern.spec, laid.placement.laying)
            : null,
        flat: laid.finish.components.map(({ spectrum }) =>
          colorOnWorktop(spectrum, setting, asKnown, study.worktopLight),
        ),
      })),
      groupWhites: Float32Array.from(groupWhites(setting, exposure)),
      nodeColors: nodeColors(study.room.light, study.nodes.atlas, lit, bands),
      propColors: propColors(study, lit, bands),
      lampColors: lampColors(study.room.light, setting, exposure),
      outside: outsideLook(study.room.light, setting, exposure),
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
    joint: components.findIndex(({ role }) => role === 'grout'),
    brushed: isBrushed(laid),
    pattern: laid.pattern?.key ?? null,
  };
}

/** Exposed linear sRGB of a perfect white per lx of each group's direct light, levels included. */
const groupWhites = ({ levels, spectra }: SettingLight, exposure: Matrix3): number[] =>
  levels.flatMap((level, group) => exposedColor(spectra[group]!, null, exposure).map((value) => value * level));

/** Linear sRGB of a component beside a perfect white (1, 1, 1) in the worktop's direct light; black where there is none. */
function colorOnWorktop(
  spectrum: ReflectanceSpd,
  setting: SettingLight,
  exposure: Matrix3,
  worktopLight: Float64Array,
): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  let white = 0;
  setting.levels.forEach((level, group) => {
    const lx = level * worktopLight[group]!;
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
  const colors = sampleColors(lit.nodeLight, nodeSums(room, atlas, bands));
  let at = 0;
  for (const [rect, { surface }] of room.fine.entries()) {
    const x0 = atlas.blocks[4 * rect]!;
    const y0 = atlas.blocks[4 * rect + 1]!;
    const nu = atlas.blocks[4 * rect + 2]!;
    const nv = atlas.blocks[4 * rect + 3]!;
    for (let c = 0; c < layersOf(bands[surface]); c++) {
      for (let v = 0; v < nv; v++) {
        let texel = c * layer + ((y0 + v) * atlas.width + x0) * 4;
        for (let u = 0; u < nu; u++, at += 3, texel += 4) {
          out[texel] = halfFromFloat(colors[at]!);
          out[texel + 1] = halfFromFloat(colors[at + 1]!);
          out[texel + 2] = halfFromFloat(colors[at + 2]!);
        }
      }
    }
  }
  return out;
}

const layersOf = (components: ComponentBands | undefined): number => Math.min(components?.length ?? 0, LAYERS);

/** Rectangle after rectangle, and in each component after component. */
function nodeSums(room: LightRoom, { blocks }: AtlasLayout, bands: readonly ComponentBands[]): BandSum[] {
  const sums: BandSum[] = [];
  let first = 0;
  for (const [rect, { surface }] of room.fine.entries()) {
    const count = blocks[4 * rect + 2]! * blocks[4 * rect + 3]!;
    for (let c = 0; c < layersOf(bands[surface]); c++) sums.push({ first, count, colors: bands[surface]![c]! });
    first += count;
  }
  return sums;
}

/** Component after component where a prop lies on its finish's pattern, else the first alone. */
function propColors(study: RoomBasis, lit: LitScheme, bands: readonly ComponentBands[]): Float32Array[] {
  const { props } = study.room.light;
  const sums: BandSum[] = [];
  let first = 0;
  const lengths = props.map(({ positions, pattern, surface }) => {
    const count = positions.length / 3;
    const components = pattern ? Math.max(1, layersOf(bands[surface])) : 1;
    for (let c = 0; c < components; c++) sums.push({ first, count, colors: bands[surface]?.[c] ?? [] });
    first += count;
    return 3 * count * components;
  });
  const colors = sampleColors(lit.propLight, sums);
  let at = 0;
  return lengths.map((length) => {
    at += length;
    return colors.slice(at - length, at);
  });
}

function sampleColors(light: readonly (Float32Array | null)[], sums: readonly BandSum[]): Float32Array {
  const out = new Float32Array(3 * sums.reduce((samples, { count }) => samples + count, 0));
  lightKernel().sumBands(light, sums, out);
  return out;
}

/**
 * A lamp face seen straight on: pi times its luminance, as if a perfect white reflected that many lx. In a beam of cos^n that is
 * (n + 1) / 2 of the exitance; a web's face is shown as an even one. A shade's opening sends out the same light as the face in it.
 */
function lampColors(room: LightRoom, setting: SettingLight, exposure: Matrix3): [number, number, number][] {
  return room.lamps.map((lamp) => {
    const { u, v } = lamp.rect;
    const gain = lamp.beam?.kind === 'cosine-power' ? (lamp.beam.exponent + 1) / 2 : 1;
    const area = lamp.opening ? Math.PI * lamp.opening.radius_m ** 2 : Math.hypot(...u) * Math.hypot(...v);
    const exitance = (gain * lamp.lumens) / area;
    return scaled(exposedColor(setting.spectra[lamp.group]!, null, exposure), exitance * setting.levels[lamp.group]!);
  });
}

const scaled = ([r, g, b]: readonly [number, number, number], by: number): [number, number, number] => [
  r * by,
  g * by,
  b * by,
];
