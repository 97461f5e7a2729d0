import { lrvFromReflectance } from '../../engine/color/lrv';
import type { DirectMap } from '../../engine/light/direct-map';
import { samplePoint } from '../../engine/light/sample-point';
import type { Vec3 } from '../../engine/light/types';
import type { WindowLight } from '../../engine/light/window-light';
import { sheenOfFinish } from '../../engine/sheen/sheen';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import type { SurfaceId } from '../../engine/surface';
import { GROUPS } from '../../model/project';
import type { ByLayer } from '../look';
import type { LightFrom } from './light-parts';
import type { LitScheme } from './lit-scheme';
import { type BeamHere, mirroredLight } from './mirrored';
import type { MirroredReading } from './mirrored-reading';
import { mirroredRoomOf, normalOf } from './mirrored-room-of';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';
import { veiledReading } from './veiled-reading';

/** A place on a fine rectangle and who looks at it. */
export interface SeenPlace {
  readonly rect: number;
  /** Along the rectangle's edges, 0-1. */
  readonly u: number;
  readonly v: number;
  readonly eye: Vec3;
}

/**
 * What a place mirrors to an eye and what that does to its colour, beside the reading of the same place: `irradiance` and `rho` are
 * those of that reading. Null where the finish is matt, and from behind. Without direct maps each ray's light is worked out exactly.
 */
export function readMirrored(
  basis: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap> | null,
  { rect, u, v, eye }: SeenPlace,
  irradiance: EmissionSpd,
  rho: ReflectanceSpd,
): MirroredReading | null {
  const fine = basis.room.light.fine[rect];
  const laid = fine ? lit.solved.scheme.surfaces[fine.surface] : undefined;
  if (!fine || !laid) return null;
  const { glossGu, class: finishClass } = laid.finish;
  const sheen = sheenOfFinish(glossGu, lrvFromReflectance(laid.average) / 100, finishClass === 'metal');
  if (!sheen) return null;
  const room = mirroredRoomOf(basis, lit, setting, maps);
  const place = new Float64Array(3);
  samplePoint(fine, u, v, place);
  const here = new Float64Array(setting.levels.length);
  room.directAt(rect, u, v, here);
  const view = {
    point: [place[0]!, place[1]!, place[2]!] as Vec3,
    normal: normalOf(fine),
    eye,
    beams: sunBeams(basis.transport.windows, here),
  };
  const mirrored = mirroredLight(room, setting, view, sheen);
  if (!mirrored) return null;
  const veiled = veiledReading(irradiance, rho, mirrored, adoptedWhite(setting, basis.worktopLight));
  return { ...veiled, parts: mirrored.from.map(({ source, share }) => ({ from: fromOf(source), share })) };
}

const fromOf = (source: string | number): LightFrom =>
  typeof source === 'number'
    ? { kind: 'direct', group: GROUPS[source]! }
    : { kind: 'bounce', surface: source as SurfaceId };

/** The sun on a place, from the direct light of its group there. */
function sunBeams(windows: readonly WindowLight[], direct: Float64Array): BeamHere[] {
  const window = windows.find(({ sun }) => sun);
  return window?.sun ? [{ group: window.sunGroup, towards: window.sun.towards, lx: direct[window.sunGroup]! }] : [];
}
