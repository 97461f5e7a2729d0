import type { PatternSpec, PatternTexture } from '../../engine/pattern/types';
import type { Finish, Laying } from '../../model/project';
import { cropTexture } from './crop-texture';
import type { LaidSample } from './laid-sample';
import { flatPaint, swatchColor } from './swatch-color';
import type { SwatchPaint } from './swatch-paint';

/** What the samples need from outside: how finishes are laid (fetched late: it brings spectra along), and who bakes. */
export interface SampleMakers {
  readonly fetchLaying: () => Promise<Pick<typeof import('./laid-sample'), 'laidSample'>>;
  readonly bake: (spec: PatternSpec) => Promise<PatternTexture>;
}

/** Paints for samples of finishes, each made once. The pattern follows a little later: baking one takes a moment. */
export interface SamplePaints {
  readonly subscribe: (listener: () => void) => () => void;
  /** Grows whenever better paints can be had. */
  readonly version: () => number;
  /**
   * The paint of a finish as laid; the same object as long as nothing about it changed. Without `bake` it takes the
   * pattern only if that is there already.
   */
  readonly paintOf: (
    library: ReadonlyMap<string, Finish>,
    finish: Finish,
    laying: Laying,
    bake: boolean,
  ) => SwatchPaint;
  /** The patterns of what lies in the room, baked for the picture anyway. */
  readonly setLaid: (patterns: ReadonlyMap<string, PatternTexture>) => void;
}

/** More than the largest sample shows, m. */
const CROP_M = { width: 0.4, height: 0.2 };
/** Samples whose pattern is kept; about 0.3 MB each. */
const MOST_CROPS = 100;

/** Work between two pauses, and the pause, ms: the list scrolls and the keys answer meanwhile. */
const SLICE_MS = 8;
const PAUSE_MS = 16;

/** Finishes that wait at most; what is still in sight is asked for again. */
const MOST_WAITING = 100;

const GRAY: SwatchPaint = { colors: [[0.2, 0.2, 0.2]], texture: null, glossGu: 0 };

export function createSamplePaints({ fetchLaying, bake }: SampleMakers): SamplePaints {
  let laid: ReadonlyMap<string, PatternTexture> = new Map();
  const crops = new Map<string, PatternTexture>();
  const baking = new Set<string>();
  const paints = new Map<string, SwatchPaint>();
  const listeners = new Set<() => void>();
  let lay: typeof import('./laid-sample').laidSample | null = null;
  /** Finishes whose colors are worked out already; those that wait for it, with the library they were asked for in. */
  const ready = new WeakSet<Finish>();
  const waiting = new Map<Finish, ReadonlyMap<string, Finish>>();
  let version = 0;

  const tell = () => {
    version++;
    for (const listener of listeners) listener();
  };
  void fetchLaying().then((fetched) => {
    lay = fetched.laidSample;
    tell();
  });

  /** Whether these finishes can be painted at once; their colors are worked out a little later otherwise. */
  const isReady = (library: ReadonlyMap<string, Finish>, finishes: readonly Finish[]): boolean => {
    const missing = finishes.filter((finish) => !ready.has(finish));
    if (missing.length > 0 && waiting.size === 0) setTimeout(workOut);
    for (const finish of missing) {
      waiting.delete(finish);
      waiting.set(finish, library);
    }
    return missing.length === 0;
  };

  /**
   * Works out the colors of waiting finishes, a slice at a time: each needs a spectrum for every color it has. Those asked for last come first:
   * of a long list one scrolls through, these are in sight.
   */
  const workOut = () => {
    const until = performance.now() + SLICE_MS;
    const newest = [...waiting].reverse();
    for (const [finish] of newest.slice(MOST_WAITING)) waiting.delete(finish);
    for (const [finish, library] of newest.slice(0, MOST_WAITING)) {
      lay?.(library, finish, { layout: 'plain' });
      ready.add(finish);
      waiting.delete(finish);
      if (performance.now() >= until) break;
    }
    tell();
    if (waiting.size > 0) setTimeout(workOut, PAUSE_MS);
  };

  const bakeOnce = async ({ key, spec }: NonNullable<LaidSample['pattern']>) => {
    if (baking.has(key)) return;
    baking.add(key);
    const texture = await bake(spec);
    crops.set(key, cropOf(texture));
    baking.delete(key);
    for (const oldest of crops.keys()) {
      if (crops.size <= MOST_CROPS) break;
      crops.delete(oldest);
    }
    tell();
  };

  /** One object per look, so that a swatch is painted anew only when something about it changed. */
  const once = (key: string, texture: PatternTexture | null, make: () => SwatchPaint): SwatchPaint => {
    const before = paints.get(key);
    if (before && before.texture === texture) return before;
    const paint = make();
    paints.set(key, paint);
    return paint;
  };

  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    version: () => version,
    paintOf: (library, finish, laying, mayBake) => {
      const grout = laying.grout === undefined ? undefined : library.get(laying.grout);
      if (!lay || !isReady(library, grout ? [finish, grout] : [finish])) return firstPaint(finish);
      const sample = lay(library, finish, laying);
      if (!sample) return GRAY;
      const { labs, pattern } = sample;
      const texture = pattern && (laid.get(pattern.key) ?? crops.get(pattern.key) ?? null);
      if (pattern && !texture && mayBake) void bakeOnce(pattern);
      const key = `${pattern?.key ?? finish.id}|${labs.join(';')}|${finish.gloss_gu}`;
      return once(key, texture, () => ({ colors: labs.map(swatchColor), texture, glossGu: finish.gloss_gu }));
    },
    setLaid: (patterns) => {
      const before = laid;
      laid = new Map([...patterns].map(([key, texture]) => [key, cropOf(texture)]));
      if (before.size === laid.size && [...laid].every(([key, crop]) => before.get(key) === crop)) return;
      const kept = new Set([...laid.values(), ...crops.values()]);
      for (const [key, { texture }] of paints) if (texture && !kept.has(texture)) paints.delete(key);
      tell();
    },
  };
}

const cropped = new WeakMap<PatternTexture, PatternTexture>();

/** The part of a pattern that samples show, cut once. */
function cropOf(texture: PatternTexture): PatternTexture {
  const crop = cropped.get(texture) ?? cropTexture(texture, CROP_M.width, CROP_M.height);
  cropped.set(texture, crop);
  return crop;
}

const firstPaints = new WeakMap<Finish, SwatchPaint>();

/** The base color alone, where it is given as CIELAB; a plain gray for the moment otherwise. */
function firstPaint(finish: Finish): SwatchPaint {
  const color = finish.components[0]?.color;
  if (color?.kind !== 'lab') return GRAY;
  const paint = firstPaints.get(finish) ?? flatPaint(color.lab, finish.gloss_gu);
  firstPaints.set(finish, paint);
  return paint;
}
