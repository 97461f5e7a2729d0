import type { FinishComponent, LaidFinish } from '../../src/engine/finish/types';
import { GRID_COUNT, reflectanceSpd } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';

/** The same finish, the curves computed with taken as measured. */
export const measured = (of: LaidFinish): LaidFinish => ({
  ...of,
  components: of.components.map((c): FinishComponent => ({ ...c, spectrumSource: 'measured' })),
});

/**
 * A measured finish of the same color under D65 and of other spectra: its own plus a wave less the part of it that the
 * observer sees (a metameric black: Wyszecki and Stiles 1982, Color Science, 3.8.2), as high as stays between 0 and 1.
 * @param height share of the greatest possible
 */
export const metamericTo = (of: LaidFinish, height = 0.9): LaidFinish => ({
  ...of,
  id: `${of.id}-metamer`,
  components: of.components.map(
    (c): FinishComponent => ({ ...c, spectrumSource: 'measured', spectrum: metamerOf(c.spectrum, height) }),
  ),
});

function metamerOf(rho: ReflectanceSpd, height: number): ReflectanceSpd {
  const black = withoutSeen(Array.from({ length: GRID_COUNT }, (_, i) => Math.cos((2 * Math.PI * i) / PERIOD)));
  const room = Math.min(...[...rho].map((value, i) => Math.min(value, 1 - value) / Math.abs(black[i]!)));
  return reflectanceSpd([...rho].map((value, i) => value + height * room * black[i]!));
}

/** Grid steps of a wave, 100 nm: what lamps with a blue peak tell from daylight. */
const PERIOD = 20;

/** The part of a curve at right angles to what the observer weighs under D65 (Gram and Schmidt). */
function withoutSeen(curve: readonly number[]): number[] {
  const d65 = lightById('D65')!;
  const axes: number[][] = [];
  for (const channel of [observer2.x, observer2.y, observer2.z]) {
    const axis = rest(
      [...channel].map((value, i) => value * d65[i]!),
      axes,
    );
    const length = Math.hypot(...axis);
    axes.push(axis.map((value) => value / length));
  }
  return rest(curve, axes);
}

const rest = (curve: readonly number[], axes: readonly (readonly number[])[]): number[] =>
  axes.reduce<number[]>(
    (left, axis) => {
      const along = left.reduce((sum, value, i) => sum + value * axis[i]!, 0);
      return left.map((value, i) => value - along * axis[i]!);
    },
    [...curve],
  );
