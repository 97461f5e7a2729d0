import type { ComponentRole } from '../finish/types';
import type { SurfaceId } from '../surface';
import type { Assessment, Basis, PairVerdict, Severity } from './assessment';
import { isLoose, provenanceReason } from './cannot-tell';
import { faultCode } from './claims';
import { firmnessOf } from './firmness';
import { isOwnFault, isPlaceFault } from './hold-pairs';
import type { JudgeInput } from './input';
import { inDecisionOrder as inputInOrder } from './judge';
import { type Meets, meetsOf, nearest } from './meets';
import { AS_INSTALLED, AS_SAMPLE } from './number-words';
import type { PairJudgment } from './pair';
import { faultSentence, fineSentence } from './pair-sentences';
import { pairReason, pairWhy } from './pair-why';
import { allSamplePairs, anchorY, installedPair, isMajor, type PlacedColor, placedColors } from './pairs';
import { atMost, SEVERITY_RANK } from './severity';
import { componentPhrase, inDecisionOrder, joined, sentenceCase, surfacesPhrase } from './surface-words';

/** All finishes of a kitchen against each other: rows in decision order, a cell for every two. */
export interface PairTable {
  readonly option: string;
  readonly setting: string;
  readonly rows: readonly TableRow[];
  /** `a` before `b`, both indices of rows. */
  readonly cells: readonly TableCell[];
}

/** A finish on all the surfaces that are laid with it. */
export interface TableRow {
  readonly name: string;
  readonly label: string;
  readonly surfaces: readonly SurfaceId[];
}

export interface TableCell {
  readonly a: number;
  readonly b: number;
  /** The nearest that any two of their surfaces meet. */
  readonly meets: Meets;
  /** The worst or else most telling of what is said of their larger parts. */
  readonly worst: TablePart;
  /** Part by part, the most telling first. */
  readonly parts: readonly TablePart[];
}

/** What one part of one finish makes of one part of another, on one basis, where that is most telling. */
export interface TablePart {
  readonly a: ComponentRole;
  readonly b: ComponentRole;
  readonly basis: Basis;
  readonly verdict: PairVerdict;
  /** Of a fault that raises a warning; else null. */
  readonly severity: Severity | null;
  /** One of them is a grout line or a hair vein, and raises nothing. */
  readonly isMinor: boolean;
  /** Two whites a clear step apart in lightness, or any two; 0 and more, L*. */
  readonly lightnessStep: number;
  readonly text: string;
  readonly reason: string;
  readonly why: string;
}

/**
 * Every two finishes of a scheme, judged part by part on both bases, with those that say nothing. Verdicts are those of the
 * assessment, softened as there by what is known of the colors.
 */
export function pairTable(given: JudgeInput, assessment: Assessment): PairTable {
  const input = inputInOrder(given);
  const placed = placedColors(input);
  const rows = rowsOf(input);
  const rowOf = new Map(rows.flatMap(({ surfaces }, i) => surfaces.map((surface) => [surface, i] as const)));
  const told = new Map(assessment.pairs.map((p) => [findingKey(p.basis, side(p.a), side(p.b)), p]));
  const cells = new Map<string, Said[]>();
  for (const pair of allSamplePairs(placed, anchorY(input, placed))) {
    const [a, b] = [rowOf.get(pair.a.surface.surface)!, rowOf.get(pair.b.surface.surface)!];
    if (a === b) continue;
    const said = [sampleSaid(pair.a, pair.b, pair.judgment, pair.verdict, told), installedSaid(pair.a, pair.b, told)];
    const key = `${Math.min(a, b)} ${Math.max(a, b)}`;
    const list = cells.get(key) ?? [];
    for (const one of said) if (one) list.push(a < b ? one : turned(one));
    cells.set(key, list);
  }
  return {
    option: input.option,
    setting: input.setting.id,
    rows,
    cells: [...cells].map(([key, said]) => cellOf(key, said)),
  };
}

/** Surfaces that carry one finish, in the order of their first. */
function rowsOf(input: JudgeInput): TableRow[] {
  const rows = new Map<string, { label: string; surfaces: SurfaceId[] }>();
  for (const { surface, finish } of input.surfaces) {
    const row = rows.get(finish.id) ?? { label: finish.label, surfaces: [] };
    row.surfaces.push(surface);
    rows.set(finish.id, row);
  }
  return [...rows.values()].map(({ label, surfaces }) => ({
    name: sentenceCase(surfacesPhrase(surfaces).text.replace(/\bthe /g, '')),
    label,
    surfaces,
  }));
}

/** What is said of two placed parts before those alike are put together. */
interface Said extends Omit<TablePart, 'a' | 'b' | 'text'> {
  readonly a: PlacedColor;
  readonly b: PlacedColor;
  readonly judgment: PairJudgment;
  readonly may: boolean;
  readonly place: keyof typeof PLACE_REASONS | null;
}

const turned = (said: Said): Said => ({
  ...said,
  a: said.b,
  b: said.a,
  judgment: {
    ...said.judgment,
    faulty: said.judgment.faulty === null ? null : said.judgment.faulty === 'a' ? 'b' : 'a',
  },
});

type Told = ReadonlyMap<string, Assessment['pairs'][number]>;

const side = ({ surface, component }: { surface: SurfaceId; component: ComponentRole }) => `${surface}:${component}`;
const sideOf = (p: PlacedColor): string => side({ surface: p.surface.surface, component: p.color.role });
const findingKey = (basis: Basis, a: string, b: string): string => [basis, ...[a, b].sort()].join('|');

