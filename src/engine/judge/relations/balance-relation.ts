import type { SurfaceId } from '../../surface';
import type { BalanceVerdict } from '../assessment';
import { type BalancePart, type Reading as BalanceReading, SCHEME, sampleReading } from '../balance';
import { joined, sentenceCase, surfacesPhrase } from '../surface-words';
import { type TemperatureClass, temperatureClass } from '../temperature-class';
import { typicalShare } from '../view-weights';
import type { RelationRule } from './rule';
import type { SeenScheme, SeenSurface } from './seen-scheme';
import type { Claim, Miss } from './types';

type BalanceClaim = Extract<Claim, { kind: 'balance' }>;
type Surfaces = readonly SurfaceId[];

/** A surface counts as bringing warmth or cool from a twentieth of the view, as in the sentence of the balance. */
const CARRIER_MIN = 0.05;

/** Share of the view under which nothing is left to speak of. Our judgment. */
const NOTHING = 0.01;

/**
 * A look of which nobody knows the view has to name this share of a typical one: what it leaves out may be what brings the
 * warmth. Our judgment.
 */
const NAMED_MIN = 0.75;

const namedShare = ({ surfaces }: SeenScheme): number => typicalShare(surfaces.map(({ surface }) => surface));

const partsOf = ({ surfaces, views }: SeenScheme): BalancePart[] =>
  surfaces.flatMap(({ surface, colors }) =>
    colors.map(({ color, weight }) => ({
      surface,
      color,
      weights: views.get(surface)!.map((share) => share * weight),
    })),
  );

const shareOf = (scheme: SeenScheme, surface: SurfaceId): number => {
  const views = scheme.views.get(surface) ?? [];
  return views.reduce((sum, x) => sum + x, 0) / Math.max(1, views.length);
};

/** Share of the view that is of one temperature, by surface, largest first. */
function carriersOf(
  scheme: SeenScheme,
  wanted: TemperatureClass,
): { readonly surface: SurfaceId; readonly share: number }[] {
  return scheme.surfaces
    .map((seen) => ({ surface: seen.surface, share: shareOf(scheme, seen.surface) * partOf(seen, wanted) }))
    .filter(({ share }) => share >= CARRIER_MIN)
    .sort((a, b) => b.share - a.share);
}

/** Share of a surface that is of one temperature. */
const partOf = ({ colors }: SeenSurface, wanted: TemperatureClass): number =>
  colors.reduce(
    (sum, { color, weight }) => sum + (temperatureClass(color.lab, color.strength) === wanted ? weight : 0),
    0,
  );

const surfacesOf = (list: readonly { readonly surface: SurfaceId }[]): Surfaces => list.map(({ surface }) => surface);
const sumOf = (list: readonly { readonly share: number }[]): number => list.reduce((sum, { share }) => sum + share, 0);

/** Warm and cool: the verdict by shares of the view, and which surfaces bring which. Shares only, never a mean. */
export const balanceRule: RelationRule<'balance'> = {
  propose(scheme) {
    if (scheme.surfaces.length === 0 || (scheme.isTypicalView && namedShare(scheme) < NAMED_MIN)) return [];
    const { shares, verdict } = sampleReading(partsOf(scheme));
    const warm = surfacesOf(carriersOf(scheme, 'warm'));
    const cool = surfacesOf(carriersOf(scheme, 'cool'));
    const numbers = {
      warm_share: shares.warm,
      leaning_share: shares.leaning,
      cool_share: shares.cool,
      neutral_share: shares.neutral,
    };
    return [{ claim: { kind: 'balance', verdict, warm, cool }, numbers }];
  },
  read(claim, scheme, numbers) {
    if (scheme.surfaces.length === 0) return null;
    const parts = partsOf(scheme);
    const reading = sampleReading(parts);
    return {
      holds: reading.verdict === claim.verdict && missing(claim, reading).length === 0,
      words: () => ({ here: hereWords(claim, scheme, reading, numbers), by: missOf(claim, reading, numbers) }),
    };
  },
  say({ verdict, warm, cool }, numbers, may) {
    const bring = (surfaces: Surfaces, what: string) => {
      const who = surfacesPhrase(surfaces);
      return `${who.text} ${who.plural ? 'bring' : 'brings'} ${what}`;
    };
    const who = [
      ...(warm.length > 0 ? [bring(warm, `the warmth (${percentOf(numbers['warm_share'])} of the view)`)] : []),
      ...(cool.length > 0 ? [bring(cool, `the cool (${percentOf(numbers['cool_share'])})`)] : []),
    ];
    // With one of the two alone nothing holds the other.
    if (verdict === 'balanced' && who.length === 1) return `${sentenceCase(who[0]!)}; the rest is quiet.`;
    return `${sentenceCase(verdictWords(verdict, may))}${who.length > 0 ? `: ${joined(who)}` : ''}.`;
  },
  open: () => 'How warm and cool balance is too close to call.',
};

/** What the look has in view and this scheme has not; under the share by which the findings say so. */
function missing({ warm, cool }: BalanceClaim, { shares }: BalanceReading): readonly ('warm' | 'cool')[] {
  return [
    ...(warm.length > 0 && shares.warm < SCHEME.warmMin ? (['warm'] as const) : []),
    ...(cool.length > 0 && shares.cool < SCHEME.coolMin ? (['cool'] as const) : []),
  ];
}

