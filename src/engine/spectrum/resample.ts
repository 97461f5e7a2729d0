import { failure, type Problem, type Result, success } from '../result';
import { GRID_COUNT, GRID_END_NM, GRID_START_NM, wavelengthNm } from './grid';
import type { ReflectanceSpd } from './types';

/** A measured reflectance as an instrument or a file gives it: equal steps, values 0-1. */
export interface SampledReflectance {
  readonly start_nm: number;
  readonly step_nm: number;
  readonly reflectance: readonly number[];
}

const STEPS_NM: readonly number[] = [1, 5, 10, 20];
const NEEDED_FROM_NM = 400;
const NEEDED_TO_NM = 700;

/**
 * A measured reflectance on the project's grid. 1 nm and 5 nm data are picked, coarser data interpolated by third-degree
 * Lagrange polynomials (CIE 15:2018, 7.2.2). Data that start by 400 nm and reach 700 nm are extended to 380-780 nm by
 * holding the end values (ASTM E308), and a notice says so.
 * Refused, with the reason: steps other than 1, 5, 10, 20 nm; missing range; values that are not numbers, below 0 or
 * above 1.
 */
export function reflectanceOnGrid(sampled: SampledReflectance): Result<ReflectanceSpd> {
  const problem = findProblem(sampled);
  if (problem) return failure(problem);
  const { start_nm, step_nm, reflectance } = sampled;
  const end_nm = start_nm + step_nm * (reflectance.length - 1);
  const rho = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const nm = Math.min(Math.max(wavelengthNm(i), start_nm), end_nm);
    // A steep edge may overshoot; a reflectance cannot.
    rho[i] = Math.min(1, Math.max(0, lagrange(reflectance, (nm - start_nm) / step_nm)));
  }
  const extended = start_nm > GRID_START_NM || end_nm < GRID_END_NM;
  return success(rho as ReflectanceSpd, extended ? [extendedNotice(start_nm, end_nm)] : []);
}

function findProblem({ start_nm, step_nm, reflectance }: SampledReflectance): Problem | null {
  if (!STEPS_NM.includes(step_nm)) {
    return {
      code: 'spectrum-step',
      text: `The spectrum has a step of ${step_nm} nm.`,
      remedy: 'Give it at 1, 5, 10 or 20 nm, in equal steps.',
    };
  }
  const end_nm = start_nm + step_nm * (reflectance.length - 1);
  if (!(start_nm <= NEEDED_FROM_NM && end_nm >= NEEDED_TO_NM)) {
    return {
      code: 'spectrum-range',
      text: `The spectrum covers ${start_nm}-${end_nm} nm; ${NEEDED_FROM_NM}-${NEEDED_TO_NM} nm is needed.`,
      remedy: 'Export the whole visible range, or give the color as L*, a*, b*.',
    };
  }
  const broken = reflectance.findIndex((value) => !Number.isFinite(value));
  if (broken >= 0) {
    return {
      code: 'spectrum-not-a-number',
      text: `The value at ${start_nm + broken * step_nm} nm is not a number.`,
      at: { path: `reflectance[${broken}]` },
      remedy: 'Fill the gap from the instrument or give the color as L*, a*, b*.',
    };
  }
  const negative = reflectance.findIndex((value) => value < 0);
  if (negative >= 0) {
    return {
      code: 'spectrum-negative',
      text: `The reflectance at ${start_nm + negative * step_nm} nm is ${reflectance[negative]}.`,
      at: { path: `reflectance[${negative}]` },
      remedy: 'A reflectance is not below 0: calibrate the instrument against its black trap and measure again.',
    };
  }
  const greatest = reflectance.reduce((most, value) => Math.max(most, value), 0);
  if (greatest > 2) {
    return {
      code: 'spectrum-percent',
      text: `The largest value is ${greatest}: this looks like percent.`,
      remedy: 'Divide the values by 100: a reflectance is 0 to 1.',
    };
  }
  if (greatest > 1) {
    return {
      code: 'spectrum-above-one',
      text: `The largest value is ${greatest}: more light would come back than falls on the sample.`,
      remedy: 'A brightener glows, or the white calibration is off: measure with the UV filter in, or calibrate again.',
    };
  }
  return null;
}

/** Third-degree Lagrange interpolation at a fractional index; at the ends the outermost four points serve. */
function lagrange(values: readonly number[], position: number): number {
  const nearest = Math.round(position);
  if (Math.abs(position - nearest) < 1e-9) return values[nearest]!;
  const first = Math.min(Math.max(Math.floor(position) - 1, 0), values.length - 4);
  const t = position - first;
  return (
    (-values[first]! * (t - 1) * (t - 2) * (t - 3)) / 6 +
    (values[first + 1]! * t * (t - 2) * (t - 3)) / 2 -
    (values[first + 2]! * t * (t - 1) * (t - 3)) / 2 +
    (values[first + 3]! * t * (t - 1) * (t - 2)) / 6
  );
}

function extendedNotice(start_nm: number, end_nm: number): Problem<'spectrum-extended'> {
  return {
    code: 'spectrum-extended',
    text: `The spectrum covers ${start_nm}-${end_nm} nm; beyond, its end values are held (ASTM E308).`,
    remedy: 'Nothing to do: the eye hardly sees the ends. Measure 380-780 nm if your instrument can.',
  };
}
