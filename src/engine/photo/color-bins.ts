/** Colors of a sample gathered into small bins, so that grouping them costs little and does not depend on their order. */
export interface ColorBins {
  /** Mean L*, a*, b* of each bin; three numbers each. */
  readonly lab: Float64Array;
  readonly weight: Float64Array;
  readonly count: number;
}

/** Side of a bin in L*, a*, b*: less than anybody sees. */
const BIN = 1;
const REACH = 512;

/** Bins of those blocks that `use` marks, in the order of their colors. */
export function colorBins(lab: Float64Array, use: Uint8Array): ColorBins {
  const sums = new Map<number, [number, number, number, number]>();
  for (let at = 0; at < use.length; at++) {
    if (!use[at]) continue;
    const [l, a, b] = [lab[3 * at]!, lab[3 * at + 1]!, lab[3 * at + 2]!];
    const key = (bin(l) * REACH + bin(a)) * REACH + bin(b);
    const sum = sums.get(key);
    if (sum) {
      sum[0] += l;
      sum[1] += a;
      sum[2] += b;
      sum[3]++;
    } else sums.set(key, [l, a, b, 1]);
  }
  const keys = [...sums.keys()].sort((one, other) => one - other);
  const means = new Float64Array(3 * keys.length);
  const weight = new Float64Array(keys.length);
  keys.forEach((key, i) => {
    const [l, a, b, count] = sums.get(key)!;
    means.set([l / count, a / count, b / count], 3 * i);
    weight[i] = count;
  });
  return { lab: means, weight, count: keys.length };
}

const bin = (value: number): number => Math.min(REACH - 1, Math.max(0, Math.round(value / BIN) + REACH / 2));
