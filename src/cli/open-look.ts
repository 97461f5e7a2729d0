import { existsSync } from 'node:fs';
import { failure, type Problem, type Result, success } from '../engine/result';
import { parseLook, typeOfFile } from '../io/look-file';
import type { GivenLook } from '../kitchen/carry/carry-over';
import { lookOfOption } from '../kitchen/carry/look-of-option';
import { relationScheme } from '../kitchen/carry/relation-scheme';
import { studyOption } from '../kitchen/study/assess-option';
import { judgeTried } from '../kitchen/study/judge-tried';
import { judgeInput } from '../kitchen/study/readings';
import type { RoomStudy } from '../kitchen/study/room-study';
import type { SettingLight } from '../kitchen/study/setting-light';
import { optionById } from '../model/commands';
import type { CopiedLook } from '../model/look';
import type { Project } from '../model/project';
import { inFile, openProject } from './open-project';
import { readText } from './read-text';

/** A look, and how to see it in its own kitchen once that of the target is studied. */
export interface OpenedLook {
  readonly look: CopiedLook;
  readonly inKitchen: (study: RoomStudy, setting: SettingLight) => Result<GivenLook>;
}

/**
 * A look by what names it: the id of a look or of an option of the target's project, a look file, or a project file (its
 * option `lookOption`, else the first). Of an option its own kitchen says how much one sees of each surface.
 */
export function openLook(
  name: string,
  lookOption: string | undefined,
  project: Project,
  file: string,
): Result<OpenedLook> {
  const kept = lookOption === undefined ? project.looks?.find(({ id }) => id === name) : undefined;
  if (kept) return success(alone(kept));
  if (optionById(project, name) && lookOption === undefined) return ofOption(name, project, file);
  if (!existsSync(name)) return failure(unknownLook(name, project, file));
  const text = readText(name);
  if (!text.ok) return text;
  if (typeOfFile(text.value) !== 'upstand-project') {
    const look = parseLook(text.value, name);
    if (!look.ok) return look;
    return lookOption === undefined ? success(alone(look.value), look.notices) : failure(noOptions(name));
  }
  const opened = openProject(name, lookOption);
  if (!opened.ok) return opened;
  const { project: theirs, option, notices } = opened.value;
  const isHere = JSON.stringify(theirs) === JSON.stringify(project);
  const found = isHere ? ofOption(option, project, file) : ofOther(theirs, option, name);
  // Which setting is first says nothing of a look.
  return found.ok
    ? success(
        found.value,
        notices.filter(({ text: said }) => !said.includes('setting')),
      )
    : found;
}

const alone = (look: CopiedLook): OpenedLook => ({ look, inKitchen: () => success({ look }) });

function ofOption(id: string, project: Project, file: string): Result<OpenedLook> {
  const look = lookOfOption(project, id);
  if (!look.ok) return { ...look, problem: inFile(file, look.problem) };
  return success({
    look: look.value,
    inKitchen(study, setting) {
      const input = judgeTried(project, id, study, setting);
      if (!input.ok) return { ...input, problem: inFile(file, input.problem) };
      return success({
        look: look.value,
        seen: relationScheme(project, input.value),
        option: optionById(project, id)!,
      });
    },
  });
}

/** Its own kitchen under its first setting: the light does not matter, for relations are those of the samples. */
function ofOther(project: Project, option: string, file: string): Result<OpenedLook> {
  const look = lookOfOption(project, option);
  if (!look.ok) return { ...look, problem: inFile(file, look.problem) };
  return success({
    look: look.value,
    inKitchen() {
      const found = studyOption(project, option, project.settings[0]!.id);
      if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
      const { study, solved, setting } = found.value;
      const seen = relationScheme(project, judgeInput(project, study, solved, setting));
      return success({ look: look.value, seen });
    },
  });
}

function unknownLook(name: string, project: Project, file: string): Problem {
  const ids = [...(project.looks ?? []), ...project.options].map(({ id }) => id);
  return {
    code: 'unknown-look',
    text: `There is no file "${name}", and no look or option of that id in ${file}.`,
    at: { file: name },
    remedy: `Name a look file, a project file, or one of: ${ids.join(', ')}.`,
  };
}

const noOptions = (file: string): Problem => ({
  code: 'wrong-arguments',
  text: 'A look file has no options.',
  at: { file },
  remedy: 'Leave out --look-option.',
});
