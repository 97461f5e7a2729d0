import { webFlux } from '../engine/photometry/web-flux';
import { webFromRecord } from '../engine/photometry/web-from-record';
import type { Problem } from '../engine/result';
import { type Bounds, checkNumber, checkText } from './check-number';
import type { BeamRecord } from './project';

/** More values than any lamp's file has (our judgment). */
const MOST_VALUES = 100_000;

/** Lumens of a beam: far below a spark, far above a stadium's lamp (our judgment). */
export const BEAM_LUMENS: Bounds = [1e-6, 1e7, 'lm'];

/** Angles nearer than this are one written twice. Half of what is asked of a file: mirroring rounds. */
const LEAST_STEP_DEG = 0.0005;

/** Between the lumens and the integral of the intensities: rounding, and ways to integrate coarse steps (our judgment). */
const LUMENS_TOLERANCE = 0.05;

/** Last horizontal angles by symmetry: rotational, quadrant, bilateral, none (IES LM-63, type C). */
const LAST_HORIZONTAL_DEG: readonly number[] = [0, 90, 180, 360];

/** What is wrong with a beam: its name, its angles, its intensities. */
export function checkBeam(beam: BeamRecord, path: string): readonly Problem[] {
  const { vertical_deg, horizontal_deg, candela } = beam;
  const values = vertical_deg.length * horizontal_deg.length;
  const problems = [
    ...checkText(beam.id, `${path}.id`),
    ...checkText(beam.label, `${path}.label`),
    ...checkNumber(beam.lumens, BEAM_LUMENS, `${path}.lumens`),
    ...checkNumber(values, [2, MOST_VALUES, 'values'], `${path}.candela`),
  ];
  if (problems.length > 0) return problems;
  const inList = [
    ...checkAngles(vertical_deg, [0, 180], `${path}.vertical_deg`),
    ...checkAngles(horizontal_deg, [0, 360], `${path}.horizontal_deg`),
    ...checkEnds(beam, path),
    ...checkCandela(candela, horizontal_deg.length, vertical_deg.length, `${path}.candela`),
  ];
  return inList.length > 0 ? inList : checkLumens(beam, path);
}

function checkLumens(beam: BeamRecord, path: string): Problem[] {
  const flux = webFlux(webFromRecord(beam));
  if (Math.abs(flux - beam.lumens) <= LUMENS_TOLERANCE * flux) return [];
  const found = Number(flux.toPrecision(3));
  return [wrong(`${path}.lumens`, `The intensities add up to ${found} lm, not to ${beam.lumens} lm.`)];
}

function checkAngles(angles: readonly number[], [least, most]: readonly [number, number], path: string): Problem[] {
  const rises = angles.every(
    (angle, i) => angle >= least && angle <= most && (i === 0 || angle - angles[i - 1]! >= LEAST_STEP_DEG),
  );
  return rises ? [] : [wrong(path, `The angles do not rise from ${least} to at most ${most} degrees.`)];
}

function checkEnds({ vertical_deg, horizontal_deg }: BeamRecord, path: string): Problem[] {
  const problems: Problem[] = [];
  const last = vertical_deg.at(-1)!;
  if (vertical_deg[0] !== 0 || (last !== 90 && last !== 180)) {
    problems.push(wrong(`${path}.vertical_deg`, 'The vertical angles do not run from 0 to 90 or 180 degrees.'));
  }
  if (horizontal_deg[0] !== 0 || !LAST_HORIZONTAL_DEG.includes(horizontal_deg.at(-1)!)) {
    problems.push(
      wrong(`${path}.horizontal_deg`, 'The horizontal angles do not run from 0 to 0, 90, 180 or 360 degrees.'),
    );
  }
  return problems;
}

function checkCandela(rows: readonly (readonly number[])[], count: number, length: number, path: string): Problem[] {
  if (rows.length !== count || rows.some((row) => row.length !== length)) {
    return [wrong(path, `There are not ${length} intensities for each of ${count} horizontal angles.`)];
  }
  const isFine = rows.every((row) => row.every((value) => value >= 0 && value < 1e9));
  if (!isFine) return [wrong(path, 'An intensity is negative, too large or no number.')];
  return rows.some((row) => row.some((value) => value > 0)) ? [] : [wrong(path, 'The lamp shines nowhere.')];
}

const wrong = (path: string, text: string): Problem => ({
  code: 'beam',
  text: `${path}: ${text}`,
  at: { path },
  remedy: 'Read the lamp again from its file.',
});
