import { existsSync } from 'node:fs';
import type { RelationScheme } from '../engine/judge/relations/seen-scheme';
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
import type { Project } from '../model/project';
import { inFile, openProject } from './open-project';
import { readText } from './read-text';

/** The kitchen that the look is carried to, studied under the setting. */
export interface Target {
  readonly file: string;
  readonly project: Project;
  readonly study: RoomStudy;
  readonly setting: SettingLight;
}

/**
 * A look by what names it: the id of a look or of an option of the target's project, a look file, or a project file (its
 * option `lookOption`, else the first). Of an option its own kitchen says how much one sees of each surface.
 */
export function openLook(name: string, lookOption: string | undefined, target: Target): Result<GivenLook> {
  const { project, file } = target;
  const kept = project.looks?.find(({ id }) => id === name);
  if (kept && lookOption === undefined) return success({ look: kept });
  if (optionById(project, name) && lookOption === undefined) return ofOption(name, target);
  if (!existsSync(name)) return failure(unknownLook(name, project, file));
  const text = readText(name);
  if (!text.ok) return text;
  if (typeOfFile(text.value) !== 'upstand-project') {
    const look = parseLook(text.value, name);
    if (!look.ok) return look;
    if (lookOption !== undefined) return failure(noOptions(name));
    return success({ look: look.value }, look.notices);
  }
  const opened = openProject(name, lookOption);
  if (!opened.ok) return opened;
  const { project: theirs, option, notices } = opened.value;
  const look = lookOfOption(theirs, option);
  if (!look.ok) return { ...look, problem: inFile(name, look.problem) };
  const isHere = JSON.stringify(theirs) === JSON.stringify(project);
  const given = isHere ? ofOption(option, target) : ofOther(theirs, option, name);
  if (!given.ok) return given;
  return success(
    given.value,
    notices.filter(({ text: said }) => !said.includes('setting')),
  );
}

function ofOption(id: string, { project, file, study, setting }: Target): Result<GivenLook> {
  const look = lookOfOption(project, id);
  if (!look.ok) return { ...look, problem: inFile(file, look.problem) };
  const input = judgeTried(project, id, study, setting);
  if (!input.ok) return { ...input, problem: inFile(file, input.problem) };
  const option = optionById(project, id);
  return success({
    look: look.value,
    seen: relationScheme(project, input.value),
    ...(option && { option }),
  });
}

/** Its own kitchen under its first setting: the light does not matter, for relations are those of the samples. */
function ofOther(project: Project, option: string, file: string): Result<GivenLook> {
  const look = lookOfOption(project, option);
  if (!look.ok) return { ...look, problem: inFile(file, look.problem) };
  const found = studyOption(project, option, project.settings[0]!.id);
  if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
  const { study, solved, setting } = found.value;
  const seen: RelationScheme = relationScheme(project, judgeInput(project, study, solved, setting));
  return success({ look: look.value, seen });
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
