import { type Result, success } from '../../engine/result';
import { assessOption } from '../../kitchen/study/assess-option';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, openProject } from '../open-project';
import { assessmentText } from '../text/assessment-text';

const OPTIONS = { ...COMMON_OPTIONS, option: { type: 'string' }, setting: { type: 'string' } } as const;

/** `assess PROJECT`: everything the engine has to say of one option under one setting. */
export const assess: Command = {
  name: 'assess',
  usage: 'assess PROJECT [--option ID] [--setting ID] [--json]',
  summary: 'Undertones, pairs, balance and warnings of an option in its room and light.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const { project, option, setting, notices } = opened.value;
    const assessed = assessOption(project, option, setting);
    if (!assessed.ok) return { ...assessed, problem: inFile(file, assessed.problem) };
    return success({ json: assessed.value, text: assessmentText(assessed.value), notices });
  },
};
