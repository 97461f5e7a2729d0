/**
 * Fewest slabs by trying everything: every cut at every whole unit through every rectangle, with every way to share the parts among its
 * two sides, and every way to share the parts among slabs. For a few parts and a slab of a few units only; no code of the product.
 */
export function bruteSlabs(
  parts: readonly (readonly [length: number, width: number])[],
  [length, width]: readonly [number, number],
  kerf: number,
  mayTurn: boolean,
): number {
  const known = new Map<string, boolean>();

  function canCut(w: number, h: number, set: number): boolean {
    const key = `${w},${h},${set}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = tryToCut(w, h, set);
    known.set(key, answer);
    return answer;
  }

  function tryToCut(w: number, h: number, set: number): boolean {
    if (set === 0) return true;
    if ((set & (set - 1)) === 0) {
      const [a, b] = parts[Math.log2(set)]!;
      return (a <= w && b <= h) || (mayTurn && b <= w && a <= h);
    }
    for (let some = (set - 1) & set; some > 0; some = (some - 1) & set) {
      for (let x = 1; x + kerf < w; x++) {
        if (canCut(x, h, some) && canCut(w - x - kerf, h, set ^ some)) return true;
      }
      for (let y = 1; y + kerf < h; y++) {
        if (canCut(w, y, some) && canCut(w, h - y - kerf, set ^ some)) return true;
      }
    }
    return false;
  }

  function fewest(i: number, slabs: readonly number[]): number {
    if (i === parts.length) return slabs.every((set) => canCut(length, width, set)) ? slabs.length : Infinity;
    const counts = slabs.map((set, s) => fewest(i + 1, slabs.with(s, set | (1 << i))));
    return Math.min(...counts, fewest(i + 1, [...slabs, 1 << i]));
  }

  return fewest(0, []);
}

/** Fewest seams at whole units, by trying every place; null where there is none. No code of the product. */
export function bruteSeams(
  length: number,
  cutouts: readonly (readonly [number, number])[],
  longest: number,
  shortest: number,
): number | null {
  if (length <= longest) return 0;
  // Fewest parts that end at each place.
  const parts: number[] = [0];
  for (let at = 1; at <= length; at++) {
    // Where two cut-outs meet nothing is left for a seam either.
    const isBetween = cutouts.some(([from]) => from === at) && cutouts.some(([, to]) => to === at);
    const isCut = isBetween || cutouts.some(([from, to]) => at > from && at < to);
    let best = Infinity;
    for (let from = 0; from < at; from++) {
      if (at - from >= shortest && at - from <= longest) best = Math.min(best, parts[from]! + 1);
    }
    parts.push(isCut && at < length ? Infinity : best);
  }
  return Number.isFinite(parts[length]!) ? parts[length]! - 1 : null;
}
