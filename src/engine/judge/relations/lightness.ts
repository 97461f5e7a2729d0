import { joined, type Phrase, sentenceCase, surfacesPhrase } from '../surface-words';
import { type LookPlace, pairsAmong } from './places';
import type { RelationRule } from './rule';
import { averageOf, finishesOf, type SeenScheme } from './seen-scheme';
import type { Claim, Step } from './types';

/**
 * Steps of lightness, L*: from 10 on clear, the center of a published harmony term (Ou and Luo 2006); under 5 none, the foot of
 * the same term, read off it: our judgment.
 */
export const STEP = { clear: 10, none: 5 } as const;

/** A change of places counts where the darker one has become lighter by more than this, L*. Our judgment. */
const ORDER_SLACK = 0;

type OrderClaim = Extract<Claim, { kind: 'order' }>;
type StepClaim = Extract<Claim, { kind: 'step' }>;
type Surfaces = OrderClaim['pairs'][number][0];

const phrase = (surfaces: Surfaces): Phrase => surfacesPhrase(surfaces);
const are = ({ plural }: Phrase, may: boolean): string => (may ? 'may be' : plural ? 'are' : 'is');

/** How much lighter the one is, L*, least over the finishes that lie there; null where one is missing. */
function lighterBy(
  scheme: SeenScheme,
  one: Surfaces,
  other: Surfaces,
): { readonly least: number; readonly most: number } | null {
  const steps = finishesOf(scheme, one).flatMap((a) =>
    finishesOf(scheme, other).map((b) => averageOf(a).l - averageOf(b).l),
  );
  return steps.length === 0 ? null : { least: Math.min(...steps), most: Math.max(...steps) };
}

const largeOnes = (places: readonly LookPlace[]) => places.filter(({ isLarge }) => isLarge);

/** Lighter first; equal ones in decision order. */
const lightestFirst = (places: readonly LookPlace[]): LookPlace[] =>
  [...largeOnes(places)].sort((a, b) => averageOf(b.seen).l - averageOf(a.seen).l);

/** From light to dark: pairs a clear step apart, which no error of a declared color can swap. */
export const orderRule: RelationRule<'order'> = {
  propose(_, places) {
    const pairs = pairsAmong(lightestFirst(places)).filter(
      ([a, b]) => averageOf(a.seen).l - averageOf(b.seen).l >= STEP.none,
    );
    if (pairs.length === 0) return [];
    const claim = { kind: 'order', pairs: pairs.map(([a, b]) => [a.surfaces, b.surfaces] as const) } as const;
    const numbers = Object.fromEntries(
      largeOnes(places).map(({ surfaces, seen }) => [levelOf(surfaces), averageOf(seen).l]),
    );
    return [{ claim, numbers }];
  },
  read({ pairs }, scheme) {
    const there = pairs.flatMap(([a, b]) => {
      const by = lighterBy(scheme, a, b);
      return by ? [{ a, b, by: by.least }] : [];
    });
    if (there.length === 0) return null;
    const turned = there.filter(({ by }) => by < -ORDER_SLACK);
    return {
      holds: turned.length === 0,
      words() {
        const worst = turned.reduce((most, one) => (one.by < most.by ? one : most), turned[0] ?? there[0]!);
        if (turned.length === 0) {
          return { here: 'The order from light to dark is the same here.', by: { value: 0, unit: 'L*', text: '' } };
        }
        const said = turned.map(
          ({ a, b }) => `${phrase(b).text} ${are(phrase(b), false)} lighter than ${phrase(a).text}`,
        );
        return {
          here: `Here it is the other way round: ${joined(said)}.`,
          by: {
            value: -worst.by,
            unit: 'L*',
            text: `${turned.length} of ${there.length} pairs turned, the farthest by ${(-worst.by).toFixed(1)} L*`,
          },
        };
      },
    };
  },
  say({ pairs }, numbers, may) {
    const ladder = ranks(pairs);
    const said = ladder.map((rank, i) => {
      const names = joined(rank.map((surfaces) => phrase(surfaces).text));
      const down = i === 0 ? null : stepDown(ladder[i - 1]!, rank, numbers);
      return down === null ? names : `${names} (${down.toFixed(0)} L* darker)`;
    });
    return `From light to dark${may ? ', as it seems' : ''}: ${said.join('; then ')}.`;
  },
  open: ({ pairs }) =>
    `Which of ${joined(
      ranks(pairs)
        .flat()
        .map((s) => phrase(s).text),
    )} is lighter is too close to call.`,
};

