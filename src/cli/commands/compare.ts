import { failure, type Problem, type Result, success } from '../../engine/result';
import { compareOptions } from '../../kitchen/carry/compare-options';
import type { Project } from '../../model/project';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, namesIn, openProject } from '../open-project';
import { comparisonText } from '../text/comparison-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  option: { type: 'string', multiple: true },
  setting: { type: 'string' },
} as const;

/** `compare PROJECT --option A --option B`: what changes from one option to another. */
export const compare: Command = {
  name: 'compare',
  usage: 'compare PROJECT --option A --option B [--setting ID] [--json]',
  summary: 'What changes from option A to option B: finishes, colors in their place, and findings gained and lost.',
  hasNotes: true,
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const opened = openProject(file, undefined, values.setting);
    if (!opened.ok) return opened;
    const { project, setting, notices } = opened.value;
    const pair = twoOptions(project, values.option ?? [], file, this.usage);
    if (!pair.ok) return pair;
    const found = compareOptions(project, ...pair.value, setting);
    if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
    const others = notices.filter(({ text }) => !text.startsWith('Taking the first option'));
    return success({
      json: found.value,
      text: comparisonText(found.value, project),
      notices: others,
      names: namesIn(project),
    });
  },
};

function twoOptions(
  project: Project,
  names: readonly string[],
  file: string,
  usage: string,
): Result<readonly [string, string]> {
  const known = project.options.map(({ id }) => id);
  const unknown = names.find((name) => !known.includes(name));
  if (unknown !== undefined) {
    return failure({
      code: 'unknown-option',
      text: `There is no option "${unknown}" in this project.`,
      at: { file, path: 'options' },
      remedy: `Name two of: ${known.join(', ')}.`,
    });
  }
  const [a, b, extra] = names;
  if (a === undefined || b === undefined || extra !== undefined) return failure(wrongCount(names.length, known, usage));
  if (a === b) return failure({ ...wrongCount(2, known, usage), text: `Both options are "${a}".` });
  return success([a, b]);
}

const wrongCount = (count: number, known: readonly string[], usage: string): Problem => ({
  code: 'wrong-arguments',
  text: `--option stands ${count === 0 ? 'nowhere' : count === 1 ? 'once' : `${count} times`}; two options are compared.`,
  remedy: `Usage: upstand ${usage}. Options: ${known.join(', ')}.`,
});
