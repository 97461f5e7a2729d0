import * as v from 'valibot';
import { finishComponent } from '../engine/finish/component';
import { failure, type Problem, type Result, success } from '../engine/result';
import { checkLook } from '../model/check-look';
import type { CopiedLook } from '../model/look';
import { wrongKind } from './file-kind';
import { layOutJson } from './json-layout';
import { locateJson } from './json-text';
import { failureOf } from './place-problem';
import { lookSchema } from './project-schema';
import { readDocument } from './read-document';
import { fitSchema, unknownFieldNotices } from './schema-problems';

/** The version of look files this program writes, and the newest it reads. */
const VERSION = 1;

const fileSchema = v.object({ type: v.literal('upstand-look'), version: v.literal(VERSION), ...lookSchema.entries });

/** What a text says it is; null where it is no JSON object with a type. */
export function typeOfFile(text: string): string | null {
  const located = locateJson(text);
  const value = located.ok ? located.value.value : null;
  const type =
    typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as { type?: unknown }).type : null;
  return typeof type === 'string' ? type : null;
}

/**
 * Reads a look file. Everything that is wrong is listed, each with file, line, path and what to do. Fields it does not know are left
 * out and said. Colors that no surface can have are refused.
 */
export const parseLook = (text: string, file?: string): Result<CopiedLook> => readDocument(text, file, lookOfJson);

function lookOfJson(value: unknown, placed: (problem: Problem) => Problem): Result<CopiedLook> {
  const kind = wrongKind(value, KIND);
  if (kind) return failure(placed(kind));
  const parsed = fitSchema(fileSchema, value, placed);
  if (!parsed.ok) return parsed;
  const { type: _, version: __, ...look } = parsed.value;
  const problems = checkLook(look, '');
  const wrong = problems.length > 0 ? problems : lookColorProblems(look);
  if (wrong.length > 0) return failureOf(wrong.map(placed));
  const notices = unknownFieldNotices(value, parsed.value, 'look').map(placed);
  return success(look, notices);
}

/** The file of a look: `parseLook` gives the look back. */
export const lookText = (look: CopiedLook): string =>
  layOutJson(v.parse(fileSchema, { type: 'upstand-look', version: VERSION, ...look }));

const KIND = {
  type: 'upstand-look',
  version: VERSION,
  noun: 'look',
  choose: 'a look file, or a project file',
} as const;

/** Colors of a look that no surface can have. `at`: what its paths begin with, e.g. 'looks[0].'. */
export function lookColorProblems(look: CopiedLook, at = ''): readonly Problem[] {
  return look.surfaces.flatMap((one, i) =>
    one.colors.flatMap(({ role, share, color, provenance }, k) => {
      const made = finishComponent({ role, share, color, provenance, finishClass: one.class ?? 'paint' });
      if (made.ok) return [];
      const path = `${at}surfaces[${i}].colors[${k}].color`;
      return [{ ...made.problem, text: `${path}: ${made.problem.text}`, at: { path } }];
    }),
  );
}
