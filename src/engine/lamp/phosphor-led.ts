import { chromaticityFromXyz, uv1960FromXy } from '../color/chromaticity';
import { apply, inverse } from '../color/matrix3';
import type { White, Xyz } from '../color/types';
import { whiteOf, xyzFromEmission } from '../color/xyz';
import { failure, type Problem, type Result, success } from '../result';
import { emissionSpd } from '../spectrum/grid';
import { observer2 } from '../spectrum/observers';
import { perLux } from '../spectrum/per-lux';
import { planckSpd } from '../spectrum/planck';
import type { EmissionSpd } from '../spectrum/types';
import { generalIndex, renderedSamples, renderingReference, specialIndices } from './color-rendering';
import { phosphorBands } from './phosphor-bands';

/** What a lamp's package says of a white LED. */
export interface LedLabel {
  readonly cct_k: number;
  readonly ra: number;
  /** Distance from the Planckian locus in CIE 1960 u, v, + is greenish; on the locus when left out. */
  readonly duv?: number;
}

const COOLEST_K = 1800;
const HOTTEST_K = 8000;
const LEAST_RA = 60;
const MOST_RA = 98;
/** Further off the locus no lamp is sold as white (ANSI C78.377 allows 0.006 from its centres). */
const MOST_DUV = 0.006;

/** Steps in which the quality of the phosphors is looked through for the best Ra. */
const QUALITY_STEPS = 20;

interface Mixture {
  readonly quality: number;
  readonly spd: EmissionSpd;
  readonly ra: number;
}

/**
 * A white LED of which only the colour temperature and Ra are known: a blue pump and two phosphors (`phosphorBands`),
 * mixed so that the chromaticity is exactly that of `cct_k` and `duv`, the phosphors chosen so that Ra (CIE 13.3) is
 * exactly `ra`. Scaled to one lux. Smooth in all three, but for the step of CIE 13.3 at 5000 K, where its reference
 * changes from a black body to daylight (0.2 % of the power moves).
 * It is a likely lamp, not the lamp: the 24 patches of a colour chart under CIE LED-B1 to LED-B5 are met to 0.1-0.3
 * CIEDE2000 in the mean and 0.8 at most (the more saturated CIE 13.3 samples to 1.3 at most); lamps built otherwise (a red
 * LED, a violet pump) to 0.8-1.2 in the mean and 4 at most, single saturated colours to 8.
 * Refused, with what can be reached: temperatures outside 1800-8000 K, Ra outside 60-98 or out of reach at that
 * temperature (the most is 96-98, less at a |duv| near 0.006), |duv| above 0.006.
 */
export function phosphorLedSpd({ cct_k, ra, duv = 0 }: LedLabel): Result<EmissionSpd> {
  if (!(cct_k >= COOLEST_K && cct_k <= HOTTEST_K)) return failure(temperatureProblem(cct_k));
  if (!(Math.abs(duv) <= MOST_DUV)) return failure(duvProblem(duv));
  const mixtureAt = ledAt(cct_k, duv);
  const rising = risingMixtures(mixtureAt);
  const above = rising.findIndex((mixture, k) => k > 0 && mixture.ra >= ra);
  if (!(above > 0 && ra >= Math.max(rising[0]!.ra, LEAST_RA) && ra <= MOST_RA)) {
    return failure(rangeProblem(cct_k, ra, rising));
  }
  let [low, high] = [rising[above - 1]!.quality, rising[above]!.quality];
  // 24 halvings leave 1e-6 of Ra.
  for (let round = 0; round < 24; round++) {
    const middle = (low + high) / 2;
    if (mixtureAt(middle)!.ra < ra) low = middle;
    else high = middle;
  }
  return success(perLux(mixtureAt(high)!.spd));
}

/** Mixtures of one chromaticity by quality; null where the bands cannot make it with amounts above 0. */
function ledAt(cct_k: number, duv: number): (quality: number) => Mixture | null {
  const target = targetXyz(cct_k, duv);
  const reference = renderedSamples(renderingReference(cct_k));
  return (quality) => {
    const { blue, green, red } = phosphorBands(cct_k, quality);
    const [b, g, r] = [blue, green, red].map((band) => xyzFromEmission(band, observer2)) as [
      Xyz<White>,
      Xyz<White>,
      Xyz<White>,
    ];
    const amounts = apply(inverse([b.x, g.x, r.x, b.y, g.y, r.y, b.z, g.z, r.z]), target);
    if (amounts.some((amount) => amount < 0)) return null;
    const spd = emissionSpd(blue.map((power, i) => amounts[0] * power + amounts[1] * green[i]! + amounts[2] * red[i]!));
    return { quality, spd, ra: generalIndex(specialIndices(renderedSamples(spd), reference)) };
  };
}

/** From the lowest quality that can be mixed to the one of best Ra. */
function risingMixtures(mixtureAt: (quality: number) => Mixture | null): Mixture[] {
  const mixtures = Array.from({ length: QUALITY_STEPS + 1 }, (_, k) => mixtureAt(k / QUALITY_STEPS)).filter(
    (mixture) => mixture !== null,
  );
  const best = mixtures.reduce((top, { ra }, k) => (ra > (mixtures[top]?.ra ?? 0) ? k : top), 0);
  return mixtures.slice(0, best + 1);
}

/** X, Y, Z with Y = 1 at a distance from the Planckian locus, along its normal in CIE 1960 u, v. */
function targetXyz(cct_k: number, duv: number): [number, number, number] {
  const locus = (temperature_k: number) =>
    uv1960FromXy(chromaticityFromXyz(whiteOf(planckSpd(temperature_k), observer2)));
  const at = locus(cct_k);
  const [hotter, cooler] = [locus(cct_k * 1.0005), locus(cct_k / 1.0005)];
  const length = Math.hypot(hotter.u - cooler.u, hotter.v - cooler.v);
  // Towards hotter is towards less u; turned by a right angle, the normal points to greater v.
  const u = at.u + (duv * (hotter.v - cooler.v)) / length;
  const v = at.v - (duv * (hotter.u - cooler.u)) / length;
  return [(1.5 * u) / v, 1, (4 - u - 10 * v) / (2 * v)];
}

const temperatureProblem = (cct_k: number): Problem => ({
  code: 'led-temperature',
  text: `A white LED of ${cct_k} K is outside what the model covers, ${COOLEST_K}-${HOTTEST_K} K.`,
  remedy: `Give a color temperature from ${COOLEST_K} to ${HOTTEST_K} K, or the lamp's measured spectrum.`,
});

const duvProblem = (duv: number): Problem => ({
  code: 'led-duv',
  text: `A Duv of ${duv} is outside what the model covers, -${MOST_DUV} to ${MOST_DUV}.`,
  remedy: 'Leave it out, or give the Duv of the data sheet.',
});

function rangeProblem(cct_k: number, ra: number, rising: readonly Mixture[]): Problem {
  const from = Math.ceil(Math.max(rising[0]?.ra ?? LEAST_RA, LEAST_RA));
  const to = Math.floor(Math.min(rising.at(-1)?.ra ?? LEAST_RA, MOST_RA));
  return {
    code: 'led-ra',
    text: `A white LED of ${cct_k} K with Ra ${ra} is outside what the model reaches, Ra ${from}-${to}.`,
    remedy: `Give an Ra from ${from} to ${to}, or the lamp's measured spectrum.`,
  };
}
