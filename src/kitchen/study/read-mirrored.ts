import { lrvFromReflectance } from '../../engine/color/lrv';
import type { DirectMap } from '../../engine/light/direct-map';
import type { Vec3 } from '../../engine/light/types';
import type { WindowLight } from '../../engine/light/window-light';
import { sheenOfFinish } from '../../engine/sheen/sheen';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import type { SurfaceId } from '../../engine/surface';
import { GROUPS } from '../../model/project';
import type { ByLayer } from '../look';
import { brushLine, type PatternEdges } from './brush-line';
import type { LightFrom } from './light-parts';
import type { LitScheme } from './lit-scheme';
import { type BeamHere, mirroredLight } from './mirrored';
import type { MirroredReading } from './mirrored-reading';
import { mirroredRoomOf } from './mirrored-room-of';
import type { RoomBasis } from './room-study';
import { isBrushed } from './scheme';
import { adoptedWhite, type SettingLight } from './setting-light';
import { veiledReading } from './veiled-reading';

/** A place and who looks at it. */
export interface SeenPlace {
  readonly surface: number;
  readonly point: Vec3;
  /** Unit normal of its front. */
  readonly normal: Vec3;
  /** How the pattern runs there, if it is to be seen. */
  readonly pattern?: PatternEdges | null;
  readonly eye: Vec3;
  /** Direct light there, lx per group at level 1. */
  readonly direct: ArrayLike<number>;
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
  { surface, point, normal, pattern, eye, direct }: SeenPlace,
  irradiance: EmissionSpd,
  rho: ReflectanceSpd,
): MirroredReading | null {
  const laid = lit.solved.scheme.surfaces[surface];
  if (!laid) return null;
  const { glossGu, class: finishClass } = laid.finish;
  const brushed = isBrushed(laid);
  const sheen = sheenOfFinish(glossGu, lrvFromReflectance(laid.average) / 100, finishClass === 'metal', brushed);
  if (!sheen) return null;
  const room = mirroredRoomOf(basis, lit, setting, maps);
  const line = brushed && pattern ? brushLine(pattern, normal, laid.pattern?.spec.turn_deg ?? 0) : null;
  const view = { point, normal, eye, line, beams: sunBeams(basis.transport.windows, direct) };
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
function sunBeams(windows: readonly WindowLight[], direct: ArrayLike<number>): BeamHere[] {
  const window = windows.find(({ sun }) => sun);
  return window?.sun ? [{ group: window.sunGroup, towards: window.sun.towards, lx: direct[window.sunGroup]! }] : [];
}
