import type { PatternSpec, PatternTexture } from '../engine/pattern/types';
import type { FromPattern, ToPattern } from '../workers/messages';

/** Stands for a pattern that could not be baked: the first color alone. */
const PLAIN: PatternTexture = {
  width: 1,
  height: 1,
  width_m: 1,
  height_m: 1,
  data: Uint8Array.of(0, 0, 0, 128),
};

/** Bakes patterns of samples in a worker of its own, started at first need, so that the picture's patterns never wait. */
export function createSampleBaker(): (spec: PatternSpec) => Promise<PatternTexture> {
  let worker: Worker | null = null;
  let tickets = 0;
  const waiting = new Map<string, (texture: PatternTexture) => void>();

  const start = (): Worker => {
    const started = new Worker(new URL('../workers/pattern.worker.ts', import.meta.url), {
      type: 'module',
      name: 'samples',
    });
    started.onmessage = ({ data }: MessageEvent<FromPattern>) => {
      waiting.get(data.key)?.(data.texture ?? PLAIN);
      waiting.delete(data.key);
    };
    return started;
  };

  return (spec) =>
    new Promise((resolve) => {
      worker ??= start();
      const key = String(++tickets);
      waiting.set(key, resolve);
      worker.postMessage({ key, spec } satisfies ToPattern);
    });
}
