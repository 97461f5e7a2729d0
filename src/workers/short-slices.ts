import type { InSlices } from './job';

/** As long as a message may wait while something is worked out in passing, ms. */
const SLICE_MS = 6;

/** Work in many small steps as slices of a few milliseconds. */
export function* inShortSlices<T>(steps: InSlices<T>, sliceMs: number = SLICE_MS): InSlices<T> {
  for (;;) {
    const until = performance.now() + sliceMs;
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (performance.now() >= until) break;
    }
    yield null;
  }
}
