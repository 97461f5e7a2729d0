import type { PhotometricWeb } from '../engine/photometry/types';
import { failure, type Problem, type Result, success } from '../engine/result';
import { type IesCursor, iesProblem, nextList } from './ies-numbers';

/** Intensities a project stores, at most (our judgement): a full sphere in steps of one degree has 65,341. */
export const MOST_CANDELA = 100_000;
const LARGEST_CANDELA = 1e9;
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
  const web = completed({ vertical_deg: vertical.value.values, horizontal_deg: horizontal.value.values, candela });
  const line = horizontal.value.lines[0]!;
  if (web.candela.length > MOST_CANDELA) return failure(tooManyCandela(line, web.candela.length, file));
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
  const at = values.findIndex((angle, i) => i > 0 && !(angle > values[i - 1]!));
  if (at < 0) return null;
  const text = `the ${which} angle ${values[at]} does not come after ${values[at - 1]}.`;
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

/** A web whose horizontal angles start at 0 and end at one of 0, 90, 180, 360. */
function completed(web: PhotometricWeb): PhotometricWeb {
  const { vertical_deg, horizontal_deg, candela } = web;
  if (horizontal_deg[0] === 90) return mirroredAcross(web);
  if (!isOpen(horizontal_deg)) return web;
  return {
    vertical_deg,
    horizontal_deg: Float64Array.of(...horizontal_deg, 360),
    candela: Float64Array.from([...candela, ...candela.subarray(0, vertical_deg.length)]),
  };
}

/** A web from 90 to 270 degrees as one of 0 to 360: what lies at h lies at 180 - h, too. */
function mirroredAcross({ vertical_deg, horizontal_deg, candela }: PhotometricWeb): PhotometricWeb {
  const rows = vertical_deg.length;
  const mirrored = [...horizontal_deg].map((h) => (540 - h) % 360);
  const angles = [...new Set([0, 360, ...horizontal_deg, ...mirrored])].sort((a, b) => a - b);
  const planeAt = (h: number): number[] => {
    const j = horizontal_deg.findIndex((angle) => angle >= h);
    const f = j > 0 ? (h - horizontal_deg[j - 1]!) / (horizontal_deg[j]! - horizontal_deg[j - 1]!) : 1;
    return Array.from(vertical_deg, (_, i) => {
      const next = candela[j * rows + i]!;
      return f === 1 ? next : next * f + candela[(j - 1) * rows + i]! * (1 - f);
    });
  };
  const candelaAround = angles.flatMap((h) => planeAt(h < 90 ? 180 - h : h > 270 ? 540 - h : h));
  return { vertical_deg, horizontal_deg: Float64Array.from(angles), candela: Float64Array.from(candelaAround) };
}
