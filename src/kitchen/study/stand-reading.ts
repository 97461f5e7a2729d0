import { differenceCiede2000 } from '../../engine/color/difference';
import { apply } from '../../engine/color/matrix3';
import { pictureSrgb8 } from '../../engine/color/picture-light';
import type { Lab } from '../../engine/color/types';
import { xyzFromEmission } from '../../engine/color/xyz';
import { averageComponent } from '../../engine/finish/component';
import type { ComponentRole, LaidFinish } from '../../engine/finish/types';
import { addDirect, directScene } from '../../engine/light/direct-scene';
import { finishGather, gatherPoint, type RowGatherer, startGather } from '../../engine/light/gather-rows';
import type { Rect, Vec3 } from '../../engine/light/types';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import { exposureMatrix } from './exposure';
import { type LightPart, lightParts, type PlaceLight } from './light-parts';
import type { LitScheme } from './lit-scheme';
import { localExposure } from './local-exposure';
import { placeColors } from './place-colors';
import { placeIrradiance } from './place-irradiance';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';

type Triple = readonly [number, number, number];

/** A sample in one position: the light on it and what its colors read there. */
export interface StandPlace {
  readonly lux: number;
  readonly place_white_lab_d65: Triple;
  readonly components: readonly {
    readonly role: ComponentRole;
    readonly share: number;
    readonly lab_d65: Triple;
    /** The reading against the sample in daylight. */
    readonly shift_de00: number;
    readonly srgb8: Triple;
  }[];
  readonly average_lab_d65: Triple;
  /** The largest first. */
  readonly parts: readonly LightPart[];
}

/** The same sample laid flat on the worktop and stood upright there. */
export interface StandReading {
  readonly finish: string;
  readonly flat: StandPlace;
  readonly upright: StandPlace;
  /** Between the averages of the two. */
  readonly between_de00: number;
}

/** A hand's sample stands about 0.1 m high: its middle above the counter. */
const CARD_MIDDLE_M = 0.05;
/** Samples stand this far apart along the counter at most. */
const SPACING_M = 0.5;
/** Narrower pieces of the counter, as in front of the sink, have no room for a sample. */
const LEAST_BREADTH_M = 0.3;
/** Rays of a place: as many as a node of final quality has. */
const RAYS = 400;
/** Below this it is dark. */
const DARK_LX = 0.01;

/**
 * A finish as a sample flat on the worktop and upright there, facing the room: means over places along the middle of the counter, with
 * all the light of the room. The sample is too small to change it. Null where either position is dark, or groups that burn are not
 * solved yet.
 */
export function readStand(
  basis: RoomBasis,
  { solved }: Pick<LitScheme, 'solved'>,
  setting: SettingLight,
  finish: LaidFinish,
): StandReading | null {
  if (setting.levels.some((level, group) => level > 0 && !solved.radiosity[group])) return null;
  const places = standPlaces(basis);
  const exposure = exposureMatrix(basis, setting);
  // One exposure for both, so that they can be told apart: that of the brighter.
  const over = Math.max(...[places.flat, places.upright].map(({ direct }) => localExposure(setting, exposure, direct)));
  const read = (place: PlaceLight): { place: StandPlace; average: Lab<'D65-2'> } | null => {
    const { irradiance, lux } = placeIrradiance(place, solved, setting);
    if (lux < DARK_LX) return null;
    const labOf = placeColors(irradiance, adoptedWhite(setting, basis.worktopLight));
    const average = labOf(averageComponent(finish.components).spectrum);
    const components = finish.components.map(({ role, share, spectrum, labD65 }) => {
      const lab = labOf(spectrum);
      const reflected = xyzFromEmission(emissionSpd(irradiance.map((e, i) => e * spectrum[i]!)), observer2);
      const [r, g, b] = apply(exposure, [reflected.x / over, reflected.y / over, reflected.z / over]);
      const srgb8 = pictureSrgb8({ r, g, b });
      return { role, share, lab_d65: triple(lab), shift_de00: differenceCiede2000(labD65, lab), srgb8 };
    });
    const parts = lightParts(place, basis, solved, setting);
    const whiteLab = triple(labOf(null));
    return {
      place: { lux, place_white_lab_d65: whiteLab, components, average_lab_d65: triple(average), parts },
      average,
    };
  };
  const flat = read(places.flat);
  const upright = read(places.upright);
  if (!flat || !upright) return null;
  return {
    finish: finish.id,
    flat: flat.place,
    upright: upright.place,
    between_de00: differenceCiede2000(flat.average, upright.average),
  };
}

