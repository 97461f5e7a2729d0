import type { SurfaceId } from '../../engine/surface';
import type { Narrowing } from '../../kitchen/study/narrowing';
import type { PathStep } from '../../model/decision-path';
import { surfacesPhrase } from './engine-words';
import { capital, listed } from './numbers';
import { spoken } from './spoken';

/** Words of the panel of decisions. */
export const DECISIONS = spoken({
  title: 'Decisions',
  next: (name: string) => `Next: ${name.toLowerCase()}.`,
  isNext: 'next',
  allDecided: 'Everything is decided. You can still change or reopen any of it.',
  choose: 'Choose',
  decide: 'Decide',
  change: 'Change',
  reopen: 'Reopen',
  of: (what: string, name: string) => `${what}: ${name.toLowerCase()}`,
  narrowing: 'Counting what is left of the library.',
  asSamples: 'Counted as samples, against all that is settled before.',
  hangsOn: (later: readonly SurfaceId[]) =>
    `Decided after it: ${surfacesPhrase(later).text}. If it changes, ${later.length === 1 ? 'that is' : 'these are'} looked at again.`,
  unsettled: (changed: readonly SurfaceId[], count: number) =>
    `Changing ${surfacesPhrase(changed).text} works against ${count === 1 ? 'a later decision' : `${count} later decisions`}. Nothing else was changed.`,
  leave: 'Leave it so',
} as const);

export const STEP_NAMES: { readonly [S in PathStep['id']]: string } = spoken({
  stays: 'What stays',
  counter: 'Counter',
  floor: 'Floor',
  fronts: 'Cabinet fronts',
  backsplash: 'Backsplash',
  wall: 'Wall and ceiling',
  hardware: 'Handles and fittings',
});

/** Why a step stands where it does in the order. Common practice, no source. */
export const STEP_REASONS: { readonly [S in PathStep['id']]: string } = spoken({
  stays: 'What stays cannot follow anything else, so all the rest follows it.',
  counter: 'Counters come in the fewest colors and cost most to make again, so the rest follows them.',
  floor: 'It is large and lends its color to all that stands on it; it follows the counter.',
  fronts: 'They fill most of what you see and come in many colors, so they follow counter and floor.',
  backsplash: 'It stands on the counter and under the units, so it is chosen beside both.',
  wall: 'Paint comes in nearly any color, so it is chosen beside all the rest.',
  hardware: 'Small, and easy to change: it comes last.',
});

/** What settled decisions leave for an open one: "Of 31 finishes made for it, the floor takes out 9; 22 are left." */
export function narrowingWords({ of, left, by }: Narrowing): string {
  const finishes = of === 1 ? '1 finish' : `${of} finishes`;
  if (of === 0) return 'Nothing in the library is made for it.';
  if (by.length === 0) return `Nothing settled speaks against any of the ${finishes} made for it.`;
  const takes = by.map(({ surfaces, takes: count }) => {
    const { text, plural } = surfacesPhrase(surfaces);
    return `${text} ${plural ? 'take' : 'takes'} out ${count}`;
  });
  return `Of ${finishes} made for it, ${listed(takes)}; ${left === 0 ? 'none is' : left === 1 ? '1 is' : `${left} are`} left.`;
}

/** "Base and tall fronts": surfaces as a title. */
export const groupName = (surfaces: readonly SurfaceId[]): string =>
  capital(surfacesPhrase(surfaces).text.replace(/\bthe /g, ''));
