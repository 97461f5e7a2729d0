import { adaptXyz } from '../../engine/color/adapt';
import { labD65FromXyzD65 } from '../../engine/color/lab';
import type { Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { BAND_COUNT, bandColorMatrix, directColor } from '../../engine/light/bands';
import { LEAST_TINT } from '../../engine/light/tint-source';
import { observer2 } from '../../engine/spectrum/observers';
import type { SurfaceId } from '../../engine/surface';
import { GROUPS, type GroupId } from '../../model/project';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';
import type { SolvedScheme } from './solved-scheme';

/** Where light comes from: straight from a group of lights, or from the surface it left last ('stand': the gray of a sample stand). */
export type LightFrom =
  | { readonly kind: 'direct'; readonly group: GroupId }
  | { readonly kind: 'bounce'; readonly surface: SurfaceId | 'stand' };

/** The id of a light group or a surface, as reports name it. */
export const sourceId = (from: LightFrom): GroupId | SurfaceId | 'stand' =>
  from.kind === 'direct' ? from.group : from.surface;

/** A part of the light at a place. */
export interface LightPart {
  readonly from: LightFrom;
  readonly lux: number;
  /** Of the light; all parts of a place sum to 1. */
  readonly share: number;
  /** Of the place's tint, signed; all parts sum to 1. 0 where the place has none. */
  readonly tint_share: number;
}

/** Light at a place as transport, whatever the scheme. */
export interface PlaceLight {
  /** Direct illuminance per group at level 1, lx. */
  readonly direct: ArrayLike<number>;
  /** What it receives from each patch: indirect = row . B. */
  readonly gather: ArrayLike<number>;
}

/**
 * The light at a place in its parts, largest first; none where it is dark. Exact: indirect light is a sum over the patches one
 * sees from there, so every lumen has one surface it left last. The tint of a place is how far its X and Z, beside Y, are from
 * those of the adopted white, (X / Xw - Y / Yw, Z / Zw - Y / Yw): linear in the light, so that a part's share of it is its own
 * such vector projected on the whole. A part may be against the tint (a negative share), as a blue wall is in a room that a
 * floor turns yellow.
 *
 * This says which light carries the tint. `tintSources` says what would take it away: there each surface is made gray and the
 * room solved anew, so that a white ceiling that only hands on the floor's color has no part, and the floor has all.
 */
export function lightParts(
  place: PlaceLight,
  { room, transport, worktopLight }: Pick<RoomBasis, 'room' | 'transport' | 'worktopLight'>,
  solved: SolvedScheme,
  setting: SettingLight,
): LightPart[] {
  const sources: Source[] = [];
  const bySurface = new Map<SurfaceId | 'stand', Source>();
  setting.levels.forEach((level, group) => {
    if (level === 0) return;
    const spectrum = setting.spectra[group]!;
    const lx = level * place.direct[group]!;
    if (lx > 0) {
      const xyz = directColor(spectrum, null, observer2).map((value) => value * lx);
      sources.push({ from: { kind: 'direct', group: GROUPS[group]! }, xyz });
    }
    const radiosity = solved.radiosity[group];
    if (!radiosity) return;
    const toXyz = bandColorMatrix(spectrum, null, observer2);
    for (const [surface, bands] of bouncedBands(place.gather, transport.patches.surface, radiosity)) {
      const id = room.surfaces[surface] ?? 'stand';
      let source = bySurface.get(id);
      if (!source) {
        source = { from: { kind: 'bounce', surface: id }, xyz: new Float64Array(3) };
        bySurface.set(id, source);
      }
      for (let at = 0; at < toXyz.length; at++) source.xyz[at % 3]! += level * bands[Math.floor(at / 3)]! * toXyz[at]!;
    }
  });
  return partsOf([...sources, ...bySurface.values()], adoptedWhite(setting, worktopLight));
}

interface Source {
  readonly from: LightFrom;
  readonly xyz: Float64Array;
}

/** Indirect light from one group by the surface it left last, in bands at level 1. */
function bouncedBands(
  gather: ArrayLike<number>,
  surfaceOf: Int32Array,
  radiosity: Float32Array,
): Map<number, Float64Array> {
  const found = new Map<number, Float64Array>();
  for (let patch = 0; patch < gather.length; patch++) {
    const share = gather[patch]!;
    const surface = surfaceOf[patch]!;
    if (share === 0 || surface < 0) continue;
    let bands = found.get(surface);
    if (!bands) {
      bands = new Float64Array(BAND_COUNT);
      found.set(surface, bands);
    }
    for (let k = 0; k < BAND_COUNT; k++) bands[k]! += share * radiosity[patch * BAND_COUNT + k]!;
  }
  return found;
}

function partsOf(sources: readonly Source[], white: Xyz<'setting-2'>): LightPart[] {
  const whole = new Float64Array(3);
  for (const { xyz } of sources) for (let k = 0; k < 3; k++) whole[k]! += xyz[k]!;
  const lux = whole[1]!;
  if (!(lux > 0)) return [];
  const tint = deviation(whole, white);
  const squared = isTinted(whole, white) ? tint[0] ** 2 + tint[1] ** 2 : 0;
  return sources
    .filter(({ xyz }) => xyz[1]! > 0)
    .map(({ from, xyz }) => {
      const [dx, dz] = deviation(xyz, white);
      const along = dx * tint[0] + dz * tint[1];
      return { from, lux: xyz[1]!, share: xyz[1]! / lux, tint_share: squared > 0 ? along / squared : 0 };
    })
    .sort((one, other) => other.lux - one.lux);
}

/** How far the color of light is from that of the white, times the light. */
const deviation = (xyz: Float64Array, white: Xyz<'setting-2'>): readonly [dx: number, dz: number] => [
  xyz[0]! / white.x - xyz[1]! / white.y,
  xyz[2]! / white.z - xyz[1]! / white.y,
];

/** Whether a perfect white reads tinted there, as `tintSources` has it. */
function isTinted(xyz: Float64Array, white: Xyz<'setting-2'>): boolean {
  const k = 100 / xyz[1]!;
  const there: Xyz<'setting-2'> = { x: k * xyz[0]!, y: 100, z: k * xyz[2]! };
  const { a, b } = labD65FromXyzD65(adaptXyz<'D65-2'>(there, white, D65_2));
  return Math.hypot(a, b) >= LEAST_TINT;
}
