import * as v from 'valibot';
import { failure, type Problem, type Result, success } from '../engine/result';
import { checkProject } from '../model/check-project';
import type { Finish, Project } from '../model/project';
import { emptyNotices, withEmptySurfaces, withoutEmptySurfaces } from './empty-surfaces';
import { wrongKind } from './file-kind';
import { layOutJson } from './json-layout';
import { mendShares } from './mend-shares';
import { migrateProject } from './migrate-project';
import { failureOf } from './place-problem';
import { projectSchema } from './project-schema';
import { readDocument } from './read-document';
import { fitSchema, unknownFieldNotices } from './schema-problems';

/** The version this program writes, and the newest it reads. */
const VERSION = 9;

/**
 * Reads a project file. Everything that is wrong is listed, each with file, line, path and what to do; nothing is guessed.
 * Two things are mended and said as notices: shares that miss 1 by rounding are scaled, unknown fields are left out. Surfaces that
 * nothing is chosen for are told, too.
 * Colors are not looked at spectrally here (`checkColors` does that).
 */
export const parseProject = (text: string, file?: string): Result<Project> => readDocument(text, file, projectOfJson);

/** The same of what is no text any more; `placed` says where a problem sits. */
export function projectOfJson(
  value: unknown,
  placed: (problem: Problem) => Problem = (problem) => problem,
): Result<Project> {
  const kind = wrongKind(value, KIND);
  if (kind) return failure(placed(kind));
  const current = migrateProject(value);
  const parsed = fitSchema(projectSchema, current, placed);
  if (!parsed.ok) return parsed;

  const notices = unknownFieldNotices(current, parsed.value, 'project');
  const { revisions } = parsed.value;
  const mended = {
    ...parsed.value,
    library: mendLibrary(parsed.value.library, '', notices),
    ...(revisions && { revisions: revisions.map((revision, i) => mendRevision(revision, i, notices)) }),
  };
  const project = withEmptySurfaces(mended);
  notices.push(...emptyNotices(project));
  const problems = checkProject(project);
  return problems.length > 0 ? failureOf(problems.map(placed)) : success(project, notices.map(placed));
}

/** The file of a project: the same document always gives the same text, and `parseProject` gives the document back. */
export const projectText = (project: Project): string =>
  layOutJson(v.parse(projectSchema, withoutEmptySurfaces(project)));

/** The same on one line and without a blank: for where every character counts. */
export const compactProjectText = (project: Project): string =>
  JSON.stringify(v.parse(projectSchema, withoutEmptySurfaces(project)));

const KIND = { type: 'upstand-project', version: VERSION, noun: 'project', choose: 'a project file' } as const;

const mendLibrary = (library: readonly Finish[], path: string, notices: Problem[]): readonly Finish[] =>
  library.map((finish, i) => mendShares(finish, `${path}library[${i}]`, notices));

const mendRevision = <R extends { readonly document: { readonly library: readonly Finish[] } }>(
  revision: R,
  i: number,
  notices: Problem[],
): R => ({
  ...revision,
  document: {
    ...revision.document,
    library: mendLibrary(revision.document.library, `revisions[${i}].document.`, notices),
  },
});
