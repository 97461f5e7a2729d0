import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import { undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';
import type { Balance, BalanceVerdict } from './assessment';
import { balanceSentence } from './balance-sentence';
import { isLooseFinish } from './cannot-tell';
import type { Holds } from './claims';
import { type Firmness, firmnessOf } from './firmness';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';
import { isLarge } from './large-surfaces';
import type { PlacedColor } from './pairs';
import { surfacesTint, withoutTint } from './place-tint';
import type { SampleColor } from './sample-color';
import { areAlike, TEMPERATURE_CLASSES, type TemperatureClass, temperatureClass } from './temperature-class';
import { meanWeights, type ViewWeights, viewWeights } from './view-weights';

/** Area shares, sum 1. */
export type Shares = Readonly<Record<TemperatureClass, number>>;

/** Limits of the scheme verdict, area shares 0-1 and mean C*ab: all our judgment. */
export const SCHEME = {
  warmMin: 0.05,
  coolMany: 0.4,
  coolMin: 0.1,
  warmMany: 0.75,
  mutedChroma: 8,
} as const;

/** First match wins. A description of area shares, never a score. */
export function schemeVerdict(shares: Shares, meanChroma: number): BalanceVerdict {
  if (shares.warm < SCHEME.warmMin && shares.cool >= SCHEME.coolMany) return 'lacks-warm';
  if (shares.cool < SCHEME.coolMin && shares.warm + shares.leaning >= SCHEME.warmMany) return 'lacks-cool';
  if (shares.warm < SCHEME.warmMin && meanChroma < SCHEME.mutedChroma) return 'muted';
  return 'balanced';
}

/** One component on one surface, with its share of each view. */
export interface BalancePart {
  readonly surface: SurfaceId;
  readonly color: SampleColor;
  /** Share of each viewpoint, in the order of `views`; all parts of a viewpoint sum to 1. */
  readonly weights: readonly number[];
}

/** What people see as samples: every component with its share of every overview. */
export function balanceParts(
  input: JudgeInput,
  placed: readonly PlacedColor[],
  views: readonly ViewWeights[],
): BalancePart[] {
  return placed.map(({ surface, color }) => {
    const total = surface.finish.components.reduce((sum, c) => sum + c.share, 0);
    const i = input.surfaces.indexOf(surface);
    return {
      surface: surface.surface,
      color,
      weights: views.map((v) => (v.surfaces[i]! * color.share) / total),
    };
  });
}

export interface Reading {
  readonly shares: Shares;
  readonly meanChroma: number;
  readonly verdict: BalanceVerdict;
}

/** Shares and verdict over a set of classed, weighted colors. */
function readShares(parts: readonly { weight: number; kind: TemperatureClass; lab: Lab<'D65-2'> }[]): Reading {
  const shares: Record<TemperatureClass, number> = { warm: 0, leaning: 0, cool: 0, neutral: 0 };
  let meanChroma = 0;
  for (const part of parts) {
    shares[part.kind] += part.weight;
    meanChroma += part.weight * chromaOf(part.lab);
  }
  return { shares, meanChroma, verdict: parts.length === 0 ? 'nothing-chosen' : schemeVerdict(shares, meanChroma) };
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, x) => sum + x, 0) / numbers.length;

/** The verdict over the mean of the overviews, from parts alone: what the uncertainty draws repeat. */
export function sampleReading(parts: readonly BalancePart[]): Reading {
  const kinds = new Map<string, TemperatureClass>();
  return readShares(parts.map((p) => ({ weight: mean(p.weights), kind: kindOf(p.color, kinds), lab: p.color.lab })));
}

function kindOf(color: SampleColor, known: Map<string, TemperatureClass>): TemperatureClass {
  let kind = known.get(color.key);
  if (!kind) {
    kind = temperatureClass(color.lab, color.strength);
    known.set(color.key, kind);
  }
  return kind;
}

