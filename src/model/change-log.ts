import { failure, type Problem, type Result, success } from '../engine/result';
import { bad, replace, unknown } from './change-problems';
import { checkLogEntry, checkRevision } from './check-log';
import { type LogCommand, optionById } from './commands';
import type { Option, Project, ProjectDocument, Revision } from './project';

/** The document after a command on what grows beside it: its log, its notes, its frozen revisions. */
export function changeLog(project: Project, command: LogCommand): Result<Project> {
  switch (command.kind) {
    case 'add-log': {
      const { entry } = command;
      return checked(checkLogEntry(entry, 'entry'), { ...project, log: [...(project.log ?? []), entry] });
    }
    case 'remove-log':
      return removeLog(project, command.entry);
    case 'set-note':
      return command.what === 'project'
        ? success({ ...project, note: command.note })
        : noteOnOption(project, command.option, command.note);
    case 'freeze-revision': {
      const { id, name, at, note } = command;
      const revisions = project.revisions ?? [];
      if (revisions.some((one) => one.id === id)) {
        return failure(bad('duplicate-id', 'id', `There is a revision ${id} already.`));
      }
      const revision: Revision = { id, name, at, note, document: documentIn(project) };
      return checked(checkRevision(revision, 'revision'), { ...project, revisions: [...revisions, revision] });
    }
    case 'rename-revision':
      return onRevision(project, command.revision, (revisions, before) => {
        const after = { ...before, name: command.name };
        return checked(checkRevision(after, 'revision'), { ...project, revisions: replace(revisions, before, after) });
      });
    case 'remove-revision':
      return onRevision(project, command.revision, (all, one) =>
        success(
          withRevisions(
            project,
            all.filter((other) => other !== one),
          ),
        ),
      );
    case 'go-back-to-revision':
      return onRevision(project, command.revision, (_, { document }) => success(goBack(project, document)));
  }
}

/** The project without its log and its revisions. */
export function documentIn(project: Project): ProjectDocument {
  const { log: _, revisions: _kept, ...document } = project;
  return document;
}

/**
 * The id stays: a copy of a project carries revisions that were frozen in the one it was copied from. So does what happened since, whichever
 * finishes are chosen: job, samples, and what was said of items (it is said of a finish, and waits for it).
 */
function goBack({ id, log, revisions, job, samples, options }: Project, document: ProjectDocument): Project {
  const { job: _job, samples: _samples, ...rest } = document;
  const back = document.options.map((then) => withRecords(then, options.find((one) => one.id === then.id)?.items));
  return {
    ...rest,
    id,
    // The very same where nothing was said of items: caches rest on it.
    ...(back.some((option, i) => option !== document.options[i]) && { options: back }),
    ...(job && { job }),
    ...(samples && { samples }),
    ...(log && { log }),
    ...(revisions && { revisions }),
  };
}

/** An option of a revision with what is known of its items now, and what only the revision knew. */
function withRecords(option: Option, now: Option['items'] = []): Option {
  const only = (option.items ?? []).filter(
    ({ item, finish }) => !now.some((one) => one.item === item && one.finish === finish),
  );
  if (now.length === 0) return option;
  const { items: _, ...rest } = option;
  return { ...rest, items: [...now, ...only] };
}

/** None leave the field out. */
function withRevisions({ revisions: _, ...rest }: Project, left: readonly Revision[]): Project {
  return left.length > 0 ? { ...rest, revisions: left } : rest;
}

function removeLog(project: Project, at: number): Result<Project> {
  const { log = [], ...rest } = project;
  const entry = log[at];
  if (!entry) return failure(bad('unknown-entry', 'entry', `The log has no line ${at + 1}.`));
  const left = log.filter((one) => one !== entry);
  return success(left.length > 0 ? { ...rest, log: left } : rest);
}

/** An empty note leaves the field out. */
function noteOnOption(project: Project, id: string, note: string): Result<Project> {
  const option = optionById(project, id);
  if (!option) return unknown('option', id, project.options);
  const { note: _, ...rest } = option;
  const after: Option = note.trim() === '' ? rest : { ...rest, note };
  return success({ ...project, options: replace(project.options, option, after) });
}

function onRevision(
  project: Project,
  id: string,
  change: (revisions: readonly Revision[], revision: Revision) => Result<Project>,
): Result<Project> {
  const revisions = project.revisions ?? [];
  const revision = revisions.find((one) => one.id === id);
  return revision ? change(revisions, revision) : unknown('revision', id, revisions);
}

function checked([problem, ...more]: readonly Problem[], value: Project): Result<Project> {
  return problem ? failure(problem, more) : success(value);
}
