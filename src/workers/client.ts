import type { PatternTexture } from '../engine/pattern/types';
import type { Look } from '../kitchen/look';
import type { PointReading } from '../kitchen/study/point-reading';
import type { FromJudge, FromLight, FromPattern, ToJudge, ToLight, ToPattern } from './messages';
import type { Studio, StudioEvents } from './studio';

/** Baked patterns kept for looks to come; the least recently used go first. About 1 MB each. */
const MOST_PATTERNS = 32;

/** Starts the workers and ties them together. */
export function createStudio(events: StudioEvents): Studio {
  const light = new Worker(new URL('./light.worker.ts', import.meta.url), { type: 'module', name: 'light' });
  const judge = new Worker(new URL('./judge.worker.ts', import.meta.url), { type: 'module', name: 'judge' });
  const baker = new Worker(new URL('./pattern.worker.ts', import.meta.url), { type: 'module', name: 'pattern' });

  const patterns = new Map<string, PatternTexture>();
  const baking = new Set<string>();
  /** Looks that wait for their patterns, newest per option. */
  const unready = new Map<string, Extract<FromLight, { kind: 'look' }>>();
  const readers = new Map<number, (reading: PointReading | null) => void>();
  let tickets = 0;

  const toLight = (message: ToLight) => light.postMessage(message);

  light.onmessage = ({ data }: MessageEvent<FromLight>) => {
    switch (data.kind) {
      case 'room':
        return events.room(data.room);
      case 'light':
        return events.light(data.light);
      case 'look':
        unready.set(data.look.option, data);
        return release();
      case 'readings':
        return judge.postMessage({ input: data.input, complete: data.complete } satisfies ToJudge);
      case 'point':
        readers.get(data.ticket)?.(data.reading);
        readers.delete(data.ticket);
        return;
      case 'problem':
        return events.problem(data.problem);
    }
  };
  judge.onmessage = ({ data }: MessageEvent<FromJudge>) => events.assessment(data.assessment);
  baker.onmessage = ({ data }: MessageEvent<FromPattern>) => {
    baking.delete(data.key);
    patterns.set(data.key, data.texture);
    release();
  };
  for (const worker of [light, judge, baker]) {
    worker.onerror = (event) => {
      events.problem({
        code: 'worker-failed',
        text: `A background calculation stopped: ${event.message || 'it could not be loaded'}.`,
        remedy: 'Save your work, then reload the page.',
      });
    };
  }

  /** Hands on every look whose patterns are all baked; asks for those that are missing. */
  function release(): void {
    for (const [option, { look, patterns: needed }] of unready) {
      const missing = needed.filter(({ key }) => !patterns.has(key));
      for (const { key, spec } of missing) {
        if (baking.has(key)) continue;
        baking.add(key);
        baker.postMessage({ key, spec } satisfies ToPattern);
      }
      if (missing.length) continue;
      unready.delete(option);
      const found = new Map(needed.map(({ key }) => [key, use(key)]));
      events.look({ ...look, patterns: found } satisfies Look);
    }
  }

  /** Reads a baked pattern and marks it as used last. */
  function use(key: string): PatternTexture {
    const texture = patterns.get(key)!;
    patterns.delete(key);
    patterns.set(key, texture);
    for (const oldest of patterns.keys()) {
      if (patterns.size <= MOST_PATTERNS) break;
      patterns.delete(oldest);
    }
    return texture;
  }

  return {
    show: (project, { options, setting }) => toLight({ kind: 'show', project, options, setting }),
    readPoint: (option, rect, u, v) =>
      new Promise((resolve) => {
        const ticket = ++tickets;
        readers.set(ticket, resolve);
        toLight({ kind: 'read-point', ticket, option, rect, u, v });
      }),
    dispose() {
      for (const worker of [light, judge, baker]) worker.terminate();
      for (const resolve of readers.values()) resolve(null);
      readers.clear();
    },
  };
}
