import { bakePattern } from '../../src/engine/pattern/bake';
import type { FinishPattern } from '../../src/engine/pattern/types';
import { type PhotoPlaces, type PhotoReading, readSample } from '../../src/engine/photo/read-sample';
import { lightById } from '../../src/engine/spectrum/lights';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { COLOR_CHECKER } from '../vectors/color-checker.data';
import { CAMERAS } from './camera';
import { box, cardOf, linear, photograph, type Scene, type SceneThing } from './scene';

/** A patch of Ohta's chart by its name (see color-checker.data.ts). */
export const patch = (name: string): ReflectanceSpd =>
  Float64Array.from(COLOR_CHECKER.find((one) => one.patch === name)!.reflectance) as unknown as ReflectanceSpd;

/** Size of the test pictures and where card and sample lie in them, pixels. */
export const SIZE = { width: 240, height: 120 };
const CARD = { left: 10, top: 20, width: 80, height: 80 };
const SAMPLE = { left: 110, top: 10, width: 120, height: 100 };

export interface PictureChanges extends Partial<Omit<Scene, 'things'>> {
  readonly light?: string;
  readonly cardY?: number;
  readonly card?: Partial<SceneThing>;
  readonly sample?: Partial<SceneThing>;
  readonly places?: Partial<PhotoPlaces>;
}

const inset = ({ left, top, width, height }: typeof CARD) => box(left + 4, top + 4, width - 8, height - 8);

/** The places of card and sample, a little inside them. */
export const PLACES: PhotoPlaces = { sample: inset(SAMPLE), cards: [inset(CARD)], cardY: 0.18, light: 'daylight' };

/** A picture of a card and a sample side by side, as codes. */
export function photoOf({ light = 'D50', cardY = 0.18, card, sample, ...scene }: PictureChanges): Uint8Array {
  return photograph({
    ...SIZE,
    camera: CAMERAS[1]!,
    lights: [{ spd: lightById(light)! }],
    ...scene,
    things: [
      { ...SAMPLE, materials: [patch('neutral 6.5 (.44 D)')], ...sample },
      { ...CARD, materials: [cardOf(cardY)], ...card },
    ],
  });
}

/** What such a picture says; throws where it says nothing. */
export function readingOf(changes: PictureChanges): PhotoReading {
  const read = readSample(linear(photoOf(changes), SIZE.width, SIZE.height), {
    ...PLACES,
    cardY: changes.cardY ?? PLACES.cardY,
    ...changes.places,
  });
  if (!read.ok) throw new Error(read.problem.text);
  return read.value;
}

export const codesOf = ({ flags }: PhotoReading): readonly string[] => flags.map(({ code }) => code);

/** Where the components of a baked pattern lie, as a scene takes it, and their true shares within a window. */
const baked = new Map<string, ReturnType<typeof bakePattern>>();

export function bakedSample(
  pattern: FinishPattern,
  shares: readonly number[],
  seed: number,
  width: number,
  height: number,
) {
  const key = JSON.stringify([pattern, shares, seed]);
  const texture =
    baked.get(key) ?? bakePattern({ pattern, layout: 'plain', variation: 'V0', shares, seed }, { maxSize: 512 });
  baked.set(key, texture);
  const at = (x: number, y: number) => {
    const i = 4 * ((y % texture.height) * texture.width + (x % texture.width));
    const weights = shares.slice(1).map((_, k) => texture.data[i + k]! / 255);
    return { weights, gain: texture.data[i + 3]! / 128 };
  };
  const truth = shares.map(() => 0);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const { weights } = at(x, y);
      weights.forEach((weight, k) => {
        truth[k + 1]! += weight / (width * height);
      });
    }
  }
  truth[0] = 1 - truth.reduce((sum, share) => sum + share, 0);
  return { at, truth };
}
