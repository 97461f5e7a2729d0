/** Closed stretches of a line, apart and in order. */
export type Stretches = readonly (readonly [from: number, to: number])[];

/** What two sets of stretches have in common; a single place may be left. */
export function common(a: Stretches, b: Stretches): Stretches {
  const shared = a.flatMap(([from, to]) =>
    b.flatMap(([start, end]): Stretches => {
      const both = [Math.max(from, start), Math.min(to, end)] as const;
      return both[0] <= both[1] ? [both] : [];
    }),
  );
  return merged(shared);
}

/** All places that lie from `least` to `most` after a place of the stretches; both below 0 for before. */
export const shifted = (stretches: Stretches, least: number, most: number): Stretches =>
  merged(stretches.map(([from, to]) => [from + least, to + most]));

/** The line from 0 to `length` without the insides of what lies in the way; its ends may be touched. */
export function clearOf(length: number, inWay: Stretches): Stretches {
  const clear: (readonly [number, number])[] = [];
  let from = 0;
  for (const [start, end] of merged(inWay)) {
    if (start >= length) break;
    if (start >= from) clear.push([from, start]);
    from = Math.max(from, end);
  }
  return from <= length ? [...clear, [from, length]] : clear;
}

/** The place of the stretches next to another; of two equally near the lower. Null where there is none. */
export function nearest(stretches: Stretches, place: number): number | null {
  let best: number | null = null;
  for (const [from, to] of stretches) {
    const here = Math.min(to, Math.max(from, place));
    if (best === null || Math.abs(here - place) < Math.abs(best - place)) best = here;
  }
  return best;
}

function merged(stretches: Stretches): Stretches {
  const out: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
}
