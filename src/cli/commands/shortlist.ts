import { FINISH_CLASSES, type FinishClass } from '../../engine/finish/types';
import type { Wish } from '../../engine/judge/shortlist/wish';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { SURFACES } from '../../engine/surface';
import { shortlistReport } from '../../kitchen/study/shortlist-report';
import { isSurfaceId } from '../../model/decision-order';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { withLibraryOf } from '../extra-library';
import { inFile, namesIn, openProject } from '../open-project';
import { shortlistText } from '../text/shortlist-text';
import { readWish } from '../wish-option';

const OPTIONS = {
  ...COMMON_OPTIONS,
  surface: { type: 'string' },
  option: { type: 'string' },
  setting: { type: 'string' },
  library: { type: 'string' },
  wish: { type: 'string', multiple: true },
  class: { type: 'string', multiple: true },
  why: { type: 'string' },
} as const;

/** `shortlist PROJECT --surface ID`: every finish of the library for a surface, accepted in rank order or rejected with the reason. */
export const shortlist: Command = {
  name: 'shortlist',
  usage:
    'shortlist PROJECT --surface ID [--option ID] [--setting ID] [--library FILE] [--wish KIND:VALUE ...] [--class CLASS ...] ' +
    '[--why FINISH] [--json]',
  summary:
    'Every finish for a surface against all that is settled: accepted in rank order, or rejected with the reason. The best 40 are also ' +
    'judged in place, in every setting or the one named. --class hides the others, --wish ranks; the first wish counts most.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const surface = values.surface;
    if (surface === undefined) return wrong('--surface is missing.', `Usage: upstand ${this.usage}`);
    if (!isSurfaceId(surface))
      return wrong(`There is no surface "${surface}".`, `Name one of: ${SURFACES.join(', ')}.`);
    const classes = readClasses(values.class ?? []);
    if (!classes.ok) return classes;
    const wishes: Wish[] = [];
    for (const words of values.wish ?? []) {
      const wish = readWish(words);
      if (!wish.ok) return wish;
      wishes.push(wish.value);
    }
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const { option, setting } = opened.value;
    const extended =
      values.library === undefined
        ? success(opened.value.project)
        : withLibraryOf(opened.value.project, values.library);
    if (!extended.ok) return extended;
    const project = extended.value;
    const shown = project.library.filter(
      (finish) => classes.value.length === 0 || classes.value.includes(finish.class),
    );
    const settings = project.settings.filter(({ id }) => values.setting === undefined || id === setting);
    // As on the page: what the project has itself comes first among equals.
    const own = values.library === undefined ? null : new Set(opened.value.project.library.map(({ id }) => id));
    const found = shortlistReport(
      project,
      option,
      surface,
      settings,
      { wishes, library: shown, ...(own && { own }) },
      values.why ?? null,
    );
    if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
    const hidden = project.library.length - shown.length;
    const report = { ...found.value, settings: settings.map(({ id }) => id), hidden };
    const notices = [...opened.value.notices.filter((one) => !isOfSetting(one)), ...(extended.notices ?? [])];
    return success({ json: report, text: shortlistText(report, settings), notices, names: namesIn(project) });
  },
};

/** Every setting is looked at: none was taken for the others. */
const isOfSetting = ({ code, remedy }: Problem): boolean => code === 'first-taken' && remedy.includes('--setting');

function readClasses(given: readonly string[]): Result<readonly FinishClass[]> {
  const classes: FinishClass[] = [];
  for (const words of given) {
    const found = FINISH_CLASSES.find((one) => one === words.toLowerCase());
    if (!found) return wrong(`--class "${words}" is none.`, `Write one of: ${FINISH_CLASSES.join(', ')}.`);
    classes.push(found);
  }
  return success(classes);
}

const wrong = (text: string, remedy: string): Result<never> => failure({ code: 'wrong-arguments', text, remedy });