export interface BalanceJudgment {
  readonly balance: Balance;
  readonly carriers: Carriers;
  /** Overview viewpoints from which the verdict is another one. */
  readonly otherwiseFrom: readonly string[];
  /** Nothing is chosen yet for a surface of some size, so that the balance is one of what is. */
  readonly isPartial: boolean;
}

/**
 * Warm and cool over the overview views: decided on the sample basis, with the installed shares beside it.
 * @param howFirm how far the colors bear a verdict; softens the sentence
 */
export function judgeBalance(
  input: JudgeInput,
  placed: readonly PlacedColor[],
  howFirm: (verdict: BalanceVerdict) => Firmness = () => 'firm',
): BalanceJudgment {
  const views = viewWeights(input);
  const kinds = new Map<string, TemperatureClass>();
  const classed = balanceParts(input, placed, views).map((p) => ({
    surface: p.surface,
    weights: p.weights,
    weight: mean(p.weights),
    kind: kindOf(p.color, kinds),
    lab: p.color.lab,
  }));
  const whole = readShares(classed);
  const perView = views.map((_, v) => readShares(classed.map((p) => ({ ...p, weight: p.weights[v]! }))));
  const installed = installedReading(input, views) ?? whole;
  const otherwiseFrom = views.flatMap((v, i) =>
    v.viewpoint !== null && perView[i]!.verdict !== whole.verdict ? [v.viewpoint] : [],
  );
  const held = carriers(classed);
  const empty = (input.empty ?? []).filter(isLarge);
  const firmness = howFirm(whole.verdict);
  const { warm, leaning, cool, neutral } = whole.shares;
  const shown = installed.shares;
  const balance: Balance = {
    warm_share: warm,
    leaning_share: leaning,
    cool_share: cool,
    neutral_share: neutral,
    verdict: whole.verdict,
    basis: 'sample',
    sentence: balanceSentence({
      verdict: whole.verdict,
      firmness: firmness === 'firm' && (otherwiseFrom.length > 0 || empty.length > 0) ? 'may' : firmness,
      carriers: held,
      open: openSurfaces(input, views),
      empty,
      isStark: isStark(classed),
    }),
    installed: { shares: [shown.warm, shown.leaning, shown.cool, shown.neutral], verdict: installed.verdict },
    range: { warm: range(perView.map((r) => r.shares.warm)), cool: range(perView.map((r) => r.shares.cool)) },
    otherwise_from: otherwiseFrom,
    holds_in: null,
  };
  return { balance, carriers: held, otherwiseFrom, isPartial: empty.length > 0 };
}

/** How far apart in L* colors have to be that each fill such a share of the view, for a kitchen to be stark and not quiet. Our judgment. */
const STARK = { apart: 55, share: 0.08 } as const;

function isStark(parts: readonly { readonly weight: number; readonly lab: Lab<'D65-2'> }[]): boolean {
  const large = parts.filter(({ weight }) => weight >= STARK.share).map(({ lab }) => lab.l);
  return Math.max(...large) - Math.min(...large) >= STARK.apart;
}

/** Does the scheme ask for a warm or a cool surface? */
export const lacksSomething = (verdict: BalanceVerdict): boolean =>
  verdict === 'lacks-warm' || verdict === 'lacks-cool';

/**
 * How firmly a verdict stands. Quiet or balanced, nothing lacks: only where that is in doubt there is a question; which of the
 * two it is, is worth no more than a softer sentence.
 */
export function balanceFirmness(verdict: BalanceVerdict, holds: Holds, isLoose: boolean): Firmness {
  const named = firmnessOf(holds.balance, isLoose);
  if (named !== 'open' || lacksSomething(verdict)) return named;
  return firmnessOf(holds.nothingLacks, isLoose) === 'open' ? 'open' : 'may';
}

/** Whether a color that carries some of the balance is known only roughly. */
export function restsOnLooseColors(input: JudgeInput): boolean {
  const weights = meanWeights(viewWeights(input));
  return input.surfaces.some(({ finish }, i) => weights[i]! >= CARRIER_MIN && isLooseFinish(finish));
}

