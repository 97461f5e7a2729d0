import type { ColorBins } from './color-bins';

/** Middle of a group of colors: L*, a*, b*. */
export type GroupCenter = readonly [number, number, number];

/** A sample has at most this many colors: the pattern's weights have four channels. */
const MOST_GROUPS = 4;
/** Two groups are two colors only from this CIELAB distance on. Our judgment. */
const LEAST_APART = 4;
/** Between two colors there are fewer pixels than around either: at most this part of the lower of the two heaps. Our judgment. */
const VALLEY = 0.4;
/** Groups with less of the pixels than this are no color of the finish but dust, a scratch or an edge. Our judgment. */
const LEAST_SHARE = 0.01;
/** And with less than this only if they stand out by `STANDS_OUT` from every other. Our judgment. */
const SMALL_SHARE = 0.03;
const STANDS_OUT = 8;
/** Dust and glare take groups, too, so that a few more are looked for. */
const MOST_TRIED = 6;
const ROUNDS = 30;
/** Bins that are tried as the beginning of a new group. */
const TRIES = 12;

/**
 * The colors of a sample: k-means in CIELAB with 1 to 4 groups, without any chance in it: a new group begins at the bin that takes away
 * the most squared distance. Taken is the largest number of groups of which each pair lies `LEAST_APART` and has a valley between
 * (a gradient or a noisy color is one color however wide), and each holds enough of the pixels. Largest group first.
 */
export function groupColors(bins: ColorBins): readonly GroupCenter[] {
  let taken = settled(bins, [meanOf(bins)]);
  let tried = taken;
  for (let k = 2; k <= MOST_TRIED && bins.count >= k; k++) {
    tried = withAnother(bins, tried);
    const real = withoutUnreal(bins, tried);
    if (real.length > taken.length && real.length <= MOST_GROUPS) taken = real;
  }
  const shares = sharesOf(bins, taken);
  return taken
    .map((center, i) => ({ center, share: shares[i]! }))
    .sort((a, b) => b.share - a.share)
    .map(({ center }) => center);
}

function withAnother(bins: ColorBins, centers: readonly GroupCenter[]): readonly GroupCenter[] {
  const far = Float64Array.from({ length: bins.count }, (_, i) => nearest(bins, i, centers).squared);
  const gains = Array.from({ length: bins.count }, (_, i) => i)
    .sort((one, other) => far[other]! * bins.weight[other]! - far[one]! * bins.weight[one]! || one - other)
    .slice(0, TRIES);
  let best = centers;
  let least = Number.POSITIVE_INFINITY;
  for (const i of gains) {
    const next = settled(bins, [...centers, centerAt(bins, i)]);
    const squares = squaresOf(bins, next);
    if (squares < least - 1e-9) [best, least] = [next, squares];
  }
  return best;
}

/** Lloyd's rounds until the middles rest. Groups that lose all their bins go. */
function settled(bins: ColorBins, start: readonly GroupCenter[]): readonly GroupCenter[] {
  let centers = start;
  for (let round = 0; round < ROUNDS; round++) {
    const sums = centers.map(() => [0, 0, 0, 0]);
    for (let i = 0; i < bins.count; i++) {
      const sum = sums[nearest(bins, i, centers).group]!;
      const weight = bins.weight[i]!;
      for (let c = 0; c < 3; c++) sum[c]! += weight * bins.lab[3 * i + c]!;
      sum[3]! += weight;
    }
    const next = sums
      .filter((sum) => sum[3]! > 0)
      .map((sum): GroupCenter => [sum[0]! / sum[3]!, sum[1]! / sum[3]!, sum[2]! / sum[3]!]);
    const isResting =
      next.length === centers.length && next.every((center, k) => distance(center, centers[k]!) < 0.001);
    centers = next;
    if (isResting) break;
  }
  return centers;
}

/** What is left when groups that are no colors of their own have joined their neighbors, one after the other. */
function withoutUnreal(bins: ColorBins, groups: readonly GroupCenter[]): readonly GroupCenter[] {
  let centers = groups;
  while (centers.length > 1) {
    const shares = sharesOf(bins, centers);
    const small = centers.findIndex((center, i) => {
      if (shares[i]! >= SMALL_SHARE) return false;
      if (shares[i]! < LEAST_SHARE) return true;
      return centers.some((other, k) => k !== i && distance(center, other) < STANDS_OUT);
    });
    const pair = small >= 0 ? null : unparted(bins, centers);
    if (small < 0 && !pair) break;
    if (small >= 0) {
      // Its pixels stay out of the others' middles: they are not their color.
      centers = centers.filter((_, i) => i !== small);
      continue;
    }
    const [one, other] = pair!;
    const all = shares[one]! + shares[other]!;
    const joined = [0, 1, 2].map(
      (c) => (centers[one]![c]! * shares[one]! + centers[other]![c]! * shares[other]!) / all,
    ) as unknown as GroupCenter;
    centers = settled(bins, [...centers.filter((_, i) => i !== one && i !== other), joined]);
  }
  return centers;
}

