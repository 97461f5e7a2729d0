import { xyzFromEmission } from '../../engine/color/xyz';
import { INDEX_OF_COATINGS } from '../../engine/finish/specular';
import { BAND_COUNT } from '../../engine/light/bands';
import { castRay } from '../../engine/light/ray';
import { irradianceSpectrum } from '../../engine/light/reading';
import type { RectBvh } from '../../engine/light/rect-bvh';
import type { Vec3 } from '../../engine/light/types';
import { fresnelUnpolarized } from '../../engine/sheen/fresnel';
import { beamInLobe, lobeRays } from '../../engine/sheen/lobe';
import { mirrorOf, type Sheen, type SheenSplit, splitSheen } from '../../engine/sheen/sheen';
import { emissionSpd, GRID_COUNT } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';
import type { SettingLight } from './setting-light';

/** What stands round a mirror and how bright it is. Numbers are per light group at level 1. */
export interface MirroredRoom {
  /** The rectangles one sees. */
  readonly bvh: RectBvh;
  /** Surface of a rectangle; below 0 for glass, lamp faces and black. */
  surfaceOf(rect: number): number;
  /** Name and mean reflectance of a surface. */
  finishOf(surface: number): { readonly id: string; readonly average: ReflectanceSpd };
  /** Direct light at a place of a rectangle, lx per group, written into `out`. */
  directAt(rect: number, u: number, v: number, out: Float64Array): void;
  /** Indirect light of a group there, times `weight`, lx per band, added into `out`. */
  addIndirect(rect: number, u: number, v: number, group: number, weight: number, out: Float64Array): void;
  /**
   * Luminance of glass or a lamp face at `place` for a ray that arrives along `direction` (unit), cd/m2 per group, written into
   * `out`. Null for what is black.
   */
  shineAt(rect: number, place: Vec3, direction: Vec3, out: Float64Array): 'lamp' | 'window' | null;
}

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

/** Rays of the lobe: a reading takes some milliseconds and is sure to a few per cent beside small lamps, else to one. */
const RAYS = 512;
const RAY_OFFSET_M = 1e-4;

/**
 * What a face of a given sheen mirrors to an eye, traced through the room along its lobe; null from behind the face. What is mirrored
 * is taken as matt: mirrors in mirrors count by their whole reflectance. Only groups with a level take part.
 */
