import { type Result, success } from '../../engine/result';
import { lightReport } from '../../kitchen/study/light-report';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, openProject } from '../open-project';
import { lightText } from '../text/light-text';

const OPTIONS = { ...COMMON_OPTIONS, option: { type: 'string' }, setting: { type: 'string' } } as const;

/** `light PROJECT`: how much light falls on every surface, what color it has there and where that comes from. */
export const light: Command = {
  name: 'light',
  usage: 'light PROJECT [--option ID] [--setting ID] [--json]',
  summary: 'Illuminance on every surface, the tint of the place and where it comes from.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const { project, option, setting, notices } = opened.value;
    const report = lightReport(project, option, setting);
    if (!report.ok) return { ...report, problem: inFile(file, report.problem) };
    return success({ json: report.value, text: lightText(report.value), notices });
  },
};
