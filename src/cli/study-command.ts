import { type Result, success } from '../engine/result';
import type { Project } from '../model/project';
import { readArguments } from './arguments';
import { COMMON_OPTIONS, type Command, type Report } from './command';
import { inFile, openProject } from './open-project';

const OPTIONS = { ...COMMON_OPTIONS, option: { type: 'string' }, setting: { type: 'string' } } as const;

/** A command that studies one option of a project under one setting and prints what it found. */
export function studyCommand<T>(
  name: string,
  summary: string,
  study: (project: Project, option: string, setting: string) => Result<T>,
  inWords: (found: T) => string,
): Command {
  return {
    name,
    usage: `${name} PROJECT [--option ID] [--setting ID] [--json]`,
    summary,
    run(args): Result<Report> {
      const given = readArguments(args, OPTIONS, 'The project file', this.usage);
      if (!given.ok) return given;
      const { subject: file, values } = given.value;
      const opened = openProject(file, values.option, values.setting);
      if (!opened.ok) return opened;
      const { project, option, setting, notices } = opened.value;
      const found = study(project, option, setting);
      if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
      return success({ json: found.value, text: inWords(found.value), notices });
    },
  };
}