function sampleSaid(a: PlacedColor, b: PlacedColor, judgment: PairJudgment, own: PairVerdict, told: Told): Said {
  const finding = told.get(findingKey('sample', sideOf(a), sideOf(b)));
  return saidOf(a, b, judgment, finding ?? { verdict: own, numbers: {} }, 'sample');
}

function installedSaid(a: PlacedColor, b: PlacedColor, told: Told): Said | null {
  const pair = installedPair(a, b);
  if (!pair) return null;
  const { tintOff } = pair;
  const finding = told.get(findingKey('installed', sideOf(a), sideOf(b))) ?? { verdict: tintOff.verdict, numbers: {} };
  const said = saidOf(a, b, tintOff, finding, 'installed');
  if (faultCode(said.verdict) && !isOwnFault(pair)) {
    return { ...said, verdict: 'none', severity: null, place: 'hides' };
  }
  return isPlaceFault(pair) ? { ...said, place: 'makes' } : said;
}

function saidOf(
  a: PlacedColor,
  b: PlacedColor,
  judgment: PairJudgment,
  { verdict, numbers }: Pick<Assessment['pairs'][number], 'verdict' | 'numbers'>,
  basis: Basis,
): Said {
  const isMinor = !isMajor(a) || !isMajor(b);
  const may = firmnessOf(numbers['holds_in'] ?? null, isLoose(a.color) || isLoose(b.color)) !== 'firm';
  const severity = faultCode(verdict) && !isMinor ? judgment.severity : null;
  return {
    a,
    b,
    judgment,
    basis,
    verdict,
    severity: severity && may ? atMost('visible', severity) : severity,
    isMinor,
    lightnessStep: judgment.numbers['d_l']!,
    may,
    place: null,
    reason: verdict === 'cannot-tell' ? OPEN_REASON : pairReason(judgment),
    why: pairWhy(judgment, basis === 'sample' ? AS_SAMPLE : AS_INSTALLED),
  };
}

const OPEN_REASON = 'Within what is known of these colors the answer may turn.';

/** What the tint of their places does to two finishes that as such do or do not go together. */
const PLACE_REASONS = {
  hides: 'As finishes they would work against each other, but the light of their places hides it here.',
  makes: 'The finishes themselves agree; the light of their places sets them apart here.',
} as const;

function cellOf(key: string, said: readonly Said[]): TableCell {
  const [a, b] = key.split(' ').map(Number);
  const groups = new Map<string, Said[]>();
  for (const one of said) {
    const part = `${one.basis}|${one.a.color.key}|${one.b.color.key}`;
    groups.set(part, [...(groups.get(part) ?? []), one]);
  }
  const parts = [...groups.values()].map(partOf).sort((x, y) => tellingRank(y) - tellingRank(x));
  const meets = nearest(said.map((one) => meetsOf(one.a.surface, one.b.surface)));
  return { a: a!, b: b!, meets, worst: parts[0]!, parts };
}

/** Of two parts that meet on several surfaces what is most telling, with the surfaces it is true of. */
function partOf(said: readonly Said[]): TablePart {
  const most = said.reduce((best, one) => (tellingRank(one) > tellingRank(best) ? one : best));
  const { a, b, basis, verdict, severity, isMinor, lightnessStep, place, reason, why } = most;
  const alike = said.filter((one) => one.verdict === verdict && one.severity === severity && one.place === place);
  return {
    a: a.color.role,
    b: b.color.role,
    basis,
    verdict,
    severity,
    isMinor,
    lightnessStep,
    text: sentenceOf(most, surfacesOn('a', alike), surfacesOn('b', alike)),
    reason: place ? PLACE_REASONS[place] : reason,
    why,
  };
}

const surfacesOn = (side: 'a' | 'b', said: readonly Said[]): SurfaceId[] =>
  inDecisionOrder(said.map((one) => one[side].surface.surface));

function sentenceOf(
  { a, b, judgment, verdict, may }: Said,
  aSurfaces: readonly SurfaceId[],
  bSurfaces: readonly SurfaceId[],
): string {
  const [one, other] = [componentPhrase(a.color.role, aSurfaces), componentPhrase(b.color.role, bSurfaces)];
  if (verdict === 'cannot-tell') {
    return `Cannot tell from here how ${joined([one.text, other.text])} go together: ${provenanceReason([a.color, b.color])}. Compare the samples.`;
  }
  if (faultCode(verdict)) return faultSentence(judgment, a.color, aSurfaces, b.color, bSurfaces, may);
  return fineSentence({ ...judgment, verdict }, one, other);
}

const VERDICTS: readonly PairVerdict[] = [
  'none',
  'relates',
  'agree',
  'match',
  'same',
  'cannot-tell',
  'pulls-apart',
  'too-yellow',
  'looks-dirty',
];

/** How much one wants to know it, larger is more: warnings by their grade, then questions, then what is fine; larger parts first. */
function tellingRank(of: Pick<TablePart, 'verdict' | 'severity' | 'isMinor' | 'basis'>): number {
  const grade = of.severity ? 100 * (1 + SEVERITY_RANK[of.severity]) : 0;
  const base = VERDICTS.indexOf(of.verdict) + (of.basis === 'sample' ? 0.5 : 0);
  return grade + base - (of.isMinor ? 50 : 0);
}
