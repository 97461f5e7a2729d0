import { differenceCiede2000 } from '../../engine/color/difference';
import { averageComponent } from '../../engine/finish/average';
import type { AssessedSurface, Assessment, Warning } from '../../engine/judge/assessment';
import { holdsIn } from '../../engine/judge/holds';
import { judge } from '../../engine/judge/judge';
import { type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import { optionById } from '../../model/commands';
import { isEmpty } from '../../model/empty-surface';
import { GROUPS, type Placement, type Project } from '../../model/project';
import { findSetting } from '../study/assess-option';
import { layFinish } from '../study/lay-finish';
import { judgeInput } from '../study/readings';
import { type RoomStudy, studyRoomNow } from '../study/room-study';
import { layScheme, libraryOf } from '../study/scheme';
import { type SettingLight, settingLight } from '../study/setting-light';
import { beginScheme, solveSchemeGroup } from '../study/solved-scheme';
import { tintsOf } from '../study/tints';
import { gainedWarnings, lostWarnings } from './new-warnings';

/** A surface that has another finish, or another laying of the same. */
interface ChangedSurface {
  readonly surface: SurfaceId;
  readonly from: string;
  readonly to: string;
  /** Of the area means as samples. */
  readonly shift_de00: number;
}

/** A surface that kept its finish and reads another color in its place all the same. */
interface MovedSurface {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly from_name: string;
  readonly to_name: string;
  readonly shift_de00: number;
}

export interface OptionComparison {
  readonly project: string;
  readonly a: string;
  readonly b: string;
  readonly setting: string;
  readonly changed: readonly ChangedSurface[];
  readonly moved: readonly MovedSurface[];
  readonly gained: readonly Warning[];
  readonly lost: readonly Warning[];
}

/** Less than most people let pass as the same (Paravina et al. 2015) is not told. */
const TOLD_FROM_DE00 = 1.8;

/** What changes from option `a` to option `b` under one setting: finishes, colors in place, findings. */
export function compareOptions(project: Project, a: string, b: string, settingId: string): Result<OptionComparison> {
  const setting = findSetting(project, settingId);
  if (!setting.ok) return setting;
  const light = settingLight(project, setting.value);
  if (!light.ok) return light;
  const study = studyRoomNow(project, light.value.daylight);
  const before = assessed(project, a, study, light.value);
  if (!before.ok) return before;
  const after = assessed(project, b, study, light.value);
  if (!after.ok) return after;
  return success({
    project: project.id,
    a,
    b,
    setting: settingId,
    changed: changedSurfaces(project, a, b, before.value),
    moved: movedSurfaces(before.value, after.value),
    gained: gainedWarnings(before.value.warnings, after.value.warnings),
    lost: lostWarnings(before.value.warnings, after.value.warnings),
  });
}

function assessed(project: Project, option: string, study: RoomStudy, setting: SettingLight): Result<Assessment> {
  const scheme = layScheme(project, option, study.room.surfaces);
  if (!scheme.ok) return scheme;
  const solved = beginScheme(scheme.value, GROUPS.length);
  GROUPS.forEach((_, group) => {
    if (setting.levels[group]! > 0) solveSchemeGroup(study, solved, group);
  });
  const input = judgeInput(project, study, solved, setting, tintsOf(study, solved, setting));
  return success(holdsIn(input, judge(input)));
}

/** Of the surfaces that the kitchen has and both options have a finish for. */
function changedSurfaces(project: Project, a: string, b: string, { surfaces }: Assessment): readonly ChangedSurface[] {
  const library = libraryOf(project);
  const lab = (placement: Placement) => {
    const laid = layFinish(library, placement);
    return laid.ok ? averageComponent(laid.value.components).labD65 : null;
  };
  return surfaces.flatMap(({ surface }) => {
    const from = optionById(project, a)!.scheme[surface];
    const to = optionById(project, b)!.scheme[surface];
    if (isEmpty(from) || isEmpty(to)) return [];
    if (from.finish === to.finish && JSON.stringify(from.laying) === JSON.stringify(to.laying)) return [];
    const [one, other] = [lab(from), lab(to)];
    const shift_de00 = one && other ? differenceCiede2000(one, other) : 0;
    return [{ surface, from: from.finish, to: to.finish, shift_de00 }];
  });
}

function movedSurfaces(before: Assessment, after: Assessment): readonly MovedSurface[] {
  return before.surfaces.flatMap((was) => {
    const is = after.surfaces.find(({ surface }) => surface === was.surface);
    if (!is || is.finish !== was.finish) return [];
    const [from, to] = [mainPlace(was), mainPlace(is)];
    if (!from || !to) return [];
    const shift_de00 = differenceCiede2000(labOf(from.lab_d65), labOf(to.lab_d65));
    if (shift_de00 < TOLD_FROM_DE00) return [];
    return [{ surface: was.surface, finish: was.finish, from_name: from.name, to_name: to.name, shift_de00 }];
  });
}

/** The place of a surface that is seen most. */
const mainPlace = ({ installed }: AssessedSurface) =>
  installed.reduce<AssessedSurface['installed'][number] | null>(
    (most, one) => (most === null || one.view_share > most.view_share ? one : most),
    null,
  );

const labOf = ([l, a, b]: readonly [number, number, number]) => ({ l, a, b });
