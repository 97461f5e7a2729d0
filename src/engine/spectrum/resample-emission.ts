import { failure, type Problem, type Result, success } from '../result';
import { GRID_END_NM, GRID_START_NM, GRID_STEP_NM, wavelengthNm } from './grid';
import { observer2 } from './observers';
import { gridFromSamples, type SampledEmission } from './resample-emission-mean';
import type { EmissionSpd } from './types';

const NEEDED_FROM_NM = 400;
const NEEDED_TO_NM = 700;
/** The blue peak of a white LED is about 20 nm wide: at 20 nm it may fall between two samples (see the tests). */
const COARSEST_STEP_NM = 10;
/** Decimal wavelengths miss a whole step by rounding. */
const ROUNDING_NM = 1e-6;
/** Negative power up to this part of the peak is an instrument's noise (our judgment). */
const NOISE_OF_PEAK = 0.01;
/** Keeps sums finite; no unit of power per nm comes near. */
const GREATEST = 1e30;

/**
 * A measured lamp on the project's grid, on the scale of `power`.
 * Data with steps below 5 nm are integrated: a grid value is the mean with triangular weights of 5 nm half width, so
 * that a line keeps its power and its place. Data with steps of 5-10 nm are bands already and are interpolated
 * linearly, which keeps both, too; values given on the grid stay as they are.
 * Beyond the measured range the end values are held: the nearest measured value is what CIE 15:2018 takes for missing
 * ones. (Zero would take real power from a filament or daylight; an LED's ends are near zero either way.)
 * A notice tells of held ends and how far x, y are open for them, of steps above 5 nm, and of noise set to zero.
 * Refused, with the reason: lists of unequal length, values that are not numbers, wavelengths that do not ascend, a
 * range short of 400-700 nm, steps above 10 nm, negative power, no visible power.
 */
export function emissionOnGrid(sampled: SampledEmission): Result<EmissionSpd> {
  const problem = findProblem(sampled);
  if (problem) return failure(problem);
  const seen = visiblePart(sampled);
  const spd = gridFromSamples(seen);
  if (!(visiblePower(spd) > 0)) return failure(darkProblem());
  const notices: Problem[] = [];
  if (seen.power.some((power) => power < 0)) notices.push(noiseNotice());
  const step_nm = coarsestStep(seen.nm);
  if (step_nm > GRID_STEP_NM + ROUNDING_NM) notices.push(coarseNotice(step_nm));
  const start_nm = seen.nm[0]!;
  const end_nm = seen.nm.at(-1)!;
  if (start_nm > GRID_START_NM || end_nm < GRID_END_NM) notices.push(extendedNotice(start_nm, end_nm, spd));
  return success(spd, notices);
}

/** The samples that bear on the grid, with one more on each side where there is one. */
function visiblePart({ nm, power }: SampledEmission): SampledEmission {
  const from = Math.max(
    0,
    nm.findLastIndex((value) => value <= GRID_START_NM - GRID_STEP_NM),
  );
  const after = nm.findIndex((value) => value >= GRID_END_NM + GRID_STEP_NM);
  const to = after < 0 ? nm.length : after + 1;
  return { nm: nm.slice(from, to), power: power.slice(from, to) };
}

const coarsestStep = (nm: readonly number[]): number => Math.max(...nm.slice(1).map((value, k) => value - nm[k]!));

function visiblePower(spd: EmissionSpd): number {
  return spd.reduce((sum, power, i) => sum + power * observer2.y[i]!, 0);
}

