import { type Result, success } from '../../engine/result';
import { carryOver as carry } from '../../kitchen/carry/carry-over';
import { findSetting } from '../../kitchen/study/assess-option';
import { studyRoomNow } from '../../kitchen/study/room-study';
import { settingLight } from '../../kitchen/study/setting-light';
import { readTwoArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { openLook } from '../open-look';
import { inFile, namesIn, openProject } from '../open-project';
import { carriedRecord, carriedText } from '../text/carried-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  option: { type: 'string' },
  setting: { type: 'string' },
  'look-option': { type: 'string' },
  'as-is': { type: 'boolean', default: false },
} as const;

/** `carry-over LOOK PROJECT`: what becomes of a copied look over what stays in a kitchen, and what would mend it. */
export const carryOver: Command = {
  name: 'carry-over',
  usage: 'carry-over LOOK PROJECT [--option ID] [--setting ID] [--look-option ID] [--as-is] [--json]',
  summary:
    'Which relations of a copied look hold in an option, which break and by how much, and the changes that mend most. ' +
    'LOOK: a look file, a project file, or the id of a look or option of PROJECT. --as-is judges the option as it stands.',
  hasNotes: true,
  run(args): Result<Report> {
    const given = readTwoArguments(args, OPTIONS, ['The look', 'The project file'], this.usage);
    if (!given.ok) return given;
    const { first: name, second: file, values } = given.value;
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const { project, option, setting: id, notices } = opened.value;
    const look = openLook(name, values['look-option'], project, file);
    if (!look.ok) return look;
    const setting = findSetting(project, id);
    if (!setting.ok) return { ...setting, problem: inFile(file, setting.problem) };
    const light = settingLight(project, setting.value);
    if (!light.ok) return { ...light, problem: inFile(file, light.problem) };
    const study = studyRoomNow(project, light.value.daylight);
    const seen = look.value.inKitchen(study, light.value);
    if (!seen.ok) return seen;
    const carried = carry(seen.value, project, option, study, light.value, { asIs: values['as-is'] });
    if (!carried.ok) return { ...carried, problem: inFile(file, carried.problem) };
    return success({
      json: carriedRecord(carried.value),
      text: carriedText(carried.value),
      notices: [...notices, ...(look.notices ?? [])],
      names: namesIn(project),
    });
  },
};