const percentOf = (share: number | undefined): string => `${Math.round(100 * (share ?? 0))}%`;

function verdictWords(verdict: BalanceVerdict, may: boolean): string {
  switch (verdict) {
    case 'balanced':
      return `warm and cool ${may ? 'may hold' : 'hold'} each other`;
    case 'lacks-warm':
      return `most of it ${may ? 'may be' : 'is'} cool or gray`;
    case 'lacks-cool':
      return `all of it ${may ? 'may lean' : 'leans'} warm`;
    case 'muted':
      return `all of it ${may ? 'may be' : 'is'} quiet and near neutral`;
    case 'nothing-chosen':
      return 'nothing is chosen yet';
  }
}

/** What became of the surface that brought warmth or cool, and what that makes of the whole. */
function hereWords(
  claim: BalanceClaim,
  scheme: SeenScheme,
  reading: BalanceReading,
  numbers: Readonly<Record<string, number>>,
): string {
  const { shares, verdict } = reading;
  const [lost] = missing(claim, reading);
  if (lost) return lostWords(claim[lost], scheme, lost, shares[lost], numbers[`${lost}_share`] ?? 0);
  if (verdict === claim.verdict) return sameWords(claim, scheme);
  const isOneSided = verdict === 'balanced' && (shares.cool < SCHEME.coolMin || shares.warm < SCHEME.warmMin);
  const words = isOneSided ? 'it lacks neither warm nor cool' : verdictWords(verdict, false);
  return `Here ${words} (warm ${percentOf(shares.warm)}, cool ${percentOf(shares.cool)} of the view).`;
}

const NOUNS = { warm: 'the warmth', cool: 'the cool' } as const;

function lostWords(brought: Surfaces, scheme: SeenScheme, lost: 'warm' | 'cool', share: number, there: number): string {
  const who = surfacesPhrase(brought);
  const now = scheme.surfaces.filter(({ surface }) => brought.includes(surface));
  const others = now.filter((seen) => partOf(seen, lost) < 0.5);
  const stays = others.length > 0 && others.every(({ state }) => state === 'fixed' || state === 'ordered');
  const here = surfacesPhrase(surfacesOf(others.length > 0 ? others : now));
  const kinds = [...new Set(others.map(mainTemperature))];
  const is = here.plural ? 'are' : 'is';
  const stay = here.plural ? 'stay' : 'stays';
  const left = share < NOTHING ? `nothing ${lost} is left` : `only ${percentOf(share)} of the view is ${lost}`;
  const first = `There, ${who.text} brought ${NOUNS[lost]} (${percentOf(there)} of the view).`;
  if (now.length === 0) return `${first} Here ${left}.`;
  return `${first} Here ${here.text} ${is} ${joined(kinds.length > 0 ? kinds : [lost])}${stays ? ` and ${stay}` : ''}, so ${left}.`;
}

const TEMPERATURE_WORDS: Readonly<Record<TemperatureClass, string>> = {
  warm: 'warm',
  leaning: 'only leaning warm',
  cool: 'cool',
  neutral: 'neutral',
};

/** The temperature of most of a surface. */
function mainTemperature(seen: SeenSurface): string {
  const kinds = Object.keys(TEMPERATURE_WORDS) as TemperatureClass[];
  return TEMPERATURE_WORDS[kinds.reduce((most, kind) => (partOf(seen, kind) > partOf(seen, most) ? kind : most))];
}

/** The verdict is the same; who brings the warmth may have changed, which is worth a word. */
function sameWords(claim: BalanceClaim, scheme: SeenScheme): string {
  const warm = carriersOf(scheme, 'warm');
  const isAsThere = warm.length === 0 || warm.some(({ surface }) => claim.warm.includes(surface));
  if (isAsThere || claim.warm.length === 0) return `So it is here: ${verdictWords(claim.verdict, false)}.`;
  const here = surfacesPhrase(surfacesOf(warm));
  const verb = here.plural ? 'bring' : 'brings';
  return `So it is here, but ${here.text} ${verb} the warmth (${percentOf(sumOf(warm))} of the view) instead of ${surfacesPhrase(claim.warm).text}.`;
}

function missOf(claim: BalanceClaim, reading: BalanceReading, numbers: Readonly<Record<string, number>>): Miss {
  const { shares, verdict, meanChroma } = reading;
  const unit = 'points of the view';
  const [lost] = missing(claim, reading);
  if (!lost && verdict === claim.verdict) return { value: 0, unit, text: '' };
  const key = lost ?? (verdict === 'lacks-cool' || claim.verdict === 'lacks-cool' ? 'cool' : 'warm');
  const there = numbers[`${key}_share`] ?? 0;
  const quiet =
    !lost && verdict === 'muted'
      ? `, and chroma ${meanChroma.toFixed(0)} on average, under ${SCHEME.mutedChroma} is quiet`
      : '';
  const text = `${key} ${percentOf(shares[key])} of the view here, ${percentOf(there)} there${quiet}`;
  return { value: 100 * Math.abs(shares[key] - there), unit, text };
}
