import { degreesApart } from '../../color/hue-apart';
import type { SurfaceId } from '../../surface';
import { PAIR } from '../pair';
import { inDecisionOrder, joined, sentenceCase, surfacesPhrase } from '../surface-words';
import { counted } from './follows';
import { STEP } from './lightness';
import { patternRank } from './pattern-relation';
import { placesOf } from './places';
import { readClaim } from './rules';
import { averageOf, mainColor, replacedSurfaces, type SeenScheme, type SeenSurface } from './seen-scheme';
import type { RelationCheck } from './types';
import { leanOf } from './undertone-relation';

/** Why a surface is not as the look has it. */
export type NotAsThere = 'stays' | 'left' | 'stand-in' | 'other';

/** What broke for one reason. */
export interface Cause {
  /** What is not as in the look; empty where no one surface explains it. */
  readonly surfaces: readonly SurfaceId[];
  /** "The floor stays, and is darker than in the look." */
  readonly text: string;
  /** What that makes of warm and cool, or of the pattern; null where it leaves the whole alone. */
  readonly whole: string | null;
  /** Ids of the relations that go with it, the gravest first. */
  readonly relations: readonly string[];
  /** How many of them count: what follows from another of them does not. */
  readonly count: number;
}

interface Place {
  readonly surfaces: readonly SurfaceId[];
  readonly there: readonly SeenSurface[];
  readonly here: SeenSurface;
}

/**
 * Why relations of a look break in a scheme: each with the one surface that would mend it were it as in the look, tried by putting
 * the look's own colors there. The surface that explains most comes first, of equals one that stays.
 */
export function causesOf(
  look: SeenScheme,
  scheme: SeenScheme,
  broken: readonly RelationCheck[],
  why: (surface: SurfaceId) => NotAsThere,
): readonly Cause[] {
  const places = changedPlaces(look, scheme);
  const mended = places.map((place) => {
    const as = replacedSurfaces(scheme, place.there);
    const holding = broken.filter(({ relation }) => readClaim(relation.claim, as, relation.numbers)?.holds);
    return { place, holding };
  });
  const causes: Cause[] = [];
  let left = broken;
  for (;;) {
    const own = mended.map(({ place, holding }) => ({ place, checks: left.filter((one) => holding.includes(one)) }));
    const most = own.reduce<(typeof own)[number] | null>(
      (best, one) => (best === null || explainsMore(one, best, why) ? one : best),
      null,
    );
    if (!most || most.checks.length === 0) break;
    causes.push(causeOf(most.checks, most.place.surfaces, placeText(most.place, why)));
    left = left.filter((one) => !most.checks.includes(one));
  }
  return left.length > 0 ? [...causes, ...together(scheme, left, places)] : causes;
}

/** The places of the look that have other colors here. */
function changedPlaces(look: SeenScheme, scheme: SeenScheme): readonly Place[] {
  return placesOf(look).flatMap(({ surfaces }): Place[] => {
    const there = look.surfaces.filter(({ surface }) => surfaces.includes(surface));
    const changed = there.flatMap((was) => {
      const is = scheme.surfaces.find(({ surface }) => surface === was.surface);
      return is && !hasSameColors(was, is) ? [is] : [];
    });
    const [first] = changed;
    return first ? [{ surfaces: changed.map(({ surface }) => surface), there, here: first }] : [];
  });
}

const hasSameColors = (a: SeenSurface, b: SeenSurface): boolean =>
  a.colors.length === b.colors.length &&
  a.colors.every(({ color, weight }, i) => {
    const other = b.colors[i]!;
    return (
      weight === other.weight && (['l', 'a', 'b'] as const).every((part) => color.lab[part] === other.color.lab[part])
    );
  });

interface Explaining {
  readonly place: Place;
  readonly checks: readonly RelationCheck[];
}

function explainsMore(one: Explaining, other: Explaining, why: (surface: SurfaceId) => NotAsThere): boolean {
  const [a, b] = [countOf(one.checks), countOf(other.checks)];
  const stays = ({ place }: Explaining) => Number(place.surfaces.some((surface) => why(surface) === 'stays'));
  return a !== b ? a > b : stays(one) > stays(other);
}

