import { prepareEmitters } from '../../engine/light/emitters';
import { rectNormal } from '../../engine/light/rect-bvh';
import type { LightRoom, Rect, Vec3 } from '../../engine/light/types';
import { prepareWindows } from '../../engine/light/window-light';
import { type Result, success } from '../../engine/result';
import { GRID_COUNT, wavelengthNm } from '../../engine/spectrum/grid';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import { SURFACES } from '../../engine/surface';
import type { Project } from '../../model/project';
import { buildRoom } from '../build-room';
import { findSetting } from './assess-option';
import { type ExportedZone, exportedZones, type ShiningRect } from './exported-zones';
import { layScheme } from './scheme';
import { type SettingLight, settingLight } from './setting-light';

/** A room for other renderers: front faces counter-clockwise as seen from the room, metres, z up. */
export interface ExportedRoom {
  readonly note: string;
  readonly quads: readonly {
    readonly v: readonly [Vec3, Vec3, Vec3, Vec3];
    /** Lambert reflectance of three independent bands. */
    readonly rgb: readonly [number, number, number];
    /** Luminous exitance of an ideal diffuse emitter, lm/m2, the same in all bands; 0: it does not shine. */
    readonly emit: number;
  }[];
  readonly zones: readonly ExportedZone[];
}

/** Bands as thirds of what one sees best, nm: red, green, blue. */
const THIRDS: readonly (readonly [from: number, to: number])[] = [
  [600, 700],
  [500, 600],
  [400, 500],
];

/**
 * An option's room as it is solved, for a check by a renderer of another make: the coarse rectangles with their finishes' mean
 * reflectance in three bands, lamp faces and windows as diffuse emitters of the flux they send in the setting, and the mean
 * irradiance on the largest faces, solved for just that room.
 */
export function exportedRoom(project: Project, optionId: string, settingId: string): Result<ExportedRoom> {
  const setting = findSetting(project, settingId);
  if (!setting.ok) return setting;
  const light = settingLight(project, setting.value);
  if (!light.ok) return light;
  const scheme = layScheme(project, optionId, SURFACES);
  if (!scheme.ok) return scheme;
  const built = buildRoom(project.kitchen, project.beams);
  const shining = shiningRects(built.light, light.value);
  const rgb = scheme.value.surfaces.map(({ average }) => thirdsOf(average));
  const quads = shining.map(({ rect, emit }) => ({
    v: cornersOf(rect),
    rgb: rect.surface < 0 ? ([0, 0, 0] as const) : rgb[rect.surface]!,
    emit,
  }));
  const zones = exportedZones(built.surfaces, shining, Float32Array.from(rgb.flat()));
  return success({ note: noteOf(project, optionId, settingId), quads, zones });
}

const noteOf = (project: Project, option: string, setting: string): string =>
  `Kitchen of the project ${project.id}, option ${option}, setting ${setting}, as Upstand solves it: meters, z up. Quads: front face ` +
  'counter-clockwise seen from the room, the back is never seen; rgb = Lambert reflectance of three independent bands, the means of ' +
  "each finish's spectrum over 600-700, 500-600 and 400-500 nm; emit = exitance M of an ideal diffuse emitter in lm/m2, the same in " +
  'the three bands, reflectance 0. Not as in the program itself: three bands in place of 24, lamps of one color, windows and lamps ' +
  'with a beam as diffuse emitters of the same flux (the sun too), no joints, handles or other detail finer than the faces light ' +
  'bounces between, no gloss. Zones: a rectangle in the plane c of axis ax, facing sg; u is axis (ax+1)%3, v is axis (ax+2)%3; ' +
  'upstand = mean irradiance over it in the three bands, lm/m2, solved for the room in this file.';

/** Every rectangle that bounces light or lets it in, with what it sends; a lamp face that closes no hole stands by itself. */
function shiningRects(room: LightRoom, light: SettingLight): ShiningRect[] {
  const flux = new Map<Rect, number>();
  const alone: ShiningRect[] = [];
  const black = room.coarse.filter(({ surface }) => surface < 0);
  for (const { rect, lumens } of shiningFaces(room, light)) {
    const pieces = black.filter((piece) => isPieceOf(piece, rect));
    const area = pieces.reduce((sum, piece) => sum + areaOf(piece), 0);
    if (pieces.length === 0) alone.push({ rect: { ...rect, surface: -1 }, emit: lumens / areaOf(rect) });
    for (const piece of pieces) flux.set(piece, (flux.get(piece) ?? 0) + (lumens * areaOf(piece)) / area);
  }
  return [...room.coarse.map((rect) => ({ rect, emit: (flux.get(rect) ?? 0) / areaOf(rect) })), ...alone];
}

/** Lamp faces and glass with the lumens that come from them into the room. */
function shiningFaces(
  room: LightRoom,
  { levels, daylight }: SettingLight,
): { readonly rect: Rect; readonly lumens: number }[] {
  const lamps = prepareEmitters(room).map(({ rect, group, exitance, area }) => ({
    rect,
    lumens: levels[group]! * exitance * area,
  }));
  const windows = daylight ? prepareWindows(room.windows, daylight.outdoors) : [];
  const glass = windows.map(({ rect, area, groups, exitance, sunGroup, sunExitance }) => {
    const through = groups.reduce((sum, group, part) => sum + levels[group]! * exitance[part]!, 0);
    return { rect, lumens: area * (through + levels[sunGroup]! * sunExitance) };
  });
  return [...lamps, ...glass].filter(({ lumens }) => lumens > 0);
}

const SAME_PLANE_M = 1e-5;

/** Whether a rectangle lies in the plane of another, facing alike, with its middle on it. */
function isPieceOf(piece: Rect, whole: Rect): boolean {
  const a = rectNormal(piece);
  const b = rectNormal(whole);
  if (a.axis !== b.axis || a.sign !== b.sign) return false;
  return [0, 1, 2].every((k) => {
    const middle = piece.origin[k]! + (piece.u[k]! + piece.v[k]!) / 2;
    const far = whole.origin[k]! + whole.u[k]! + whole.v[k]!;
    return (
      middle >= Math.min(whole.origin[k]!, far) - SAME_PLANE_M &&
      middle <= Math.max(whole.origin[k]!, far) + SAME_PLANE_M
    );
  });
}

const areaOf = ({ u, v }: Rect): number => Math.hypot(...u) * Math.hypot(...v);

/** Mean reflectance over each third; samples at both ends count half. */
const thirdsOf = (rho: ReflectanceSpd): [number, number, number] =>
  THIRDS.map(([from, to]) => {
    let sum = 0;
    let weights = 0;
    for (let i = 0; i < GRID_COUNT; i++) {
      const nm = wavelengthNm(i);
      if (nm < from || nm > to) continue;
      const weight = nm === from || nm === to ? 0.5 : 1;
      sum += weight * rho[i]!;
      weights += weight;
    }
    return sum / weights;
  }) as [number, number, number];

function cornersOf({ origin, u, v }: Rect): [Vec3, Vec3, Vec3, Vec3] {
  const at = (fu: number, fv: number) => origin.map((o, k) => o + fu * u[k]! + fv * v[k]!) as unknown as Vec3;
  return [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
}
