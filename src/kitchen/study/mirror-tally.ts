import { BAND_COUNT } from '../../engine/light/bands';
import { castRay } from '../../engine/light/ray';
import { irradianceSpectrum } from '../../engine/light/reading';
import type { Vec3 } from '../../engine/light/types';
import { emissionSpd } from '../../engine/spectrum/grid';
import type { EmissionSpd } from '../../engine/spectrum/types';
import type { BrightFace, MirroredRoom } from './mirrored-room';

export const scaled = (spectrum: EmissionSpd, by: number): EmissionSpd =>
  emissionSpd(spectrum.map((value) => value * by));

/** Light on one surface as the lobe meets it, weights summed. */
interface MetSurface {
  readonly direct: Float64Array;
  readonly indirect: (Float64Array | null)[];
}

/** What a ray of the lobe counts beside the rays sent to the face it meets, 0-1. */
type ShareOfRay = (face: BrightFace, local: Vec3, direction: Vec3, distance: number) => number;

/** Adds up what the rays meet before any spectrum is touched. */
export class Tally {
  readonly #room: MirroredRoom;
  readonly #levels: readonly number[];
  readonly #shareOf: ShareOfRay;
  readonly #surfaces = new Map<number, MetSurface>();
  /** Per group: luminance of glass and lamps met, weights summed. */
  readonly #shine: Float64Array;
  readonly #here: Float64Array;

  constructor(room: MirroredRoom, levels: readonly number[], shareOf: ShareOfRay) {
    this.#room = room;
    this.#levels = levels;
    this.#shareOf = shareOf;
    this.#shine = new Float64Array(levels.length);
    this.#here = new Float64Array(levels.length);
  }

  /** A ray of the lobe. */
  add(weight: number, origin: Vec3, direction: Vec3, local: Vec3): void {
    const hit = castRay(this.#room.bvh, origin, direction);
    if (!hit) return;
    const here = this.#here.fill(0);
    const surface = this.#room.surfaceOf(hit.rect);
    if (surface < 0) {
      const face = this.#room.faceOf(hit.rect);
      if (!face) return;
      const share = this.#room.faces.includes(face) ? this.#shareOf(face, local, direction, hit.distance) : 1;
      face.addLuminance(direction, weight * share, this.#shine);
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

  /** A ray to a bright face, if nothing stands before it. */
  addFace(face: BrightFace, weight: number, origin: Vec3, direction: Vec3): void {
    const hit = castRay(this.#room.bvh, origin, direction);
    if (hit && this.#room.faceOf(hit.rect) === face) face.addLuminance(direction, weight, this.#shine);
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
