import type { SurfaceId } from '../../surface';
import { isLoose, looseWords } from '../cannot-tell';
import { faultCode, isAssurance } from '../claims';
import { faultSentence } from '../pair-sentences';
import { componentPhrase, inDecisionOrder, joined, surfacesPhrase } from '../surface-words';
import { type Relation, spokenOf } from './relations';
import type { FaultInLight, Standing } from './standing';
import type { HeldSurface, RankStep, Shortlist, ShortlistPlace, WishTold } from './types';
import { wishSentence, wishWords } from './wishes';

/** The steps in the order they are taken. */
export const stepsOf = ({ contrastFirst }: Pick<ShortlistPlace, 'contrastFirst'>): readonly RankStep[] =>
  contrastFirst
    ? ['clashes', 'contrast', 'agreement', 'wishes', 'color']
    : ['clashes', 'agreement', 'contrast', 'wishes', 'color'];

/** What each step asks, in words. */
export function orderWords(place: ShortlistPlace): Shortlist['order'] {
  const words: Readonly<Record<RankStep, string>> = {
    clashes:
      'first what nothing settled clashes with, then what may clash, then what a vein, a fleck or a fitting clashes with; in each, a busy pattern beside another and a wood that nearly matches one come later, paint too flat for the place last',
    agreement: 'then whites that agree, hues that echo, what matches',
    contrast: place.contrastFirst
      ? 'then edges that are easy to see, before agreement, because of who uses the kitchen'
      : 'then edges that are easy to see, and clear steps of lightness',
    wishes:
      place.wishes.length === 0
        ? 'then your wishes: none were given'
        : `then your wishes in their order: ${place.wishes.map(wishWords).join('; ')} (what is not known comes between what is met and what is missed)`,
    color: place.own
      ? 'what is even in all of that: the project’s own first, then from light to dark'
      : 'what is even in all of that from light to dark',
  };
  return stepsOf(place).map((step) => ({ step, words: words[step] }));
}

/** What the finishes were held against, and what was left out. */
export function heldWords(held: readonly HeldSurface[]): string {
  if (held.length === 0) {
    return (
      'Nothing is settled yet, so there is nothing to hold the finishes against: only what is not made for the place is turned ' +
      'down.'
    );
  }
  const states = ['fixed', 'decided', 'ordered'] as const;
  const parts = states.flatMap((state) => {
    const surfaces = held.filter((one) => one.state === state).map(({ surface }) => surface);
    return surfaces.length === 0 ? [] : [`${surfacesPhrase(spokenOf(surfaces)).text} (${state})`];
  });
  return `Held against ${joined(parts)}. What is still open was left out.`;
}

/** Why it is turned down: its own fault with a settled surface, as a sample or in a light. */
export const rejectionReason = (by: Relation | FaultInLight, surfaces: readonly SurfaceId[]): string =>
  'fault' in by
    ? inLight(by, surfaces, false)
    : faultSentence(by.judgment, by.own, spokenOf(surfaces), by.other, by.held.spoken, false);

