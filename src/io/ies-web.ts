import type { PhotometricWeb } from '../engine/photometry/types';
import { failure, type Problem, type Result, success } from '../engine/result';
import { type IesCursor, iesProblem, nextList } from './ies-numbers';

/** Intensities a project stores, at most (our judgment): a full sphere in steps of one degree has 65,341. */
export const MOST_CANDELA = 100_000;
const LARGEST_CANDELA = 1e9;
/** Angles nearer than this are one written twice; no photometer tells them apart (our judgment). */
const LEAST_STEP_DEG = 0.001;
const ROUNDING_DEG = 1e-9;
const REFETCH = 'Fetch the file again, or ask the maker of the lamp for another.';

interface Angles {
  readonly values: Float64Array;
  readonly lines: Uint32Array;
}

/** Reads angles and intensities; every intensity is multiplied by `factor`. Vertical angles may still run from 90 to 180. */
export function readIesWeb(
  cursor: IesCursor,
  rows: number,
  columns: number,
  factor: number,
): Result<{ readonly web: PhotometricWeb; readonly notices: readonly Problem[] }> {
  const { file } = cursor;
  const vertical = nextList(cursor, rows, 'vertical angle');
  if (!vertical.ok) return vertical;
  const horizontal = nextList(cursor, columns, 'horizontal angle');
  if (!horizontal.ok) return horizontal;
  const problem =
    risingProblem(vertical.value, 'vertical', file) ??
    verticalProblem(vertical.value, file) ??
    risingProblem(horizontal.value, 'horizontal', file) ??
    horizontalProblem(horizontal.value, file);
  if (problem) return failure(problem);
  const list = nextList(cursor, rows * columns, 'intensity');
  if (!list.ok) return list;
  const { values, lines } = list.value;
  const candela = values.map((value) => value * factor);
  const bad = candela.findIndex((value) => !(value >= 0 && value < LARGEST_CANDELA));
  if (bad >= 0) {
    const what = values[bad]! < 0 ? 'is negative' : 'is too large';
    return failure(iesProblem('bad-candela', lines[bad]!, `the intensity ${values[bad]} cd ${what}.`, REFETCH, file));
  }
  if (!candela.some((value) => value > 0)) {
    return failure(iesProblem('dark', lines[0]!, 'all intensities are 0: the lamp shines nowhere.', REFETCH, file));
  }
  const line = horizontal.value.lines[0]!;
  const around = anglesAround(horizontal.value.values);
  if (rows * around.length > MOST_CANDELA) return failure(tooManyCandela(line, rows * around.length, file));
  const measured = { vertical_deg: vertical.value.values, horizontal_deg: horizontal.value.values, candela };
  const web = completed(measured, around);
  const notice = (code: string, text: string): Problem => iesProblem(code, line, text, 'Nothing to do.', file);
  const notices: Problem[] = [];
  if (horizontal.value.values[0] === 90) {
    const text =
      'the lamp was measured on one side, from 90 to 270 degrees; the other side is taken as its mirror image.';
    notices.push(notice('mirrored', text));
  } else if (isOpen(horizontal.value.values)) {
    notices.push(notice('closed', 'the horizontal angles stop one step before 360; the first is taken for the last.'));
  }
  return success({ web, notices });
}

export const tooManyCandela = (line: number, count: number, file?: string): Problem =>
  iesProblem(
    'too-many-candela',
    line,
    `the lamp has ${count} intensities; ${MOST_CANDELA} are read at most.`,
    'Ask for a file in coarser steps: 1 degree down and 5 degrees around are enough for any lamp.',
    file,
  );

function risingProblem({ values, lines }: Angles, which: string, file?: string): Problem | null {
  const at = values.findIndex((angle, i) => i > 0 && !(angle - values[i - 1]! >= LEAST_STEP_DEG - ROUNDING_DEG));
  if (at < 0) return null;
  const [before, angle] = [values[at - 1]!, values[at]!];
  const found = angle > before ? `lies closer than ${LEAST_STEP_DEG} degrees to` : 'does not come after';
  const text = `the ${which} angle ${angle} ${found} ${before}.`;
  return iesProblem('angle-order', lines[at]!, text, `The angles must rise. ${REFETCH}`, file);
}

