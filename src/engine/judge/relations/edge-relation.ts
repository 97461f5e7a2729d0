import type { SurfaceId } from '../../surface';
import { EDGE } from '../edges';
import { sentenceCase, surfacesPhrase } from '../surface-words';
import type { RelationRule } from './rule';
import { finishesOf, lrvOf, type SeenScheme } from './seen-scheme';
import type { EdgeClass } from './types';

type Surfaces = readonly SurfaceId[];

const FRONTS: Surfaces = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'];

/** Edges one finds with the eye, as in the findings: where a counter ends, where the floor does. */
const MEETING: readonly (readonly [Surfaces, Surfaces])[] = [
  [['counter', 'island-counter'], FRONTS],
  [['floor'], FRONTS],
  [['floor'], ['wall']],
];

/** By the limits of the findings (see `EDGE`), in points of light reflectance. */
const edgeClass = (points: number): EdgeClass =>
  points >= EDGE.wanted ? 'clear' : points >= EDGE.least ? 'fair' : 'weak';

const LEAST: Readonly<Record<EdgeClass, number>> = { clear: EDGE.wanted, fair: EDGE.least, weak: 0 };
const WORDS: Readonly<Record<EdgeClass, string>> = { clear: 'easy to see', fair: 'there to see', weak: 'hard to see' };

/** Least difference over the finishes on both sides; null where one is missing. */
function leastDifference(scheme: SeenScheme, one: Surfaces, other: Surfaces): number | null {
  const all = finishesOf(scheme, one).flatMap((a) =>
    finishesOf(scheme, other).map((b) => Math.abs(lrvOf(a) - lrvOf(b))),
  );
  return all.length === 0 ? null : Math.min(...all);
}

const between = (one: Surfaces, other: Surfaces): string =>
  `the edge between ${surfacesPhrase(one).text} and ${surfacesPhrase(other).text}`;

/** An edge that is at least as well seen as in the look holds; a weak one asks for nothing and is no relation. */
export const edgeRule: RelationRule<'edge'> = {
  propose(_, places) {
    return MEETING.flatMap(([ones, others]) =>
      places
        .filter(({ surfaces }) => surfaces.some((s) => ones.includes(s)))
        .flatMap((one) =>
          places
            .filter(({ surfaces }) => surfaces.some((s) => others.includes(s)))
            .flatMap((other) => {
              const lrv = Math.abs(lrvOf(one.seen) - lrvOf(other.seen));
              const seen = edgeClass(lrv);
              if (seen === 'weak') return [];
              return [
                {
                  claim: { kind: 'edge', one: one.surfaces, other: other.surfaces, seen } as const,
                  numbers: { d_lrv: lrv },
                },
              ];
            }),
        ),
    );
  },
  read({ one, other, seen }, scheme, { d_lrv }) {
    const points = leastDifference(scheme, one, other);
    if (points === null) return null;
    return {
      holds: points >= LEAST[seen],
      words: () => ({
        here: `Here ${between(one, other)} is ${WORDS[edgeClass(points)]}.`,
        by: {
          value: Math.max(0, LEAST[seen] - points),
          unit: 'points of light reflectance',
          text: `${points.toFixed(0)} points of light reflectance apart here, ${(d_lrv ?? 0).toFixed(0)} there; ${LEAST[seen]} wanted`,
        },
      }),
    };
  },
  say: ({ one, other, seen }, { d_lrv }, may) =>
    `${sentenceCase(between(one, other))} ${may ? 'may be' : 'is'} ${WORDS[seen]} (${(d_lrv ?? 0).toFixed(0)} points of light reflectance).`,
  open: ({ one, other }) => `How well one sees ${between(one, other)} is too close to call.`,
};
