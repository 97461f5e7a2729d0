import { differenceCiede2000 } from '../color/difference';
import type { Lab } from '../color/types';
import { calmBlocks } from './calm-blocks';
import { colorBins } from './color-bins';
import { colorShares } from './color-shares';
import { type FoundColor, meanOf, type SampleBlocks } from './found-color';
import { type GroupCenter, groupColors } from './group-colors';
import { addSoftColors } from './soft-colors';
import type { Patch, SampleColor } from './types';

/** Where less of a sample is calm than this, its pattern is too fine for the picture and all of it is used. Our judgment. */
const LEAST_CALM = 0.1;
/** Blocks this near to where a group is densest make its color, CIELAB units or times the restlessness. Our judgment. */
const CORE = 1.5;
const CORE_RESTLESS = 1;
/** The densest place is near one of the heaviest bins. */
const TRIED_BINS = 100;

/**
 * The colors of a sample, largest share first: groups of blocks with valleys between them, then the ends of soft passages (veins
 * with haze), each the mean in linear light of its core. Shares are those of mixing in linear light.
 */
export function sampleColors(
  patch: Patch,
  use: Uint8Array,
  xyz: Float64Array,
  lab: Float64Array,
): readonly SampleColor[] {
  const { calm, share, restless } = calmBlocks({ ...patch, inside: use }, lab);
  const blocks: SampleBlocks = { use, xyz, lab, restless };
  const voting = share >= LEAST_CALM ? calm : use;
  const centers = groupColors(colorBins(lab, voting));
  const hard = centers.map((_, group) => coreColor(group, centers, voting, blocks));
  const several = addSoftColors(hard, blocks);
  // One color is the mean of all of it, grain and shade included.
  const found = several.length > 1 ? several : [meanOf(use, xyz)];
  const shares = colorShares(found, blocks);
  const spreads = spreadsOf(found, blocks);
  return found
    .map((one, k) => ({ lab: one.lab, share: shares[k]!, spreadDe00: spreads[k]! }))
    .sort((a, b) => b.share - a.share);
}

/** The color of a group: its mean where it is one heap, the mean about its densest place where it has a long tail. */
function coreColor(
  group: number,
  centers: readonly GroupCenter[],
  voting: Uint8Array,
  { xyz, lab, restless }: SampleBlocks,
): FoundColor {
  const own = voting.map((is, at) => (is && nearestOf(centers, lab, at).k === group ? 1 : 0));
  const bins = colorBins(lab, own);
  const radius = Math.max(CORE, CORE_RESTLESS * restless);
  let [best, most] = [centers[group]!, -1];
  const heaviest = Array.from(bins.weight, (weight, i) => ({ weight, i })).sort(
    (a, b) => b.weight - a.weight || a.i - b.i,
  );
  for (const { i } of heaviest.slice(0, TRIED_BINS)) {
    const center: GroupCenter = [bins.lab[3 * i]!, bins.lab[3 * i + 1]!, bins.lab[3 * i + 2]!];
    let weight = 0;
    for (let k = 0; k < bins.count; k++) {
      const away = distanceAt(bins.lab, k, center);
      if (away < radius) weight += bins.weight[k]! * (1 - (away / radius) ** 2);
    }
    if (weight > most) [best, most] = [center, weight];
  }
  return meanOf(
    own.map((is, at) => (is && distanceAt(lab, at, best) <= radius ? 1 : 0)),
    xyz,
  );
}

/** Root mean square CIEDE2000 difference of the blocks nearest to a color from it. */
function spreadsOf(found: readonly FoundColor[], { use, lab }: SampleBlocks): readonly number[] {
  const centers = found.map(({ lab: { l, a, b } }): GroupCenter => [l, a, b]);
  const sums = found.map(() => [0, 0] as [number, number]);
  for (let at = 0; at < use.length; at++) {
    if (!use[at]) continue;
    const { k } = nearestOf(centers, lab, at);
    const one: Lab<'D65-2'> = { l: lab[3 * at]!, a: lab[3 * at + 1]!, b: lab[3 * at + 2]! };
    sums[k]![0] += differenceCiede2000(one, found[k]!.lab) ** 2;
    sums[k]![1]++;
  }
  return sums.map(([squares, count]) => Math.sqrt(squares / Math.max(1, count)));
}

const distanceAt = (lab: Float64Array, at: number, [l, a, b]: GroupCenter): number =>
  Math.hypot(lab[3 * at]! - l, lab[3 * at + 1]! - a, lab[3 * at + 2]! - b);

function nearestOf(centers: readonly GroupCenter[], lab: Float64Array, at: number): { k: number; away: number } {
  let [k, away] = [0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < centers.length; i++) {
    const is = distanceAt(lab, at, centers[i]!);
    if (is < away) [k, away] = [i, is];
  }
  return { k, away };
}
