import { TAP } from '../props/tap';
import type { Line, Point } from './types';

/** Steps of half a circle. */
const STEPS = 12;

/** The tap as one who faces its wall sees it, from the middle of its foot on the counter, mm: body, spout, lever. */
export function tapFront(kind: 'arch' | 'straight'): readonly (readonly Point[])[] {
  const { ARCH, STRAIGHT, BODY } = TAP;
  const box = (half: number, low: number, high: number): readonly Point[] =>
    [
      [-half, low],
      [-half, high],
      [half, high],
      [half, low],
      [-half, low],
    ].map(([x, y]): Point => [1000 * x!, 1000 * y!]);
  if (kind === 'straight') {
    const lever: readonly Point[] = [
      [0, 1000 * (STRAIGHT.body + 0.024)],
      [125, 1000 * (STRAIGHT.body + 0.05)],
    ];
    return [
      box(BODY.straight, 0, STRAIGHT.body),
      box(STRAIGHT.radius, STRAIGHT.from + STRAIGHT.rise - STRAIGHT.drop, STRAIGHT.from + STRAIGHT.rise),
      lever,
    ];
  }
  const lever: readonly Point[] = [
    [19, 62],
    [45, 62],
    [120, 85],
  ];
  return [box(BODY.arch, 0, BODY.height), box(ARCH.radius, BODY.height, BODY.height + ARCH.rise), lever];
}

/** The tap from above, from the middle of its foot, mm: x along the run, y away from the wall. */
export function tapAbove(kind: 'arch' | 'straight'): readonly (readonly Point[])[] {
  const { ARCH, STRAIGHT, BODY } = TAP;
  const [body, radius, reach] =
    kind === 'arch' ? [BODY.arch, ARCH.radius, ARCH.reach] : [BODY.straight, STRAIGHT.radius, STRAIGHT.reach];
  const spout: readonly Point[] = [
    [-1000 * radius, 1000 * body],
    [-1000 * radius, 1000 * reach],
    [1000 * radius, 1000 * reach],
    [1000 * radius, 1000 * body],
  ];
  return [
    circle([0, 0], 1000 * body),
    spout,
    [
      [19, 0],
      [120, 12],
    ],
  ];
}

/** A circle as a closed line. */
export const circle = ([x, y]: Point, radius: number): readonly Point[] =>
  Array.from({ length: 2 * STEPS + 1 }, (_, i): Point => {
    const angle = (Math.PI * i) / STEPS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Lines of one thing that is finished with a surface. */
export const linesOf = (
  kind: Line['kind'],
  surface: Line['surface'],
  look: Line['look'],
  parts: readonly (readonly Point[])[],
): readonly Line[] => parts.map((points) => ({ kind, surface, points, look }));