const triple = ({ l, a, b }: Lab<'D65-2'>): Triple => [l, a, b];

interface StandPlaces {
  readonly flat: PlaceLight;
  readonly upright: PlaceLight;
}

/** Light of both positions as transport: it stays while room and outdoors do. */
const known = new WeakMap<RoomBasis['transport'], StandPlaces>();

/** The light of a sample that lies on the worktop and of one that stands there, as transport. */
export function standPlaces({ room, transport }: Pick<RoomBasis, 'room' | 'transport'>): StandPlaces {
  let places = known.get(transport);
  if (!places) {
    const spots = room.light.worktop.flatMap((index) => spotsOn(room.light.fine[index]!, room.size));
    const gatherer = startGather(room.light, transport, RAYS, 7);
    const scene = directScene(transport);
    const direct = () => new Float64Array(room.light.groups.length);
    const mean = (offset: number, normalOf: (spot: Spot) => Vec3): PlaceLight => {
      const sum = direct();
      const from = gatherer.start.length - 1;
      for (const spot of spots) {
        const [x, y, z] = spot.at;
        const [nx, ny, nz] = normalOf(spot);
        addDirect(scene, x, y, z + offset, nx, ny, nz, sum);
        gatherPoint(gatherer, x, y, z + offset, nx, ny, nz);
      }
      return { direct: sum.map((lx) => lx / spots.length), gather: meanRow(gatherer, from, transport.patches.count) };
    };
    places = { flat: mean(0, () => [0, 0, 1]), upright: mean(CARD_MIDDLE_M, ({ facing }) => facing) };
    known.set(transport, places);
  }
  return places;
}

function meanRow(gatherer: RowGatherer, from: number, patches: number): Float32Array {
  const { start, column, value, count } = finishGather(gatherer);
  const row = new Float32Array(patches);
  for (let e = start[from]!; e < start[count]!; e++) row[column[e]!]! += value[e]! / (count - from);
  return row;
}

interface Spot {
  readonly at: Vec3;
  /** Away from the wall the counter stands at. */
  readonly facing: Vec3;
}

/** Places along the middle of a piece of counter, at even steps; none where it is too narrow. */
function spotsOn({ origin, u, v }: Rect, [width, depth]: Vec3): Spot[] {
  const far: Vec3 = [origin[0] + u[0] + v[0], origin[1] + u[1] + v[1], origin[2]];
  const low = [Math.min(origin[0], far[0]), Math.min(origin[1], far[1])] as const;
  const high = [Math.max(origin[0], far[0]), Math.max(origin[1], far[1])] as const;
  const size = [high[0] - low[0], high[1] - low[1]] as const;
  if (Math.min(...size) < LEAST_BREADTH_M) return [];
  const walls: readonly { readonly gap: number; readonly along: 0 | 1; readonly facing: Vec3 }[] = [
    { gap: low[0], along: 1, facing: [1, 0, 0] },
    { gap: width - high[0], along: 1, facing: [-1, 0, 0] },
    { gap: low[1], along: 0, facing: [0, 1, 0] },
    { gap: depth - high[1], along: 0, facing: [0, -1, 0] },
  ];
  // In a corner the counter stands at the wall it runs along.
  const [wall] = [...walls].sort((a, b) =>
    Math.abs(a.gap - b.gap) > 0.01 ? a.gap - b.gap : size[b.along] - size[a.along],
  );
  const { along, facing } = wall!;
  const count = Math.ceil(size[along] / SPACING_M);
  return Array.from({ length: count }, (_, i) => {
    const at = [0, 1].map((axis) => low[axis]! + size[axis]! * (axis === along ? (i + 0.5) / count : 0.5));
    return { at: [at[0]!, at[1]!, origin[2]], facing };
  });
}