function findProblem(sampled: SampledEmission): Problem | null {
  const { nm, power } = sampled;
  if (nm.length !== power.length) {
    return {
      code: 'lamp-lengths',
      text: `There are ${nm.length} wavelengths and ${power.length} values.`,
      remedy: 'Give one value for each wavelength.',
    };
  }
  for (const [list, values] of Object.entries({ nm, power })) {
    const broken = values.findIndex((value) => !(Math.abs(value) <= GREATEST));
    if (broken >= 0) {
      return {
        code: 'lamp-not-a-number',
        text: `${list === 'nm' ? 'Wavelength' : 'The value of wavelength'} number ${broken + 1} is not a usable number.`,
        at: { path: `${list}[${broken}]` },
        remedy: 'Fill the gap from the instrument, or leave the line out.',
      };
    }
  }
  const back = nm.findIndex((value, k) => k > 0 && value <= nm[k - 1]!);
  if (back >= 0) {
    return {
      code: 'lamp-order',
      text: `${nm[back]} nm comes after ${nm[back - 1]} nm.`,
      at: { path: `nm[${back}]` },
      remedy: 'List each wavelength once, from short to long.',
    };
  }
  if (!(nm.length > 1 && nm[0]! <= NEEDED_FROM_NM && nm.at(-1)! >= NEEDED_TO_NM)) {
    return {
      code: 'lamp-range',
      text: nm.length
        ? `The spectrum covers ${nm[0]}-${nm.at(-1)} nm; ${NEEDED_FROM_NM}-${NEEDED_TO_NM} nm is needed.`
        : 'The spectrum is empty.',
      remedy: 'Export the whole visible range in nm, or give the lamp by its color temperature and Ra.',
    };
  }
  const seen = visiblePart(sampled);
  const step_nm = coarsestStep(seen.nm);
  if (step_nm > COARSEST_STEP_NM + ROUNDING_NM) {
    return {
      code: 'lamp-step',
      text: `The spectrum has a step of ${inNm(step_nm)} nm: a lamp's peaks may fall between its samples.`,
      remedy: `Export it in steps of 5 nm or less; ${COARSEST_STEP_NM} nm at most.`,
    };
  }
  const peak = seen.power.reduce((most, value) => Math.max(most, value), 0);
  if (peak === 0) return darkProblem();
  const negative = seen.power.findIndex((value) => value < -NOISE_OF_PEAK * peak);
  if (negative >= 0) {
    return {
      code: 'lamp-negative',
      text: `The power at ${seen.nm[negative]} nm is ${seen.power[negative]}, more below zero than noise is.`,
      remedy: 'Take the dark reading again and measure anew: a lamp gives no negative light.',
    };
  }
  return null;
}

const inNm = (step_nm: number): number => Number(step_nm.toFixed(3));

const darkProblem = (): Problem => ({
  code: 'lamp-dark',
  text: 'The spectrum holds no visible power.',
  remedy: 'Check that the column is the power of the lamp and that the lamp was on.',
});

const noiseNotice = (): Problem => ({
  code: 'lamp-noise',
  text: 'Some values are just below zero; they count as noise and become zero.',
  remedy: 'Nothing to do. A new dark reading on the instrument avoids it.',
});

const coarseNotice = (step_nm: number): Problem => ({
  code: 'lamp-coarse',
  text: `The spectrum has steps of up to ${inNm(step_nm)} nm; narrow peaks are only roughly known from that.`,
  remedy: 'Export it in steps of 5 nm or less if the instrument can.',
});

function extendedNotice(start_nm: number, end_nm: number, spd: EmissionSpd): Problem {
  return {
    code: 'lamp-extended',
    text:
      `The lamp was measured over ${start_nm}-${end_nm} nm; beyond, its end values are held (CIE 15). ` +
      `Without any power there, x and y would differ by up to ${shiftWithoutEnds(start_nm, end_nm, spd).toFixed(4)}.`,
    remedy: 'Nothing to do: the eye hardly sees the ends. Export 380-780 nm if the instrument can.',
  };
}

function shiftWithoutEnds(start_nm: number, end_nm: number, spd: EmissionSpd): number {
  const cut = spd.map((power, i) => (wavelengthNm(i) < start_nm || wavelengthNm(i) > end_nm ? 0 : power));
  const [held, without] = [chromaticity(spd), chromaticity(cut)];
  return Math.max(Math.abs(held.x - without.x), Math.abs(held.y - without.y));
}

function chromaticity(spd: Float64Array): { readonly x: number; readonly y: number } {
  const { x, y, z } = observer2;
  const [X, Y, Z] = [x, y, z].map((weights) => spd.reduce((sum, power, i) => sum + power * weights[i]!, 0));
  return { x: X! / (X! + Y! + Z!), y: Y! / (X! + Y! + Z!) };
}