/** Surfaces still open that fill some of the view; a ceiling or a trim is not where one would set a color. */
function openSurfaces(input: JudgeInput, views: readonly ViewWeights[]): SurfaceId[] {
  const weights = meanWeights(views);
  return input.surfaces.flatMap(({ surface, state }, i) =>
    state === 'open' && weights[i]! >= OPEN_MIN && isLarge(surface) ? [surface] : [],
  );
}

const OPEN_MIN = 0.03;
const range = (xs: readonly number[]): readonly [number, number] => [Math.min(...xs), Math.max(...xs)];

/** Surfaces that carry a class, largest share first; a surface counts from a twentieth of the view. */
const CARRIER_MIN = 0.05;

type Carriers = Readonly<Record<TemperatureClass, readonly SurfaceId[]>>;

function carriers(parts: readonly { surface: SurfaceId; kind: TemperatureClass; weight: number }[]): Carriers {
  const of = (kind: TemperatureClass): SurfaceId[] => {
    const sums = new Map<SurfaceId, number>();
    for (const p of parts) if (p.kind === kind) sums.set(p.surface, (sums.get(p.surface) ?? 0) + p.weight);
    const heavy = [...sums].filter(([, share]) => share >= CARRIER_MIN);
    return heavy.sort((x, y) => y[1] - x[1]).map(([surface]) => surface);
  };
  return Object.fromEntries(TEMPERATURE_CLASSES.map((k) => [k, of(k)])) as unknown as Carriers;
}

/**
 * Shares as installed, the cast taken off: what the mix of lights makes of each place, place by place, then the mean tint
 * over what is seen. Eyes adapt to what is in view, but a place by the window and one under a lamp have no common cast.
 * A color counts as warm or cool only where it is that with the cast, too, or without any tint: a white that reads yellowish
 * beside a floor is not cool because other places are yellower still (our judgment).
 * Null before the light is known.
 * @param componentsOf colors of a surface's components in a place; as read unless given
 */
export function installedReading(
  input: JudgeInput,
  views: readonly ViewWeights[],
  componentsOf: (surface: JudgedSurface, reading: InstalledReading) => readonly Lab<'D65-2'>[] = (_, reading) =>
    reading.components,
): Reading | null {
  if (input.surfaces.every((s) => s.installed.length === 0)) return null;
  const weights = meanWeights(views);
  const seen = input.surfaces.flatMap((s, i) => {
    const shares = s.installed.map((r) => mean([0, ...r.viewShares]));
    const total = shares.reduce((sum, x) => sum + x, 0);
    return s.installed.map((reading, r) => ({
      finish: s.finish,
      reading,
      components: componentsOf(s, reading),
      tint: surfacesTint(reading).white,
      weight: weights[i]! * (total > 0 ? shares[r]! / total : 1 / s.installed.length),
    }));
  });
  const total = seen.reduce((sum, p) => sum + p.weight, 0);
  if (total === 0) return null;
  const cast = {
    a: seen.reduce((sum, p) => sum + p.weight * p.tint.a, 0) / total,
    b: seen.reduce((sum, p) => sum + p.weight * p.tint.b, 0) / total,
  };
  return readShares(
    seen.flatMap(({ finish, reading, components, weight }) => {
      const whole = finish.components.reduce((sum, c) => sum + c.share, 0);
      return finish.components.map((component, i) => {
        const withCast = withoutTint(components[i] ?? reading.average, reading.lightWhite);
        const lab = withoutTint(withCast, cast);
        const own = withoutTint(components[i] ?? reading.average, reading.placeWhite);
        const seen = classOf(lab);
        const kind = [withCast, own].some((one) => areAlike(classOf(one), seen)) ? seen : 'neutral';
        return { weight: ((weight / total) * component.share) / whole, kind, lab };
      });
    }),
  );
}

const classOf = (lab: Lab<'D65-2'>): TemperatureClass => temperatureClass(lab, () => undertoneOf(lab).strength);
