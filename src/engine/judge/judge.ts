import { SURFACES } from '../surface';
import type { Assessment, PairFinding } from './assessment';
import { balanceFirmness, judgeBalance, restsOnLooseColors } from './balance';
import { busyGroups } from './busy-patterns';
import { isWithheld } from './cannot-tell';
import { type Holds, isAlike, NOT_DRAWN, type PairHolds } from './claims';
import { weakEdges } from './edges';
import type { JudgeInput } from './input';
import { installedFaultWarnings } from './installed-faults';
import { lightMixWarnings } from './light-mix-warnings';
import { lowLightWarnings } from './low-light-warnings';
import { patternWarnings, woodWarnings } from './material-warnings';
import { meetsOf } from './meets';
import { type NearWoods, nearWoods } from './near-woods';
import { splitWarnings } from './pair-splits';
import { pairWarnings, shownVerdict } from './pair-warnings';
import {
  anchorY,
  type InstalledPair,
  installedPairs,
  type JudgedPair,
  type PlacedColor,
  pairKey,
  placedColors,
  placedPairKey,
  samplePairs,
} from './pairs';
import { bounceWarnings } from './place-warnings';
import { balanceWarnings, edgeWarnings } from './scheme-warnings';
import { lightShiftWarnings } from './shift-warnings';
import { surfaceRecord } from './surface-record';
import { orderedWarnings } from './warnings';

/**
 * Judges a scheme in its room and light: records, pairs, balance and warnings, gravest first.
 * How firmly findings stand (`holds_in`) and repairs take longer: null and empty here, status `pending`.
 * The order of the input's surfaces does not matter.
 */
export const judge = (input: JudgeInput): Assessment => assembleAssessment(input, NOT_DRAWN, 'pending');

/** The assessment with its wording as firm as `holds` allows. */
export function assembleAssessment(given: JudgeInput, holds: Holds, status: Assessment['status']): Assessment {
  const input = inDecisionOrder(given);
  const placed = placedColors(input);
  const samples = samplePairs(placed, anchorY(input, placed));
  const installed = installedPairs(placed);
  const woods = nearWoods(placed);
  const balance = judgeBalance(input, placed, (verdict) => balanceFirmness(verdict, holds, restsOnLooseColors(input)));
  return {
    project: input.project,
    option: input.option,
    setting: input.setting,
    surfaces: input.surfaces.map(surfaceRecord),
    pairs: [
      ...samples.map((p) => sampleFinding(p, holds)),
      ...installed.flatMap((p) => installedFinding(p, holds)),
    ].filter((pair) => !isNearWoods(pair, woods)),
    balance: { ...balance.balance, holds_in: holds.balance },
    warnings: orderedWarnings([
      ...balanceWarnings(balance, holds),
      ...pairWarnings(samples, holds),
      ...patternWarnings(busyGroups(placed), holds),
      ...woodWarnings(woods, holds),
      ...edgeWarnings(weakEdges(input), holds),
      ...installedFaultWarnings(installed, samples, holds),
      ...bounceWarnings(input, installed, holds),
      ...lightMixWarnings(input),
      ...lightShiftWarnings(input, holds),
      ...splitWarnings(samples, holds),
      ...lowLightWarnings(input),
    ]),
    repairs: [],
    unrepaired: [],
    status,
  };
}

/** The same input with its surfaces in the trade's decision order, on which every finding's order rests. */
export const inDecisionOrder = (input: JudgeInput): JudgeInput => ({
  ...input,
  surfaces: [...input.surfaces].sort((a, b) => SURFACES.indexOf(a.surface) - SURFACES.indexOf(b.surface)),
});

/** Woods that nearly match echo each other only by the numbers of their parts: that is no agreement to tell. */
const isNearWoods = ({ a, b, verdict }: PairFinding, woods: readonly NearWoods[]): boolean =>
  isEcho(verdict) &&
  woods.some(({ firstSurfaces: one, secondSurfaces: other }) =>
    one.includes(a.surface) ? other.includes(b.surface) : other.includes(a.surface) && one.includes(b.surface),
  );

const isEcho = (verdict: PairFinding['verdict']): boolean => verdict === 'relates' || isAlike(verdict);

const side = (placed: PlacedColor) => ({ surface: placed.surface.surface, component: placed.color.role });

function sampleFinding(pair: JudgedPair, holds: Holds): PairFinding {
  const standing = holds.pair(pairKey(pair.a.color, pair.b.color));
  return {
    a: side(pair.a),
    b: side(pair.b),
    verdict: shownVerdict(pair, standing),
    meets: meetsOf(pair.a.surface, pair.b.surface),
    de00: pair.judgment.de00,
    basis: 'sample',
    numbers: { ...pair.judgment.numbers, ...holdNumbers(standing) },
  };
}

/** As installed with the tint of each place taken off; the reading as it is stands beside it. */
function installedFinding(pair: InstalledPair, holds: Holds): PairFinding[] {
  const { a, b, raw, tintOff } = pair;
  if (tintOff.verdict === 'none') return [];
  const standing = holds.installed(placedPairKey(pair));
  const withheld = isWithheld(
    tintOff,
    { color: a.color, lab: a.installed!.tintOff },
    { color: b.color, lab: b.installed!.tintOff },
  );
  const numbers: Record<string, number> = { ...tintOff.numbers, de00_as_it_is: raw.de00, ...holdNumbers(standing) };
  if ('d_wid' in raw.numbers) numbers['d_wid_as_it_is'] = raw.numbers['d_wid']!;
  const verdict = withheld ? 'cannot-tell' : shownVerdict(tintOff, standing);
  const meets = meetsOf(a.surface, b.surface);
  return [{ a: side(a), b: side(b), verdict, meets, de00: tintOff.de00, basis: 'installed', numbers }];
}

const holdNumbers = (standing: PairHolds | null): Record<string, number> =>
  standing ? { holds_in: standing.same, fine_in: standing.fine } : {};
