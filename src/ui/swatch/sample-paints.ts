import { linearSrgbFromXyzD65 } from '../../engine/color/display';
import { xyzD65FromLabD65 } from '../../engine/color/lab';
import { bakePattern } from '../../engine/pattern/bake';
import type { PatternSpec, PatternTexture } from '../../engine/pattern/types';
import { layFinish } from '../../kitchen/study/lay-finish';
import { patternSpecFor } from '../../kitchen/study/pattern-spec';
import type { Finish, Laying } from '../../model/project';
import type { SwatchPaint } from './swatch-paint';

/** Runs a piece of work when the page has time for it. */
export type WhenIdle = (work: () => void) => void;

/** Textures kept; about 1 MB each. */
const MOST_TEXTURES = 80;

/** Paints for samples of finishes, each made once. The pattern follows a little later: baking one takes a moment. */
export interface SamplePaints {
  readonly subscribe: (listener: () => void) => () => void;
  /** Grows whenever a pattern was baked. */
  readonly version: () => number;
  /** The paint of a finish as laid; the same object as long as nothing about it changed. */
  readonly paintOf: (library: ReadonlyMap<string, Finish>, finish: Finish, laying: Laying) => SwatchPaint;
}

const GRAY: SwatchPaint = { colors: [[0.2, 0.2, 0.2]], texture: null, glossGu: 0 };

/** Linear sRGB of a CIELAB color (D65), as swatches take it. */
export function swatchColor([l, a, b]: readonly [number, number, number]): readonly [number, number, number] {
  const { r, g, b: blue } = linearSrgbFromXyzD65(xyzD65FromLabD65({ l, a, b }));
  return [r, g, blue];
}

/** A flat swatch of one CIELAB color (D65). */
export const flatPaint = (lab: readonly [number, number, number], glossGu = 0): SwatchPaint => ({
  colors: [swatchColor(lab)],
  texture: null,
  glossGu,
});

export function createSamplePaints(whenIdle: WhenIdle): SamplePaints {
  const textures = new Map<string, PatternTexture>();
  const waiting = new Map<string, PatternSpec>();
  const paints = new Map<string, SwatchPaint>();
  const listeners = new Set<() => void>();
  let version = 0;
  let running = false;

  const bakeNext = () => {
    const [next] = waiting;
    running = next !== undefined;
    if (!next) return;
    const [key, spec] = next;
    waiting.delete(key);
    textures.set(key, bakePattern(spec));
    for (const oldest of textures.keys()) {
      if (textures.size <= MOST_TEXTURES) break;
      textures.delete(oldest);
    }
    version++;
    for (const listener of listeners) listener();
    whenIdle(bakeNext);
  };

  /** The baked texture, or null while it waits its turn. */
  const textureOf = (key: string, spec: PatternSpec): PatternTexture | null => {
    const baked = textures.get(key);
    if (baked) return baked;
    waiting.set(key, spec);
    if (!running) {
      running = true;
      whenIdle(bakeNext);
    }
    return null;
  };

  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    version: () => version,
    paintOf: (library, finish, laying) => {
      const placement = { finish: finish.id, laying, state: 'open' as const };
      const laid = layFinish(library, placement);
      if (!laid.ok) return GRAY;
      const pattern = patternSpecFor(finish, placement, laid.value);
      const colors = laid.value.components.map(({ labD65 }) => swatchColor([labD65.l, labD65.a, labD65.b]));
      const texture = pattern && textureOf(pattern.key, pattern.spec);
      const key = `${pattern?.key ?? finish.id}|${texture ? 1 : 0}|${colors.join(';')}|${finish.gloss_gu}`;
      const before = paints.get(key);
      if (before && before.texture === texture) return before;
      const paint: SwatchPaint = { colors, texture, glossGu: finish.gloss_gu };
      paints.set(key, paint);
      return paint;
    },
  };
}
