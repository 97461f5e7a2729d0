import { encodeSrgb } from '../../src/engine/color/srgb-transfer';
import { linearPictureMaker } from '../../src/engine/photo/linear-picture';
import type { LinearPicture, PictureQuad } from '../../src/engine/photo/types';
import { mulberry32 } from '../../src/engine/random';
import type { EmissionSpd, ReflectanceSpd } from '../../src/engine/spectrum/types';
import { type Camera, rendered } from './camera';

/** A light of a scene and how strong it is at a place (pixels), 1 = as strong as at full. */
export interface SceneLight {
  readonly spd: EmissionSpd;
  readonly level?: (x: number, y: number) => number;
}

/** What lies where: components with their weights and lightness gain at a place. */
export interface SceneThing {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly materials: readonly ReflectanceSpd[];
  /** Weights of the materials after the first, and the gain; absent: the first alone. */
  readonly at?: (x: number, y: number) => { readonly weights: readonly number[]; readonly gain: number };
  /** Mirrored light added, as a share of what the perfect diffuser would give. */
  readonly mirror?: (x: number, y: number) => number;
}

export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly camera: Camera;
  readonly lights: readonly SceneLight[];
  readonly things: readonly SceneThing[];
  /** Linear value of the perfect diffuser at full light; 0.7 if absent. */
  readonly exposure?: number;
  /** Standard deviation of noise at white, linear; shot noise, so that it falls with the root of the light. */
  readonly noise?: number;
  readonly seed?: number;
}

const gray = (value: number) => new Float64Array(81).fill(value) as unknown as ReflectanceSpd;

/** A card of the luminance factor, the same at all wavelengths. */
export const cardOf = (value: number): ReflectanceSpd => gray(value);

/** Takes the picture: RGBA, sRGB, 8 bit. The ground is a gray of 35 %. */
export function photograph(scene: Scene): Uint8Array {
  const { width, height, camera, lights, exposure = 0.7, noise = 0, seed = 1 } = scene;
  const random = mulberry32(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const seen = (rho: ReflectanceSpd) => lights.map(({ spd }) => rendered(camera, rho, spd, lights[0]!.spd));
  const ground = [seen(gray(0.35))];
  const white = seen(gray(1));
  const things = scene.things.map((thing) => ({ ...thing, colors: thing.materials.map(seen) }));
  const out = new Uint8Array(4 * width * height).fill(255);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const thing = things.find(
        (one) => x >= one.left && x < one.left + one.width && y >= one.top && y < one.top + one.height,
      );
      const { weights, gain } = thing?.at?.(x - thing.left, y - thing.top) ?? ALONE;
      const mirror = thing?.mirror?.(x - thing.left, y - thing.top) ?? 0;
      const colors = thing?.colors ?? ground;
      let first = 1;
      for (const weight of weights) first -= weight;
      for (let c = 0; c < 3; c++) {
        let value = 0;
        for (let l = 0; l < lights.length; l++) {
          let rho = colors[0]![l]![c]! * first;
          for (let k = 0; k < weights.length; k++) rho += weights[k]! * colors[k + 1]![l]![c]!;
          value += (lights[l]!.level?.(x, y) ?? 1) * (rho * gain + mirror * white[l]![c]!);
        }
        value *= exposure;
        if (noise) value += normal() * noise * Math.sqrt(Math.max(0.001, value));
        out[4 * (y * width + x) + c] = CODES[Math.round(STEPS * Math.min(1, Math.max(0, value)))]!;
      }
    }
  }
  return out;
}

const ALONE = { weights: [], gain: 1 } as const;
/** Codes of linear light, finely enough that every code is reached. */
const STEPS = 16384;
const CODES = Uint8Array.from({ length: STEPS + 1 }, (_, i) => Math.round(255 * encodeSrgb(i / STEPS)));

/** The picture as the engine takes it in. */
export function linear(rgba: Uint8Array, width: number, height: number): LinearPicture {
  const maker = linearPictureMaker(width, height, 'srgb');
  maker.take(rgba);
  return maker.finish();
}

export const box = (left: number, top: number, width: number, height: number): PictureQuad => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];
