import { bradfordMatrix } from '../color/adapt';
import { labD65FromXyzD65 } from '../color/lab';
import { apply } from '../color/matrix3';
import { D65_2 } from '../color/whites';
import type { CardReading } from './card-light';
import type { Patch } from './types';

/** How the light changes from one side of the card, or of the two cards, to the other. */
export interface LightDrift {
  /** Change of a white's a* and b* together, CIELAB units; 0 where noise could make it. */
  readonly hue: number;
  /** Change of luminance, as a share of the mean. */
  readonly level: number;
}

/** A drift counts from this many standard errors. Our judgment. */
const SURE_ERRORS = 4;

/** The light's drift over all that was marked as card, along the way on which its hue changes most. */
export function lightDrift({ light, planes }: CardReading, cards: readonly Patch[]): LightDrift {
  const left = Math.min(...cards.map((card) => card.left));
  const right = Math.max(...cards.map((card) => card.left + card.width * card.step));
  const top = Math.min(...cards.map((card) => card.top));
  const bottom = Math.max(...cards.map((card) => card.top + card.height * card.step));
  const { white } = light;
  const toD65 = bradfordMatrix(white, D65_2);
  const labAt = (dx: number, dy: number) => {
    const [x, y, z] = planes.map((plane) => Math.exp(plane.alongX * dx + plane.alongY * dy)) as [
      number,
      number,
      number,
    ];
    const [tx, ty, tz] = apply(toD65, [white.x * x, white.y * y, white.z * z]);
    const scale = 100 / (white.y * y);
    return labD65FromXyzD65({ x: tx * scale, y: ty * scale, z: tz * scale });
  };
  const ways = [
    [right - left, 0],
    [0, bottom - top],
    [right - left, bottom - top],
    [right - left, top - bottom],
  ] as const;
  let [hue, level] = [0, 0];
  for (const [dx, dy] of ways) {
    const [one, other] = [labAt(-dx / 2, -dy / 2), labAt(dx / 2, dy / 2)];
    const change = Math.hypot(one.a - other.a, one.b - other.b);
    // Noise of one channel against another moves a* by some 170 and b* by some 70 per unit of its logarithm (CIELAB at white).
    const error = Math.hypot(
      ...planes.map(
        ({ slopeCovariance: [xx, xy, yy] }, c) =>
          [170, 170, 70][c]! * Math.sqrt(Math.max(0, dx * dx * xx + 2 * dx * dy * xy + dy * dy * yy)),
      ),
    );
    if (change > SURE_ERRORS * error) hue = Math.max(hue, change);
    level = Math.max(level, Math.abs(planes[1]!.alongX * dx + planes[1]!.alongY * dy));
  }
  return { hue, level };
}
