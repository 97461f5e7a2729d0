import type { SurfaceId } from '../../surface';
import { EDGE, edgeSeverity } from '../edges';
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

/** By the rule of the findings, from two light reflectance values. */
function edgeClass(y1: number, y2: number): EdgeClass {
  const severity = edgeSeverity(y1, y2);
  return severity === null ? 'clear' : severity === 'note' ? 'fair' : 'weak';
}

const CLASSES: readonly EdgeClass[] = ['weak', 'fair', 'clear'];
const LEAST: Readonly<Record<EdgeClass, number>> = { clear: EDGE.wanted, fair: EDGE.least, weak: 0 };
const WORDS: Readonly<Record<EdgeClass, string>> = { clear: 'easy to see', fair: 'there to see', weak: 'hard to see' };

interface EdgeReading {
  readonly seen: EdgeClass;
  readonly points: number;
}

/** The weakest edge over the finishes on both sides; null where one is missing. */
function weakestEdge(scheme: SeenScheme, one: Surfaces, other: Surfaces): EdgeReading | null {
  const all = finishesOf(scheme, one).flatMap((a) =>
    finishesOf(scheme, other).map((b): EdgeReading => {
      const [y1, y2] = [lrvOf(a), lrvOf(b)];
      return { seen: edgeClass(y1, y2), points: Math.abs(y1 - y2) };
    }),
  );
  const rank = ({ seen, points }: EdgeReading) => 1000 * CLASSES.indexOf(seen) + points;
  return all.reduce<EdgeReading | null>((least, edge) => (least && rank(least) <= rank(edge) ? least : edge), null);
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
              const [y1, y2] = [lrvOf(one.seen), lrvOf(other.seen)];
              const seen = edgeClass(y1, y2);
              if (seen === 'weak') return [];
              return [
                {
                  claim: { kind: 'edge', one: one.surfaces, other: other.surfaces, seen } as const,
                  numbers: { d_lrv: Math.abs(y1 - y2) },
                },
              ];
            }),
        ),
    );
  },
  read({ one, other, seen }, scheme, { d_lrv }) {
    const found = weakestEdge(scheme, one, other);
    if (!found) return null;
    const { points } = found;
    return {
      holds: CLASSES.indexOf(found.seen) >= CLASSES.indexOf(seen),
      words: () => ({
        here: `Here ${between(one, other)} is ${WORDS[found.seen]}.`,
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
