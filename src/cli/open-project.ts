import { failure, type Problem, type Result, success } from '../engine/result';
import { checkColors } from '../io/check-colors';
import { parseProject } from '../io/project-file';
import { finishNames, givenNames } from '../model/given-names';
import type { Project } from '../model/project';
import { readText } from './read-text';

/** A project with the option and the setting to look at. */
export interface Opened {
  readonly project: Project;
  readonly option: string;
  readonly setting: string;
  readonly notices: readonly Problem[];
}

/** Reads a project and finds option and setting; without a name the first of each is taken, and said. */
export function openProject(file: string, option?: string, setting?: string): Result<Opened> {
  const text = readText(file);
  if (!text.ok) return text;
  const parsed = parseProject(text.value, file);
  if (!parsed.ok) return parsed;
  const colored = checkColors(parsed.value, text.value, file);
  if (!colored.ok) return colored;
  const project = parsed.value;
  const notices = [...(parsed.notices ?? []), ...(colored.notices ?? [])];

  const choose = (kind: 'option' | 'setting', wanted: string | undefined): Result<string> => {
    const known = (kind === 'option' ? project.options : project.settings).map((one) => one.id);
    if (wanted !== undefined && !known.includes(wanted)) {
      return failure({
        code: `unknown-${kind}`,
        text: `There is no ${kind} "${wanted}" in this project.`,
        at: { file, path: `${kind}s` },
        remedy: `Name one of: ${known.join(', ')}.`,
      });
    }
    if (wanted === undefined && known.length > 1) {
      const text = `Taking the first ${kind}, "${known[0]}".`;
      notices.push({
        code: 'first-taken',
        text,
        at: { file },
        remedy: `Others: --${kind} ${known.slice(1).join(' or ')}.`,
      });
    }
    return success(wanted ?? known[0]!);
  };

  const chosenOption = choose('option', option);
  if (!chosenOption.ok) return chosenOption;
  const chosenSetting = choose('setting', setting);
  if (!chosenSetting.ok) return chosenSetting;
  return success({ project, option: chosenOption.value, setting: chosenSetting.value, notices });
}

/** Every name people gave in a project. */
export const namesIn = (project: Project): readonly string[] => [
  ...finishNames(project.library),
  ...givenNames(project),
];

/** A problem found while computing gets the file it comes from. */
export const inFile = (file: string, problem: Problem): Problem => ({ ...problem, at: { file, ...problem.at } });
