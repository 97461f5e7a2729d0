import { xyzFromEmission } from '../../engine/color/xyz';
import { INDEX_OF_COATINGS } from '../../engine/finish/specular';
import type { Vec3 } from '../../engine/light/types';
import { fresnelUnpolarized } from '../../engine/sheen/fresnel';
import { mirroredDensity, reachedOfSeen, type Widths } from '../../engine/sheen/ggx';
import { beamInLobe, lobeRays } from '../../engine/sheen/lobe';
import { mirrorOf, type Sheen, type SheenSplit, splitSheen, widthsOf } from '../../engine/sheen/sheen';
import { emissionSpd, GRID_COUNT } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import { dot, frameTowards, type MirrorFrame } from './mirror-frame';
import { scaled, Tally } from './mirror-tally';
import type { BrightFace, MirroredRoom } from './mirrored-room';
import type { SettingLight } from './setting-light';

/** Parallel light that reaches the mirroring point itself, such as the sun's. */
export interface BeamHere {
  readonly group: number;
  /** Unit vector towards where it comes from. */
  readonly towards: Vec3;
  /** Illuminance of the surface there by it, lx at level 1, shadows counted. */
  readonly lx: number;
}

/** Where one looks at what. */
export interface MirrorView {
  readonly point: Vec3;
  /** Unit normal of the face at the point. */
  readonly normal: Vec3;
  readonly eye: Vec3;
  /** Unit vector along the brush lines of the face; without one the lobe is the same on all sides. */
  readonly line?: Vec3 | null;
  readonly beams?: readonly BeamHere[];
}

/** A part of what is mirrored: a surface by its id, or a light group by its index; shares of the luminance sum to 1. */
export interface MirroredPart {
  readonly source: string | number;
  readonly share: number;
}

/** What a face mirrors to an eye. */
export interface MirroredLight {
  readonly split: SheenSplit;
  /** Mirrored light where the mirror was perfect: pi times its mean radiance over the lobe, W m-2 nm-1 (as an irradiance). */
  readonly met: EmissionSpd;
  /** The largest part first. */
  readonly from: readonly MirroredPart[];
}

/** Rays of the lobe, and to each bright face: a reading takes some milliseconds and is sure to a few per cent. */
const RAYS = 512;
const RAYS_TO_FACE = 32;
/** A lobe narrower than this meets a face wholly or not at all. */
const CLEAR_ALPHA = 1e-4;
const RAY_OFFSET_M = 1e-4;

/**
 * What a face of a given sheen mirrors to an eye, traced through the room along its lobe; null from behind the face. What is mirrored
 * is taken as matt: mirrors in mirrors count by their whole reflectance. Only groups with a level take part.
 */
export function mirroredLight(
  room: MirroredRoom,
  { spectra, levels }: Pick<SettingLight, 'spectra' | 'levels'>,
  { point, normal, eye, line = null, beams = [] }: MirrorView,
  sheen: Sheen,
  count = RAYS,
): MirroredLight | null {
  const frame = frameTowards(normal, [eye[0] - point[0], eye[1] - point[1], eye[2] - point[2]], line);
  if (!frame) return null;
  const origin = point.map((x, k) => x + normal[k]! * RAY_OFFSET_M) as unknown as Vec3;
  const widths = line ? widthsOf(sheen) : ([sheen.alpha, sheen.alpha] as const);
  const tally = new Tally(room, levels, (face, local, direction, distance) => {
    if (sheen.alpha < CLEAR_ALPHA) return 1;
    const byLobe = count * mirroredDensity(widths, frame.toEye, local);
    return byLobe / (byLobe + densityToFace(face, direction, distance));
  });
  let whole = 0;
  for (const { direction, reached, cosine } of lobeRays(widths, frame.toEye, count)) {
    const weight = reached * facetMirror(sheen, cosine);
    whole += weight;
    tally.add(weight, origin, frame.inRoom(direction), direction);
  }
  if (sheen.alpha >= CLEAR_ALPHA) sendToFaces(room, tally, sheen, widths, frame, origin, count);
  if (whole === 0) return null;
  const split = splitSheen(sheen, frame.toEye[2]);
  const found = tally.spectra(spectra, 1 / whole);
  for (const beam of beams) {
    const level = levels[beam.group]!;
    if (!(beam.lx * level > 0)) continue;
    const inLobe = beamInLobe(widths, frame.toEye, frame.inLobe(beam.towards));
    if (!inLobe) continue;
    const luminance = level * beam.lx * inLobe.density * facetMirror(sheen, inLobe.cosine);
    found.push([beam.group, scaled(spectra[beam.group]!, (Math.PI * luminance * count) / whole)]);
  }
  const met = new Float64Array(GRID_COUNT);
  for (const [, spectrum] of found) for (let i = 0; i < GRID_COUNT; i++) met[i]! += spectrum[i]!;
  return { split, met: emissionSpd(met), from: partsOf(found) };
}