/** The nearest pair that is one color: too close, or without a valley between. */
function unparted(bins: ColorBins, centers: readonly GroupCenter[]): readonly [number, number] | null {
  let found: readonly [number, number] | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let one = 0; one < centers.length; one++) {
    for (let other = one + 1; other < centers.length; other++) {
      const apart = distance(centers[one]!, centers[other]!);
      if (apart >= least || (apart >= LEAST_APART && hasValley(bins, centers, one, other))) continue;
      [found, least] = [[one, other], apart];
    }
  }
  return found;
}

/** The way between two middles in steps no finer than bins, or gaps between bins would look like valleys. */
const FINEST_STEP = 1.25;
const MOST_STEPS = 10;

function hasValley(bins: ColorBins, centers: readonly GroupCenter[], one: number, other: number): boolean {
  const [from, to] = [centers[one]!, centers[other]!];
  const way = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const apart = Math.hypot(...way);
  // An even number, so that one step lies in the middle.
  const half = Math.max(1, Math.floor(Math.min(MOST_STEPS, apart / FINEST_STEP) / 2));
  // Half a way beyond either middle: a heap's top lies there where its middle is drawn towards the other.
  const heap = new Float64Array(4 * half + 1);
  for (let i = 0; i < bins.count; i++) {
    const { group } = nearest(bins, i, centers);
    if (group !== one && group !== other) continue;
    let along = 0;
    for (let c = 0; c < 3; c++) along += (bins.lab[3 * i + c]! - from[c]!) * way[c]!;
    const place = (along / apart ** 2) * 2 * half + half;
    const low = Math.floor(place);
    // Shared between two steps, so that a bin at a border does not jump.
    if (low >= 0 && low < heap.length) heap[low]! += bins.weight[i]! * (1 - (place - low));
    if (low + 1 >= 0 && low + 1 < heap.length) heap[low + 1]! += bins.weight[i]! * (place - low);
  }
  const middle = 2 * half;
  const top = (part: Float64Array) => part.reduce((most, value) => Math.max(most, value), 0);
  const reach = half > 1 ? 1 : 0;
  const lowest = Math.min(...heap.subarray(middle - reach, middle + reach + 1));
  const tops = Math.min(top(heap.subarray(0, middle - reach)), top(heap.subarray(middle + reach + 1)));
  return lowest <= VALLEY * tops;
}

function sharesOf(bins: ColorBins, centers: readonly GroupCenter[]): readonly number[] {
  const shares = centers.map(() => 0);
  let all = 0;
  for (let i = 0; i < bins.count; i++) {
    shares[nearest(bins, i, centers).group]! += bins.weight[i]!;
    all += bins.weight[i]!;
  }
  return shares.map((share) => share / all);
}

function squaresOf(bins: ColorBins, centers: readonly GroupCenter[]): number {
  let sum = 0;
  for (let i = 0; i < bins.count; i++) sum += bins.weight[i]! * nearest(bins, i, centers).squared;
  return sum;
}

function nearest(bins: ColorBins, i: number, centers: readonly GroupCenter[]): { group: number; squared: number } {
  let [group, squared] = [0, Number.POSITIVE_INFINITY];
  for (let k = 0; k < centers.length; k++) {
    const [l, a, b] = centers[k]!;
    const is = (bins.lab[3 * i]! - l) ** 2 + (bins.lab[3 * i + 1]! - a) ** 2 + (bins.lab[3 * i + 2]! - b) ** 2;
    if (is < squared) [group, squared] = [k, is];
  }
  return { group, squared };
}

function meanOf(bins: ColorBins): GroupCenter {
  const sum = [0, 0, 0];
  let all = 0;
  for (let i = 0; i < bins.count; i++) {
    for (let c = 0; c < 3; c++) sum[c]! += bins.weight[i]! * bins.lab[3 * i + c]!;
    all += bins.weight[i]!;
  }
  return [sum[0]! / all, sum[1]! / all, sum[2]! / all];
}

const centerAt = (bins: ColorBins, i: number): GroupCenter => [
  bins.lab[3 * i]!,
  bins.lab[3 * i + 1]!,
  bins.lab[3 * i + 2]!,
];

const distance = (a: GroupCenter, b: GroupCenter): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
