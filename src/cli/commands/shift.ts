import { failure, type Result, success } from '../../engine/result';
import { shiftReport } from '../../kitchen/study/shift-report';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, namesIn, openProject } from '../open-project';
import { shiftText } from '../text/shift-text';

const OPTIONS = { ...COMMON_OPTIONS, finish: { type: 'string' }, beside: { type: 'string' } } as const;

/** `shift PROJECT --finish ID`: what each light of a project makes of a finish, alone or beside another. */
export const shift: Command = {
  name: 'shift',
  usage: 'shift PROJECT --finish ID [--beside ID] [--json]',
  summary: 'How a finish changes under each setting and under standard lights, and whether two stay matched.',
  hasNotes: true,
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    if (values.finish === undefined) {
      return failure({
        code: 'wrong-arguments',
        text: '--finish is missing.',
        remedy: `Usage: upstand ${this.usage}`,
      });
    }
    const opened = openProject(file);
    if (!opened.ok) return opened;
    const { project, notices } = opened.value;
    const report = shiftReport(project, values.finish, values.beside ?? null);
    if (!report.ok) return { ...report, problem: inFile(file, report.problem) };
    // Every option shares the room, and every setting is looked at.
    const others = notices.filter(({ code }) => code !== 'first-taken');
    return success({ json: report.value, text: shiftText(report.value), notices: others, names: namesIn(project) });
  },
};
