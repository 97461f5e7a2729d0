import { failure, type Result, success } from '../../engine/result';
import { tableCsv } from '../../io/table-csv';
import { cautionsOf } from '../../kitchen/cautions-of';
import { scheduleOf } from '../../kitchen/schedule/schedule-of';
import { SCHEDULE_COLUMNS, scheduleTable } from '../../kitchen/schedule/schedule-table';
import type { Schedule } from '../../kitchen/schedule/types';
import { optionById } from '../../model/commands';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { namesIn, openProject } from '../open-project';
import { packText, scheduleText } from '../text/schedule-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  option: { type: 'string' },
  csv: { type: 'boolean', default: false },
} as const;

/** `schedule PROJECT`: the finish schedule of an option, with quantities and dates. */
export const schedule: Command = {
  name: 'schedule',
  usage: 'schedule PROJECT [--option ID] [--csv | --json]',
  summary:
    'The finish schedule of an option: what to order, how much, by when, and what is still to settle; --csv as a table.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    if (values.csv && values.json) {
      return failure({
        code: 'wrong-arguments',
        text: '--csv and --json stand together; one form is printed.',
        remedy: `Usage: upstand ${this.usage}.`,
      });
    }
    const opened = openProject(file, values.option, undefined);
    if (!opened.ok) return opened;
    const { project, option: id, notices } = opened.value;
    const option = optionById(project, id)!;
    const made = scheduleOf(project, option, cautionsOf(project, option, null));
    const said = notices.filter(({ text }) => !text.startsWith('Taking the first setting'));
    const text = values.csv ? printedTable(made) : scheduleText(made);
    return success({
      json: made,
      text,
      notices: said,
      names: [...namesIn(project), ...packNames(made)],
      isTable: values.csv,
    });
  },
};

/** On a screen or in a pipe lines end as they do there. */
const printedTable = (made: Schedule): string =>
  tableCsv(SCHEDULE_COLUMNS, scheduleTable(made)).replaceAll('\r\n', '\n').trimEnd();

/** How packs are called stays: nobody sells a box of 10.8 sq ft because inches are asked for. */
const packNames = ({ rows }: Schedule): readonly string[] =>
  rows.flatMap(({ quantity }) => (quantity?.order.pack ? [packText(quantity.order.pack)] : []));