const levelOf = ([first]: Surfaces): string => `l_${first}`;

/** From the darkest of one rank to the lightest of the next, L*; null where that is no step, or not known. */
function stepDown(
  from: readonly Surfaces[],
  to: readonly Surfaces[],
  numbers: Readonly<Record<string, number>>,
): number | null {
  const levels = (rank: readonly Surfaces[]) => rank.map((surfaces) => numbers[levelOf(surfaces)] ?? Number.NaN);
  const down = Math.min(...levels(from)) - Math.max(...levels(to));
  return down >= STEP.none ? down : null;
}

/** Ranks that the pairs make: each stands behind the last one that is lighter. */
function ranks(pairs: OrderClaim['pairs']): Surfaces[][] {
  const rankOf = new Map<string, { readonly surfaces: Surfaces; rank: number }>();
  const at = (surfaces: Surfaces) => {
    const key = surfaces.join();
    const known = rankOf.get(key) ?? { surfaces, rank: 0 };
    rankOf.set(key, known);
    return known;
  };
  for (let i = 0; i <= pairs.length; i++) {
    for (const [lighter, darker] of pairs) at(darker).rank = Math.max(at(darker).rank, at(lighter).rank + 1);
  }
  const list: Surfaces[][] = [];
  for (const { surfaces, rank } of rankOf.values()) list[rank] = [...(list[rank] ?? []), surfaces];
  return list.filter((rank) => rank !== undefined);
}

const stepOf = (difference: number): Step =>
  difference >= STEP.clear ? 'clear' : difference >= STEP.none ? 'small' : 'none';

const STEP_WORDS: Readonly<Record<Step, string>> = {
  none: 'about as light as',
  small: 'a little lighter than',
  clear: 'clearly lighter than',
};

/** How far a difference, lighter minus darker, lies outside a step, L*. */
function outsideStep(difference: number, step: Step): number {
  const [least, most] =
    step === 'clear'
      ? [STEP.clear, Number.POSITIVE_INFINITY]
      : step === 'small'
        ? [STEP.none, STEP.clear]
        : [-STEP.none, STEP.none];
  return Math.max(0, least - difference, difference - most);
}

export const stepRule: RelationRule<'step'> = {
  propose(_, places) {
    return pairsAmong(lightestFirst(places))
      .filter(([a, b]) => a.seen.finish !== b.seen.finish)
      .map(([a, b]) => {
        const l = averageOf(a.seen).l - averageOf(b.seen).l;
        const claim: StepClaim = { kind: 'step', lighter: a.surfaces, darker: b.surfaces, step: stepOf(l) };
        return { claim, numbers: { d_l: l } };
      });
  },
  read({ lighter, darker, step }, scheme, { d_l }) {
    const range = lighterBy(scheme, lighter, darker);
    if (!range) return null;
    // What is farthest outside is what one sees.
    const by = outsideStep(range.least, step) >= outsideStep(range.most, step) ? range.least : range.most;
    const outside = outsideStep(by, step);
    return {
      holds: outside === 0 && isSameSide(by, step),
      words() {
        const [a, b] = by >= 0 ? [phrase(lighter), phrase(darker)] : [phrase(darker), phrase(lighter)];
        const found = stepOf(Math.abs(by));
        return {
          here: `Here ${a.text} ${are(a, false)} ${STEP_WORDS[found]} ${b.text}.`,
          by: {
            value: outside,
            unit: 'L*',
            text: `${Math.abs(by).toFixed(1)} L* apart here${by < 0 && Math.abs(by) >= STEP.none ? ', the other way round' : ''}, ${Math.abs(d_l ?? 0).toFixed(1)} there`,
          },
        };
      },
    };
  },
  say({ lighter, darker, step }, { d_l }, may) {
    const a = phrase(lighter);
    return `${sentenceCase(a.text)} ${are(a, may)} ${STEP_WORDS[step]} ${phrase(darker).text} (${Math.abs(d_l ?? 0).toFixed(0)} L*).`;
  },
  open: ({ lighter, darker }) =>
    `How far ${phrase(lighter).text} and ${phrase(darker).text} are apart in lightness is too close to call.`,
};

const isSameSide = (by: number, step: Step): boolean => step === 'none' || by > 0;