function verticalProblem({ values, lines }: Angles, file?: string): Problem | null {
  const first = values[0]!;
  const last = values.at(-1)!;
  if ((first === 0 && (last === 90 || last === 180)) || (first === 90 && last === 180)) return null;
  const text = `the vertical angles run from ${first} to ${last} degrees; what the lamp does beyond is not said.`;
  return iesProblem(
    'vertical-range',
    lines[0]!,
    text,
    `They must run from 0 to 90, 0 to 180 or 90 to 180. ${REFETCH}`,
    file,
  );
}

function horizontalProblem({ values, lines }: Angles, file?: string): Problem | null {
  const first = values[0]!;
  const last = values.at(-1)!;
  if (first === 0 && [0, 90, 180, 360].includes(last)) return null;
  if ((first === 90 && last === 270) || isOpen(values)) return null;
  const text = `the horizontal angles run from ${first} to ${last} degrees, which is no symmetry of LM-63.`;
  return iesProblem('horizontal-range', lines[0]!, text, `They must end at 0, 90, 180 or 360. ${REFETCH}`, file);
}

/** Whether the circle lacks just its last angle, which repeats the first: many files leave it out. */
function isOpen(horizontal_deg: Float64Array): boolean {
  const last = horizontal_deg.at(-1)!;
  const step = last - (horizontal_deg.at(-2) ?? last);
  return horizontal_deg[0] === 0 && last > 180 && last < 360 && Math.abs(last + step - 360) < 1e-6;
}

/** The horizontal angles of the completed web: they start at 0 and end at one of 0, 90, 180, 360. */
function anglesAround(horizontal_deg: Float64Array): Float64Array {
  if (horizontal_deg[0] === 90) {
    const mirrored = horizontal_deg.map((h) => (540 - h) % 360);
    return Float64Array.from(new Set([0, 360, ...horizontal_deg, ...mirrored])).sort();
  }
  return isOpen(horizontal_deg) ? Float64Array.of(...horizontal_deg, 360) : horizontal_deg;
}

/** A web over the angles `around`. */
function completed(web: PhotometricWeb, around: Float64Array): PhotometricWeb {
  const { vertical_deg, horizontal_deg, candela } = web;
  if (horizontal_deg[0] === 90) return mirroredAcross(web, around);
  if (around === horizontal_deg) return web;
  const closed = new Float64Array(vertical_deg.length * around.length);
  closed.set(candela);
  closed.set(candela.subarray(0, vertical_deg.length), candela.length);
  return { vertical_deg, horizontal_deg: around, candela: closed };
}

/** A web from 90 to 270 degrees as one of 0 to 360: what lies at h lies at 180 - h, too. */
function mirroredAcross(
  { vertical_deg, horizontal_deg, candela }: PhotometricWeb,
  around: Float64Array,
): PhotometricWeb {
  const rows = vertical_deg.length;
  const whole = new Float64Array(rows * around.length);
  let j = 0;
  around.forEach((angle, column) => {
    const h = angle < 90 ? 180 - angle : angle > 270 ? 540 - angle : angle;
    // The measured side is walked along to and fro: from angle to angle it is a step or two.
    while (j > 0 && horizontal_deg[j - 1]! >= h) j--;
    while (horizontal_deg[j]! < h) j++;
    const f = j > 0 ? (h - horizontal_deg[j - 1]!) / (horizontal_deg[j]! - horizontal_deg[j - 1]!) : 1;
    for (let i = 0; i < rows; i++) {
      const next = candela[j * rows + i]!;
      whole[column * rows + i] = f === 1 ? next : next * f + candela[(j - 1) * rows + i]! * (1 - f);
    }
  });
  return { vertical_deg, horizontal_deg: around, candela: whole };
}
