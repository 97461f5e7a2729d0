import { yFromLightness } from '../color/lab';
import { lrvPerY } from '../color/lrv';
import type { Assessment } from './assessment';
import { balanceParts, installedReading, lacksSomething, sampleReading } from './balance';
import type { Holds } from './claims';
import { edgeSeverity, weakEdges } from './edges';
import { tallyPatterns, tallyWoods } from './hold-materials';
import { type Tally, tallyInstalledPairs, tallySamplePairs } from './hold-pairs';
import { tallyShifts, tallyTints } from './hold-places';
import type { JudgedSurface, JudgeInput } from './input';
import { assembleAssessment, inDecisionOrder } from './judge';
import { anchorY, installedPairs, placedColors, samplePairs } from './pairs';
import { plausibleDraws } from './plausible-draws';
import { type SampleColor, sampleColor } from './sample-color';
import { viewWeights } from './view-weights';

export interface DrawOptions {
  /** How many sets of plausible colors to try. */
  readonly draws?: number;
  /** Same seed, same answer. */
  readonly seed?: number;
}

/**
 * The assessment with `holds_in` filled: the scheme is judged again under seeded random errors of its colors and, in place,
 * with the curves that such colors may have (see `plausibleDraws`); the words soften to "may" or "cannot tell" where
 * findings do not stand. What rests on room and lamps alone (low light, the mix of lights) is not drawn.
 */
export function holdsIn(
  given: JudgeInput,
  assessment: Assessment,
  { draws = 200, seed = 1 }: DrawOptions = {},
): Assessment {
  const holds = drawHolds(inDecisionOrder(given), draws, seed);
  const { repairs, unrepaired } = assessment;
  return { ...assembleAssessment(given, holds, 'held'), repairs, unrepaired };
}

function drawHolds(input: JudgeInput, draws: number, seed: number): Holds {
  const placed = placedColors(input);
  const anchor = anchorY(input, placed);
  const pairs = tallySamplePairs(samplePairs(placed, anchor), anchor);
  const installed = tallyInstalledPairs(installedPairs(placed), placed);
  const edges = tallyEdges(input);
  const patterns = tallyPatterns(placed);
  const woods = tallyWoods(placed);
  const tints = tallyTints(input);
  const shifts = tallyShifts(input);
  const tallies = [pairs, installed, edges, patterns, woods, tints, shifts];

  const views = viewWeights(input);
  const parts = balanceParts(input, placed, views);
  const nominal = sampleReading(parts).verdict;
  const nominalInstalled = installedReading(input, views)?.verdict ?? nominal;
  // Only where the light tips the balance is there a sentence that has to stand.
  const isTipped = nominalInstalled !== nominal;
  let balanceHits = 0;
  let fineHits = 0;
  let installedHits = 0;
  for (const draw of plausibleDraws(placed, draws, seed)) {
    for (const tally of tallies) tally.count(draw);
    const redrawn = parts.map((p) => ({ ...p, color: { ...draw.samples.get(p.color.key)!, share: p.color.share } }));
    const { verdict } = sampleReading(redrawn);
    if (verdict === nominal) balanceHits++;
    if (!lacksSomething(verdict)) fineHits++;
    if (!isTipped) continue;
    const there = installedReading(input, views, (s, reading) => draw.read(s, reading).components);
    if (there?.verdict === nominalInstalled) installedHits++;
  }
  return {
    pair: pairs.held(draws),
    installed: installed.held(draws),
    edge: edges.held(draws),
    patterns: patterns.held(draws),
    woods: woods.held(draws),
    tint: tints.held(draws),
    shift: shifts.held(draws),
    balance: balanceHits / draws,
    nothingLacks: fineHits / draws,
    installedBalance: isTipped ? installedHits / draws : null,
  };
}

/** How often a weak edge is at least as weak. */
function tallyEdges(input: JudgeInput): Tally<number> {
  const bySurface = new Map(input.surfaces.map((s) => [s.surface, s]));
  const hits = new Map<string, number>();
  const edges = weakEdges(input).map((e) => ({
    key: e.key,
    isWeak: e.isWeak,
    one: weighedColors(bySurface.get(e.first[0]!)!),
    other: weighedColors(bySurface.get(e.second[0]!)!),
  }));
  for (const { key } of edges) hits.set(key, 0);
  return {
    count({ samples }) {
      for (const edge of edges) {
        const severity = edgeSeverity(drawnLrv(edge.one, samples), drawnLrv(edge.other, samples));
        if (severity && (severity === 'visible' || !edge.isWeak)) hits.set(edge.key, hits.get(edge.key)! + 1);
      }
    },
    held: (draws) => (key) => (hits.has(key) ? hits.get(key)! / draws : null),
  };
}

/** Area mean of the light reflectance value under drawn colors: each component's moves with its Y. */
function drawnLrv(components: readonly WeighedColor[], drawn: ReadonlyMap<string, SampleColor>): number {
  let sum = 0;
  for (const c of components) sum += c.weight * c.lrvPerY * yFromLightness(drawn.get(c.key)!.lab.l);
  return sum;
}

interface WeighedColor {
  readonly key: string;
  readonly weight: number;
  readonly lrvPerY: number;
}

function weighedColors(surface: JudgedSurface): WeighedColor[] {
  const total = surface.finish.components.reduce((sum, c) => sum + c.share, 0);
  return surface.finish.components.map((component, i) => ({
    key: sampleColor(surface.surface, surface.finish, i).key,
    weight: component.share / total,
    lrvPerY: lrvPerY(component.spectrum),
  }));
}