const countOf = (checks: readonly RelationCheck[]): number => counted(checks, ({ relation }) => relation).length;

const causeOf = (checks: readonly RelationCheck[], surfaces: readonly SurfaceId[], text: string): Cause => ({
  surfaces,
  text,
  whole: checks.find(({ relation: { kind } }) => kind === 'balance' || kind === 'pattern')?.here ?? null,
  relations: checks.map(({ relation }) => relation.id),
  count: countOf(checks),
});

/** What no one surface explains: those that have a part in it, or what the look does not speak of. */
function together(scheme: SeenScheme, left: readonly RelationCheck[], places: readonly Place[]): readonly Cause[] {
  const asThere = replacedSurfaces(
    scheme,
    places.flatMap(({ there }) => there),
  );
  const holds = ({ relation }: RelationCheck) => readClaim(relation.claim, asThere, relation.numbers)?.holds;
  const shared = left.filter(holds);
  const beyond = left.filter((check) => !shared.includes(check));
  const named = shared.flatMap(({ relation: { kind, surfaces } }) =>
    kind === 'balance' || kind === 'pattern'
      ? places
      : places.filter((place) => place.surfaces.some((s) => surfaces.includes(s))),
  );
  const surfaces = inDecisionOrder(named.flatMap((place) => place.surfaces));
  const who = surfacesPhrase(surfaces);
  const text = `${sentenceCase(who.text)} are not as in the look; it takes more than one of them to explain this.`;
  return [
    ...(shared.length > 0 ? [causeOf(shared, surfaces, text)] : []),
    ...(beyond.length > 0 ? [causeOf(beyond, [], BEYOND)] : []),
  ];
}

const BEYOND = 'What the look does not name, or how much one sees of each surface here, has a part in this.';

/** "The floor stays, and is darker than in the look (38 against 73 L*); it leans bluish, and there it is light yellowish brown." */
function placeText({ surfaces, there, here }: Place, why: (surface: SurfaceId) => NotAsThere): string {
  const who = surfacesPhrase(surfaces);
  const [is, was] = [here, there.find(({ surface }) => surface === here.surface)!];
  const be = who.plural ? 'are' : 'is';
  const differs = joined([...lightnessWords(was, is), ...hueWords(was, is), ...patternWords(was, is)]);
  const how = differs === '' ? `${be} another finish than in the look` : `${be} ${differs}`;
  switch (why(here.surface)) {
    case 'stays':
      return `${sentenceCase(who.text)} ${who.plural ? 'stay' : 'stays'}, and ${how}.`;
    case 'left':
      return `Nothing in the library is near the look for ${who.text}, which ${be} left as before: ${who.plural ? 'they' : 'it'} ${how}.`;
    case 'stand-in':
      return `On ${who.text} lies only what is nearest in the library: ${who.plural ? 'they' : 'it'} ${how}.`;
    default:
      return `${sentenceCase(who.text)} ${how}.`;
  }
}

function lightnessWords(was: SeenSurface, is: SeenSurface): readonly string[] {
  const [there, here] = [averageOf(was).l, averageOf(is).l];
  if (Math.abs(here - there) < STEP.none) return [];
  return [
    `${here < there ? 'darker' : 'lighter'} than in the look (L* ${here.toFixed(0)} here, ${there.toFixed(0)} there)`,
  ];
}

function hueWords(was: SeenSurface, is: SeenSurface): readonly string[] {
  const [there, here] = [leanOf(mainColor(was)), leanOf(mainColor(is))];
  const turned = there.hue_deg !== null && here.hue_deg !== null ? degreesApart(there.hue_deg, here.hue_deg) : 0;
  if (there.sort === here.sort && turned <= PAIR.echoHueMax) return [];
  return [`${leanWords(here)} instead of ${leanWords(there)}`];
}

const leanWords = ({ sort, word }: ReturnType<typeof leanOf>): string => (sort === 'plain' ? `plain ${word}` : word);

function patternWords(was: SeenSurface, is: SeenSurface): readonly string[] {
  const [there, here] = [patternRank(was), patternRank(is)];
  if (there === here || was.pattern === null) return [];
  return [`${here > there ? 'busier' : 'quieter'} in pattern`];
}
