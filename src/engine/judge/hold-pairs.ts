import { type DrawnFault, faultCode, type InstalledPairHolds, isAlike, isAssurance, type PairHolds } from './claims';
import { judgePair, type PairJudgment } from './pair';
import {
  type InstalledPair,
  installedPair,
  isMajor,
  type JudgedPair,
  type PlacedColor,
  pairKey,
  placedPairKey,
} from './pairs';
import type { Draw } from './plausible-draws';
import { isNearWhite, type SampleColor } from './sample-color';

/** Something counted draw by draw; what it found by key once all draws are through. */
export interface Tally<T> {
  readonly count: (draw: Draw) => void;
  readonly held: (draws: number) => (key: string) => T | null;
}

/** How often each pair of samples is judged as it was. Pairs with a minor side raise nothing and are not drawn. */
export function tallySamplePairs(pairs: readonly JudgedPair[], anchorY: number | null): Tally<PairHolds> {
  const counts = new Map<string, PairCount>();
  for (const pair of pairs) {
    const key = pairKey(pair.a.color, pair.b.color);
    if (isMajor(pair.a) && isMajor(pair.b) && !counts.has(key)) counts.set(key, new PairCount(pair, pair.judgment));
  }
  return {
    count({ samples }) {
      for (const counted of counts.values()) {
        const a = samples.get(counted.pair.a.color.key)!;
        const b = samples.get(counted.pair.b.color.key)!;
        const judgment = judgePair({ color: a, lab: a.lab }, { color: b, lab: b.lab }, { anchorY });
        counted.add(judgment, faultCode(judgment.verdict) !== null, a, b);
      }
    },
    held: (draws) => (key) => counts.get(key)?.shares(draws) ?? null,
  };
}

/** The same for pairs in place, in the order of the placed colors they were made from. */
export function tallyInstalledPairs(
  pairs: readonly InstalledPair[],
  placed: readonly PlacedColor[],
): Tally<InstalledPairHolds> {
  const index = new Map(placed.map((p, i) => [p, i]));
  const counts = new Map(
    pairs.map((pair) => [
      placedPairKey(pair),
      { pair, count: new PairCount(pair, pair.tintOff), byPlace: 0, byCurves: 0 },
    ]),
  );
  return {
    count(draw) {
      for (const counted of counts.values()) {
        const drawn = redrawn(draw.placed, counted.pair);
        counted.count.add(drawn.tintOff, isOwnFault(drawn), drawn.a.color, drawn.b.color);
        if (isPlaceFault(drawn)) counted.byPlace++;
        if (counted.count.areWhites && isOwnFault(redrawn(draw.curvesOnly(), counted.pair))) counted.byCurves++;
      }
    },
    held: (draws) => (key) => {
      const counted = counts.get(key);
      if (!counted) return null;
      return {
        ...counted.count.shares(draws),
        byPlace: counted.byPlace / draws,
        fineByCurves: 1 - counted.byCurves / draws,
      };
    },
  };

  function redrawn(drawn: readonly PlacedColor[], { a, b }: InstalledPair): InstalledPair {
    return installedPair(drawn[index.get(a)!]!, drawn[index.get(b)!]!)!;
  }
}

/** A fault of the finishes themselves: there as they are, and still with the tint of each place taken off. */
export const isOwnFault = ({ raw, tintOff }: InstalledPair): boolean =>
  faultCode(raw.verdict) !== null && faultCode(tintOff.verdict) !== null;

/**
 * A fault between whites that the surfaces around make: there with the mix of lights taken off, gone with the whole tint.
 * Notes are ceilings: nobody holds a finish against them.
 */
export const isPlaceFault = ({ mixOff, tintOff }: InstalledPair): boolean =>
  mixOff.faulty !== null && mixOff.severity !== 'note' && faultCode(tintOff.verdict) === null;

/** A fault that occurs less often is a stray draw: no need to name it. Our judgment. */
const STRAY = 0.05;

class PairCount {
  readonly areWhites: boolean;
  #same = 0;
  #alike = 0;
  #fault = 0;
  #fine = 0;
  #untold = 0;
  readonly #faults = new Map<string, { readonly fault: DrawnFault; count: number }>();

  constructor(
    readonly pair: { readonly a: PlacedColor; readonly b: PlacedColor },
    private readonly nominal: PairJudgment,
  ) {
    this.areWhites = isNearWhite(pair.a.color) && isNearWhite(pair.b.color);
  }

  add(judgment: PairJudgment, isFault: boolean, a: SampleColor, b: SampleColor): void {
    const { verdict, faulty } = judgment;
    if (verdict === this.nominal.verdict) this.#same++;
    if (isAlike(verdict)) this.#alike++;
    if (isFault) {
      this.#fault++;
      const suffering = faulty === null ? null : faulty === 'a' ? a.key : b.key;
      const name = `${verdict}|${suffering}`;
      const known = this.#faults.get(name);
      if (known) known.count++;
      else this.#faults.set(name, { fault: { verdict, faulty: suffering }, count: 1 });
    }
    if (this.#tellsNothing(judgment, isFault)) this.#untold++;
    else if (this.areWhites ? !isFault : isAssurance(verdict)) this.#fine++;
  }

  /** Whites that go together, and under an error are whites no more: that says neither that they do nor that they do not. */
  #tellsNothing({ verdict, numbers }: PairJudgment, isFault: boolean): boolean {
    if (!this.areWhites || isFault || isAssurance(verdict)) return false;
    return isAssurance(this.nominal.verdict) && !('d_wid' in numbers);
  }

  shares(draws: number): PairHolds {
    const common = [...this.#faults.values()].filter(({ count }) => count / draws >= STRAY);
    return {
      same: this.#same / draws,
      alike: this.#alike / draws,
      fault: this.#fault / draws,
      faults: common.sort((x, y) => y.count - x.count).map(({ fault }) => fault),
      fine: this.#fine / Math.max(1, draws - this.#untold),
    };
  }
}