/** "In Dinner the backsplash may look yellow beside the counter." */
function inLight({ fault, place }: FaultInLight, surfaces: readonly SurfaceId[], may: boolean): string {
  const { a, b, tintOff } = fault.pair;
  const text = faultSentence(tintOff, a.color, spokenOf(surfaces), b.color, fault.surfaces, may);
  return `In ${place.settingName}, ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** What each step found of a candidate, in words. */
export function stepReasons(
  standing: Standing,
  place: ShortlistPlace,
  isAnythingHeld: boolean,
): Readonly<Record<RankStep, string | null>> {
  return {
    clashes: joinedReasons(
      isAnythingHeld && !saysMaterialsOnly(standing) ? clashReason(standing, spokenOf(place.surfaces)) : null,
      ...standing.materials.map(({ text }) => text),
      standing.candidate.isTooFlat ? TOO_FLAT : null,
    ),
    agreement: isAnythingHeld ? agreementReason(standing) : null,
    contrast: contrastReason(standing),
    wishes: place.wishes.length === 0 ? null : wishSentence(wishesTold(standing, place)),
    color: null,
  };
}

/** That nothing clashes would read ill before what may compete. */
const saysMaterialsOnly = ({ group, materials }: Standing): boolean => group === 'clear' && materials.length > 0;

const TOO_FLAT = 'It is flat paint, which marks and does not wash: ask for its color with a sheen.';

const joinedReasons = (...reasons: readonly (string | null)[]): string | null =>
  reasons.filter((reason) => reason !== null).join(' ') || null;

function clashReason({ group, relations, places }: Standing, surfaces: readonly SurfaceId[]): string {
  if (group === 'clear') {
    return places.length > 0
      ? `Nothing that is settled clashes with it, as a sample or in place in ${joined(places.map((p) => p.settingName))}.`
      : 'Nothing that is settled clashes with it.';
  }
  const parts = relations.filter(({ bearing }) => bearing === 'part');
  const open = relations.filter(({ bearing }) => bearing === 'may');
  const [part, may] = [parts[0], open[0]];
  if (part) {
    const text = faultSentence(part.judgment, part.own, surfaces, part.other, part.held.spoken, false);
    return `${text} ${part.held.rejects ? 'A vein or fleck does not decide, but look.' : 'That does not decide, but look.'}`;
  }
  if (may) return `${mayText(may, surfaces)} Compare samples.`;
  const inPlace = places.flatMap((place) => place.faults.map((fault) => ({ fault, place })));
  const more = new Set(inPlace.map(({ place }) => place.settingName)).size - 1;
  const also = more > 0 ? ` So it may in ${more} more ${more === 1 ? 'setting' : 'settings'}.` : '';
  return `${inLight(inPlace[0]!, surfaces, true)}${also} Compare samples in that light.`;
}

function mayText({ judgment, own, other, held }: Relation, surfaces: readonly SurfaceId[]): string {
  if (faultCode(judgment.verdict)) return faultSentence(judgment, own, surfaces, other, held.spoken, true);
  const there = surfacesPhrase(held.spoken);
  const loose = [own, other].find(isLoose);
  const why = loose
    ? `${loose === own ? 'it is' : `${there.text} ${there.plural ? 'are' : 'is'}`} ${looseWords(loose)}`
    : 'the two are close to the limit';
  return isAssurance(judgment.verdict)
    ? `By the numbers it goes with the white of ${there.text}, but ${why}.`
    : `It may lean another way than ${there.text}: ${why}.`;
}

function agreementReason({ agrees, candidate }: Standing): string | null {
  const { kind, same } = agrees;
  const sides = joined(sidesOf(agrees.with));
  const own = same.length > 0 ? `It is the finish of ${surfacesPhrase(spokenOf(same)).text} already` : null;
  switch (kind) {
    case 'agrees':
      if (!own) return `Its white agrees with that of ${sides}.`;
      return agrees.with.length > 0 ? `${own}, and its white agrees with that of ${sides}.` : `${own}.`;
    case 'echoes':
      return own ? `${own}, and echoes the hue of ${sides}.` : `It echoes the hue of ${sides}.`;
    case 'matches':
      return own ? `${own}.` : `It matches ${sides}: hardly anybody tells them apart.`;
    default:
      // Of most of a library there is nothing to tell: said of every one it would tell nothing.
      return candidate.colors.some(isLoose)
        ? 'Its color is known too roughly to say what it agrees with: compare samples.'
        : null;
  }
}

/** The settled finishes by their main color, where that is among the related ones; else by the part that is. */
function sidesOf(relations: readonly Relation[]): string[] {
  const byFinish = new Map<Relation['held'], Relation>();
  for (const relation of relations) {
    const before = byFinish.get(relation.held);
    if (!before || relation.held.colors[relation.held.main] === relation.other) byFinish.set(relation.held, relation);
  }
  return [...byFinish.values()].map(({ held, other }) => phraseOf(held, mainRole(held, other)));
}

const phrases = new WeakMap<Relation['held'], Map<string, string>>();

/** A part of a settled finish in words; a large library asks for the same few again and again. */
function phraseOf(held: Relation['held'], role: Relation['other']['role'] = 'base'): string {
  const known = phrases.get(held) ?? new Map<string, string>();
  phrases.set(held, known);
  const text = known.get(role) ?? componentPhrase(role, held.spoken).text;
  known.set(role, text);
  return text;
}

/** A main color stands for its surface, whatever its part is called. */
const mainRole = (held: Relation['held'], other: Relation['other']): Relation['other']['role'] =>
  held.colors[held.main] === other ? 'base' : other.role;

const points = (value: number): string =>
  `${Math.round(value)} ${Math.round(value) === 1 ? 'point' : 'points'} of light reflectance apart`;

function contrastReason({ edges, nearest, levels }: Standing): string | null {
  if (edges.length > 0) {
    const worst = edges.reduce((w, e) => (e.level > w.level || (e.level === w.level && e.points < w.points) ? e : w));
    const how = ['is easy to see', 'is soft', 'may be hard to see'][worst.level]!;
    return `Its edge to ${surfacesPhrase([worst.surface]).text} ${how}: ${points(worst.points)}.`;
  }
  if (!nearest) return null;
  const where = phraseOf(nearest.held);
  if (Math.abs(nearest.dL) >= 10) return `It is a clear step ${nearest.dL > 0 ? 'lighter' : 'darker'} than ${where}.`;
  return levels.contrast[1] === 1
    ? `It is nearly as light as ${where}, without going with it.`
    : `It is about as light as ${where}.`;
}

/** Wish by wish, what a candidate makes of it. */
export const wishesTold = ({ met }: Standing, { wishes }: ShortlistPlace): readonly WishTold[] =>
  wishes.map((wish, i) => ({ wish: wishWords(wish), is_met: met[i] ?? null }));

/** Which step puts a row where it stands. */
export function placedWords(step: RankStep, isFirst: boolean): string {
  const by: Readonly<Record<RankStep, string>> = {
    clashes: 'by what clashes with it',
    agreement: 'by what it agrees with',
    contrast: 'by contrast',
    wishes: 'by your wishes',
    color: '',
  };
  if (step === 'color')
    return isFirst ? 'First of equals, from light to dark.' : 'Even with the one before it; listed from light to dark.';
  return isFirst ? `First ${by[step]}.` : `After the one before it ${by[step]}.`;
}

/** Settled surfaces the reasons of a candidate speak of, clashes first. */
export function besideOf({ relations, agrees, group, places }: Standing): readonly SurfaceId[] {
  if (group === 'clear') return inDecisionOrder([...agrees.with.flatMap(({ held }) => held.surfaces), ...agrees.same]);
  const wanted = group === 'part' ? 'part' : 'may';
  return inDecisionOrder([
    ...relations.filter(({ bearing }) => bearing === wanted).flatMap(({ held }) => held.surfaces),
    ...places.flatMap(({ faults }) => faults.flatMap(({ surfaces }) => surfaces)),
  ]);
}
