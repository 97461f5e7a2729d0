import * as v from 'valibot';
import { failure, type Problem, type Result, success } from '../engine/result';
import { checkFinish } from '../model/check-finish';
import { checkUnique } from '../model/check-number';
import { LIBRARY_VERSION, type Library, libraryOfNow, newLibrary } from '../model/library';
import { wrongKind } from './file-kind';
import { layOutJson } from './json-layout';
import { mendShares } from './mend-shares';
import { failureOf } from './place-problem';
import { projectOfJson } from './project-file';
import { finishSchema } from './project-schema';
import { readDocument } from './read-document';
import { fitSchema, unknownFieldNotices } from './schema-problems';

const KIND = {
  type: 'upstand-library',
  version: LIBRARY_VERSION,
  noun: 'library',
  choose: 'a library or a project',
} as const;

const librarySchema = v.object({
  type: v.literal(KIND.type),
  version: v.literal(KIND.version),
  id: v.string(),
  name: v.string(),
  note: v.string(),
  finishes: v.array(finishSchema),
}) satisfies v.GenericSchema<unknown, Library>;

/**
 * Reads a library file, or the library of a project file. Everything that is wrong is listed, each with file, line, path and what to do;
 * shares that miss 1 by rounding are scaled and unknown fields left out, both told. Colors are not looked at spectrally here
 * (`checkingLibrary` does that).
 */
export const parseLibrary = (text: string, file?: string): Result<Library> =>
  readDocument(text, file, (value, placed) => {
    if (!isProject(value)) return libraryOfJson(value, placed);
    const project = projectOfJson(value, placed);
    if (!project.ok) return project;
    const { id, name, library } = project.value;
    return success(newLibrary({ id, name, note: '', finishes: library }), project.notices);
  });

/** The same of what is no text any more; `placed` says where a problem sits. */
function libraryOfJson(value: unknown, placed: (problem: Problem) => Problem): Result<Library> {
  const kind = wrongKind(value, KIND);
  if (kind) return failure(placed(kind));
  const current = migrateLibrary(value);
  const parsed = fitSchema(librarySchema, current, placed);
  if (!parsed.ok) return parsed;
  const notices = unknownFieldNotices(current, parsed.value, 'library');
  const finishes = parsed.value.finishes.map((finish, i) => mendShares(finish, `finishes[${i}]`, notices));
  const problems = [
    ...finishes.flatMap((finish, i) => checkFinish(finish, `finishes[${i}]`)),
    ...checkUnique(
      finishes.map(({ id }) => id),
      'finishes',
    ),
  ];
  if (problems.length > 0) return failureOf(problems.map(placed));
  return success({ ...parsed.value, finishes }, notices.map(placed));
}

/** The file of a library: the same library always gives the same text, and `parseLibrary` gives it back. */
export const libraryText = (library: Library): string => layOutJson(v.parse(librarySchema, library));

/** Version 1 lacked what is optional. */
const migrateLibrary = (value: unknown): unknown =>
  (value as { version?: unknown }).version === 1 ? libraryOfNow(value as Library) : value;

const isProject = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && (value as { type?: unknown }).type === 'upstand-project';