export function mirroredLight(
  room: MirroredRoom,
  { spectra, levels }: Pick<SettingLight, 'spectra' | 'levels'>,
  { point, normal, eye, beams = [] }: MirrorView,
  sheen: Sheen,
  count = RAYS,
): MirroredLight | null {
  const frame = frameTowards(normal, [eye[0] - point[0], eye[1] - point[1], eye[2] - point[2]]);
  if (!frame) return null;
  const tally = new Tally(room, levels);
  const origin = point.map((x, k) => x + normal[k]! * RAY_OFFSET_M) as unknown as Vec3;
  let whole = 0;
  for (const { direction, reached, cosine } of lobeRays(sheen.alpha, frame.toEye, count)) {
    const weight = reached * facetMirror(sheen, cosine);
    whole += weight;
    tally.add(weight, origin, frame.inRoom(direction));
  }
  if (whole === 0) return null;
  const split = splitSheen(sheen, frame.toEye[2]);
  const found = tally.spectra(spectra, 1 / whole);
  for (const beam of beams) {
    const level = levels[beam.group]!;
    if (!(beam.lx * level > 0)) continue;
    const inLobe = beamInLobe(sheen.alpha, frame.toEye, frame.inLobe(beam.towards));
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

interface MirrorFrame {
  readonly toEye: Vec3;
  inRoom(local: Vec3): Vec3;
  inLobe(direction: Vec3): Vec3;
}

/** Axes with z along the normal and the eye over x; null where the eye is not in front. */
function frameTowards(normal: Vec3, towards: Vec3): MirrorFrame | null {
  const distance = Math.hypot(...towards);
  const cosine = dot(normal, towards) / distance;
  if (!(cosine > 1e-4)) return null;
  const along = towards.map((x, k) => x / distance - cosine * normal[k]!) as unknown as Vec3;
  const sine = Math.hypot(...along);
  // Straight on any axis across will do.
  const across: Vec3 = Math.abs(normal[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0];
  const x = unit(sine > 1e-9 ? along : cross(across, normal));
  const y = cross(normal, x);
  return {
    toEye: [sine, 0, cosine],
    inRoom: ([a, b, c]) => [0, 1, 2].map((k) => a * x[k]! + b * y[k]! + c * normal[k]!) as unknown as Vec3,
    inLobe: (d) => [dot(d, x), dot(d, y), dot(d, normal)],
  };
}

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

function unit(v: Vec3): Vec3 {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}

const scaled = (spectrum: EmissionSpd, by: number): EmissionSpd => emissionSpd(spectrum.map((value) => value * by));

/** Light on one surface as the lobe meets it, weights summed. */
interface MetSurface {
  readonly direct: Float64Array;
  readonly indirect: (Float64Array | null)[];
}

/** Adds up what the rays meet before any spectrum is touched. */
class Tally {
  readonly #room: MirroredRoom;
  readonly #levels: readonly number[];
  readonly #surfaces = new Map<number, MetSurface>();
  /** Per group: luminance of glass and lamps met, weights summed. */
  readonly #shine: Float64Array;
  readonly #here: Float64Array;

  constructor(room: MirroredRoom, levels: readonly number[]) {
    this.#room = room;
    this.#levels = levels;
    this.#shine = new Float64Array(levels.length);
    this.#here = new Float64Array(levels.length);
  }

  add(weight: number, origin: Vec3, direction: Vec3): void {
    const hit = castRay(this.#room.bvh, origin, direction);
    if (!hit) return;
    const here = this.#here.fill(0);
    const surface = this.#room.surfaceOf(hit.rect);
    if (surface < 0) {
      const place = origin.map((x, k) => x + direction[k]! * hit.distance) as unknown as Vec3;
      if (!this.#room.shineAt(hit.rect, place, direction, here)) return;
      for (let g = 0; g < here.length; g++) this.#shine[g]! += weight * here[g]!;
      return;
    }
    const met = this.#metSurface(surface);
    this.#room.directAt(hit.rect, hit.u, hit.v, here);
    for (let g = 0; g < here.length; g++) {
      if (!(this.#levels[g]! > 0)) continue;
      met.direct[g]! += weight * here[g]!;
      this.#room.addIndirect(hit.rect, hit.u, hit.v, g, weight, met.indirect[g]!);
    }
  }

  /** Per source pi times the radiance met, times `scale`. */
  spectra(spectra: readonly EmissionSpd[], scale: number): [source: string | number, spectrum: EmissionSpd][] {
    const found: [string | number, EmissionSpd][] = [];
    for (const [surface, { direct, indirect }] of this.#surfaces) {
      const { id, average } = this.#room.finishOf(surface);
      const light = irradianceSpectrum(spectra, this.#levels, direct, indirect);
      found.push([id, emissionSpd(light.map((value, i) => scale * value * average[i]!))]);
    }
    this.#shine.forEach((luminance, group) => {
      const by = Math.PI * scale * luminance * this.#levels[group]!;
      if (by > 0) found.push([group, scaled(spectra[group]!, by)]);
    });
    return found;
  }

  #metSurface(surface: number): MetSurface {
    let met = this.#surfaces.get(surface);
    if (!met) {
      met = {
        direct: new Float64Array(this.#levels.length),
        indirect: this.#levels.map((level) => (level > 0 ? new Float64Array(BAND_COUNT) : null)),
      };
      this.#surfaces.set(surface, met);
    }
    return met;
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
