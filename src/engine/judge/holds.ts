import { yFromLightness } from '../color/lab';
import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import { mulberry32 } from '../random';
import type { Assessment } from './assessment';
import { balanceParts, sampleReading } from './balance';
import { AB_OF_L } from './cannot-tell';
import { type DrawnFault, faultCode, type Holds, isAssurance, type PairHolds } from './claims';
import { edgeSeverity, weakEdges } from './edges';
import type { JudgedSurface, JudgeInput } from './input';
import { assembleAssessment, inDecisionOrder } from './judge';
import { judgePair } from './pair';
import { anchorY, isMajor, type JudgedPair, pairKey, placedColors, samplePairs } from './pairs';
import { isNearWhite, recolored, type SampleColor, sampleColor } from './sample-color';
import { SEVERITY_RANK } from './severity';
import { viewWeights } from './view-weights';

export interface DrawOptions {
  /** How many sets of plausible colors to try. */
  readonly draws?: number;
  /** Same seed, same answer. */
  readonly seed?: number;
}

/**
 * The assessment with `holds_in` filled: the scheme is judged again under seeded random errors of its colors, and the words
 * soften to "may" or "cannot tell" where findings do not stand. Normal errors, sigma(L*) = the component's uncertainty,
 * sigma(a*) = sigma(b*) = 0.7 of it; a finish errs alike in all its components and on all its surfaces. Findings as installed are not drawn.
 */
export function holdsIn(
  given: JudgeInput,
  assessment: Assessment,
  { draws = 200, seed = 1 }: DrawOptions = {},
): Assessment {
  const holds = drawHolds(inDecisionOrder(given), draws, seed);
  return { ...assembleAssessment(given, holds, 'done'), repairs: assessment.repairs };
}

interface Tally {
  readonly pair: JudgedPair;
  readonly areWhites: boolean;
  same: number;
  readonly faults: Map<string, { readonly fault: DrawnFault; count: number }>;
  fault: number;
  fine: number;
}

function drawHolds(input: JudgeInput, draws: number, seed: number): Holds {
  const placed = placedColors(input);
  const views = viewWeights(input);
  const parts = balanceParts(input, placed, views);
  const nominal = sampleReading(parts).verdict;
  const anchor = anchorY(input, placed);
  const tallies = new Map<string, Tally>();
  for (const pair of samplePairs(placed, anchor)) {
    const key = pairKey(pair.a.color, pair.b.color);
    const counts = isMajor(pair.a) && isMajor(pair.b) && !tallies.has(key);
    const areWhites = isNearWhite(pair.a.color) && isNearWhite(pair.b.color);
    if (counts) tallies.set(key, { pair, areWhites, same: 0, faults: new Map(), fault: 0, fine: 0 });
  }
  const bySurface = new Map(input.surfaces.map((s) => [s.surface, s]));
  const edges = weakEdges(input).map((e) => ({
    key: e.key,
    severity: e.severity,
    one: weighedColors(bySurface.get(e.first[0]!)!),
    other: weighedColors(bySurface.get(e.second[0]!)!),
  }));
  const edgeHits = new Map(edges.map((e) => [e.key, 0]));
  let balanceHits = 0;

  const colors = new Map(placed.map((p) => [p.color.key, p.color]));
  const sources = [...new Set([...colors.values()].map(errorSource))].sort();
  const normal = normalNumbers(seed);
  for (let d = 0; d < draws; d++) {
    const drawn = new Map<string, SampleColor>();
    const errors = new Map(sources.map((source) => [source, [normal(), normal(), normal()] as const]));
    for (const [key, color] of colors) drawn.set(key, withError(color, errors.get(errorSource(color))!));
    for (const tally of tallies.values()) count(tally, drawn, anchor);
    const redrawn = parts.map((p) => ({ ...p, color: { ...drawn.get(p.color.key)!, share: p.color.share } }));
    if (sampleReading(redrawn).verdict === nominal) balanceHits++;
    for (const edge of edges) {
      const difference = Math.abs(drawnLrv(edge.one, drawn) - drawnLrv(edge.other, drawn));
      const severity = edgeSeverity(difference);
      if (severity && SEVERITY_RANK[severity] >= SEVERITY_RANK[edge.severity])
        edgeHits.set(edge.key, edgeHits.get(edge.key)! + 1);
    }
  }
  return {
    pair: (key) => shares(tallies.get(key), draws),
    edge: (key) => (edgeHits.has(key) ? edgeHits.get(key)! / draws : null),
    balance: balanceHits / draws,
  };
}

/** A fault that occurs less often is a stray draw: no need to name it. Our judgment. */
const STRAY = 0.05;

function shares(tally: Tally | undefined, draws: number): PairHolds | null {
  if (!tally) return null;
  const common = [...tally.faults.values()].filter(({ count }) => count / draws >= STRAY);
  return {
    same: tally.same / draws,
    fault: tally.fault / draws,
    faults: common.sort((x, y) => y.count - x.count).map(({ fault }) => fault),
    fine: tally.fine / draws,
  };
}

function count(tally: Tally, drawn: ReadonlyMap<string, SampleColor>, anchor: number | null): void {
  const a = drawn.get(tally.pair.a.color.key)!;
  const b = drawn.get(tally.pair.b.color.key)!;
  const { verdict, faulty } = judgePair({ color: a, lab: a.lab }, { color: b, lab: b.lab }, { anchorY: anchor });
  const fault = faultCode(verdict) !== null;
  if (verdict === tally.pair.judgement.verdict) tally.same++;
  if (fault) {
    tally.fault++;
    const suffering = faulty === null ? null : faulty === 'a' ? a.key : b.key;
    const name = `${verdict}|${suffering}`;
    const known = tally.faults.get(name);
    if (known) known.count++;
    else tally.faults.set(name, { fault: { verdict, faulty: suffering }, count: 1 });
  }
  if (tally.areWhites ? !fault : isAssurance(verdict)) tally.fine++;
}

/** The components of a finish come from one reading and err together; grout is a finish of its own. */
const errorSource = (color: SampleColor): string => (color.role === 'grout' ? color.key : color.finish);

/** @param error of L*, a*, b*, in standard deviations */
function withError(color: SampleColor, error: readonly [l: number, a: number, b: number]): SampleColor {
  const sigma = color.uncertaintyDe00;
  const { l, a, b } = color.lab;
  const lab: Lab<'D65-2'> = {
    l: Math.min(100, Math.max(0, l + sigma * error[0])),
    a: a + AB_OF_L * sigma * error[1],
    b: b + AB_OF_L * sigma * error[2],
  };
  return recolored(color, lab);
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
    lrvPerY: lrvFromReflectance(component.spectrum) / Math.max(1e-6, yFromLightness(component.labD65.l)),
  }));
}

/** Standard normal numbers by the Box-Muller transform. */
function normalNumbers(seed: number): () => number {
  const uniform = mulberry32(seed);
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}