/** How rays of the lobe weigh against each other: the mean albedo is the split's, but a coat mirrors more where light grazes facets. */
const facetMirror = ({ metal }: Sheen, cosine: number): number =>
  metal ? 1 : fresnelUnpolarized(INDEX_OF_COATINGS, cosine);

/** The veil that a mirror lays over a finish of reflectance `rho`: pi times its radiance, W m-2 nm-1. A metal colours it. */
export const veilOver = ({ split, met }: MirroredLight, rho: ReflectanceSpd): EmissionSpd =>
  emissionSpd(met.map((value, i) => value * mirrorOf(split, rho[i]!)));

/** Rays per solid angle that `sendToFaces` sends along a direction that meets a face at a distance. */
function densityToFace({ area_m2, normal, samples }: BrightFace, direction: Vec3, distance: number): number {
  const cosine = -(direction[0] * normal[0]! + direction[1] * normal[1]! + direction[2] * normal[2]!);
  return (Math.min(RAYS_TO_FACE, samples.length / 3) * distance * distance) / (area_m2 * Math.max(1e-9, cosine));
}

/**
 * Rays to points of each bright face. Either kind of ray weighs by how many of both would go there, the balance heuristic of
 * E. Veach and L. Guibas, Optimally combining sampling techniques for Monte Carlo rendering (1995).
 */
function sendToFaces(
  room: MirroredRoom,
  tally: Tally,
  sheen: Sheen,
  widths: Widths,
  { toEye, inLobe }: MirrorFrame,
  origin: Vec3,
  count: number,
): void {
  for (const face of room.faces) {
    for (let i = 0; i < 3 * Math.min(RAYS_TO_FACE, face.samples.length / 3); i += 3) {
      const way = [0, 1, 2].map((k) => face.samples[i + k]! - origin[k]!) as unknown as Vec3;
      const distance = Math.hypot(...way);
      const direction = way.map((x) => x / distance) as unknown as Vec3;
      if (!(dot(direction, face.normal as unknown as Vec3) < 0)) continue;
      const local = inLobe(direction);
      if (!(local[2] > 0)) continue;
      const byLobe = mirroredDensity(widths, toEye, local);
      const half = Math.sqrt((1 + dot(toEye, local)) / 2);
      const weight =
        (count * byLobe * reachedOfSeen(widths, toEye, local) * facetMirror(sheen, half)) /
        (count * byLobe + densityToFace(face, direction, distance));
      tally.addFace(face, weight, origin, direction);
    }
  }
}

/** Shares of the luminance, the same source counted together. */
function partsOf(found: readonly (readonly [string | number, EmissionSpd])[]): MirroredPart[] {
  const bySource = new Map<string | number, number>();
  let whole = 0;
  for (const [source, spectrum] of found) {
    const { y } = xyzFromEmission(spectrum, observer2);
    whole += y;
    if (y > 0) bySource.set(source, (bySource.get(source) ?? 0) + y);
  }
  if (!(whole > 0)) return [];
  return [...bySource].map(([source, y]) => ({ source, share: y / whole })).sort((a, b) => b.share - a.share);
}
