import type { SettingBalance } from '../../engine/judge/balance-settings';
import { type Result, success } from '../../engine/result';
import { cautionsOf } from '../../kitchen/cautions-of';
import { assessOption } from '../../kitchen/study/assess-option';
import { balanceIn } from '../../kitchen/study/balance-in-setting';
import { studySettings } from '../../kitchen/study/study-settings';
import { withCautions } from '../../model/caution-words';
import { optionById } from '../../model/commands';
import type { Project } from '../../model/project';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, namesIn, openProject } from '../open-project';
import { assessmentText } from '../text/assessment-text';
import { balanceText } from '../text/balance-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  option: { type: 'string' },
  setting: { type: 'string' },
  'all-settings': { type: 'boolean', default: false },
} as const;

/** `assess PROJECT`: everything the engine has to say of one option under one setting. */
export const assess: Command = {
  name: 'assess',
  usage: 'assess PROJECT [--option ID] [--setting ID] [--all-settings] [--json]',
  summary:
    'Undertones, pairs, balance, warnings and cautions of an option in its room and light; with --all-settings also what every setting ' +
    'makes of the balance.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const { project, option, setting, notices } = opened.value;
    const found = assessOption(project, option, setting);
    if (!found.ok) return { ...found, problem: inFile(file, found.problem) };
    const told = withCautions(found.value, cautionsOf(project, optionById(project, option)!, found.value));
    const text = assessmentText(told);
    if (!values['all-settings']) return success({ json: told, text, notices, names: namesIn(project) });
    const balances = balanceInAll(project, option);
    if (!balances.ok) return { ...balances, problem: inFile(file, balances.problem) };
    return success({
      json: { ...told, balance_by_setting: balances.value },
      text: `${text}\n\n${balanceText(balances.value)}`,
      notices,
      names: namesIn(project),
    });
  },
};

function balanceInAll(project: Project, option: string): Result<readonly SettingBalance[]> {
  const studied = studySettings(project, project.settings);
  if (!studied.ok) return studied;
  const balances: SettingBalance[] = [];
  for (const setting of studied.value) {
    const balance = balanceIn(project, option, setting);
    if (!balance.ok) return balance;
    balances.push(balance.value);
  }
  return success(balances);
}
