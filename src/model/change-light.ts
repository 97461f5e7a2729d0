import { failure, type Problem, type Result, success } from '../engine/result';
import { bad, replace, unknown } from './change-problems';
import { checkBeam } from './check-beam';
import { checkDaylight } from './check-daylight';
import { checkKitchen } from './check-kitchen';
import { checkLamp } from './check-lamp';
import { checkText } from './check-number';
import { checkFixtureBeams, checkGroup } from './check-project';
import { checkYear } from './check-year';
import type { Command, SetGroup } from './commands';
import type { Kitchen } from './kitchen';
import { type GroupSetting, LAMP_GROUPS, type Project, type Setting, USERS, type UserNeed } from './project';

type LightCommand = Extract<
  Command,
  {
    readonly kind:
      | 'add-lamp'
      | 'add-beam'
      | 'set-group'
      | 'set-daylight'
      | 'copy-setting'
      | 'remove-setting'
      | 'set-site'
      | 'set-openings'
      | 'set-fixtures'
      | 'set-kitchen'
      | 'set-users'
      | 'set-year';
  }
>;

/** The document after a command about the room: the kitchen, who uses it, its lamps, settings, openings, place. */
export function changeLight(project: Project, command: LightCommand): Result<Project> {
  switch (command.kind) {
    case 'add-lamp': {
      const { lamp } = command;
      const before = project.lamps ?? [];
      if (before.some((one) => one.id === lamp.id)) return taken('lamp', lamp.id);
      return checked(checkLamp(lamp, 'lamp'), { ...project, lamps: [...before, lamp] });
    }
    case 'add-beam': {
      const { beam } = command;
      const before = project.beams ?? [];
      if (before.some((one) => one.id === beam.id)) return taken('beam', beam.id);
      return checked(checkBeam(beam, 'beam'), { ...project, beams: [...before, beam] });
    }
    case 'set-group':
      return setGroup(project, command);
    case 'set-daylight': {
      const { setting, daylight } = command;
      const problems = daylight ? checkDaylight(daylight, 'daylight', project) : [];
      return onSetting(project, setting, (one) => checked(problems, { ...one, daylight }));
    }
    case 'copy-setting':
      return copySetting(project, command.setting, command.id, command.name);
    case 'remove-setting': {
      const setting = project.settings.find(({ id }) => id === command.setting);
      if (!setting) return unknown('setting', command.setting, project.settings);
      if (project.settings.length === 1)
        return failure(bad('last-setting', 'setting', 'A project keeps at least one setting.'));
      return success({ ...project, settings: project.settings.filter((one) => one !== setting) });
    }
    case 'set-site':
      return changeKitchen(project, { site: command.site });
    case 'set-openings':
      return changeKitchen(project, { openings: command.openings });
    case 'set-fixtures':
      return changeKitchen(project, { fixtures: command.fixtures });
    case 'set-kitchen':
      return changeKitchen(project, command.kitchen);
    case 'set-users':
      return setUsers(project, command.users);
    case 'set-year':
      return setYear(project, command.year_built);
  }
}

function changeKitchen(project: Project, change: Partial<Kitchen>): Result<Project> {
  const kitchen = { ...project.kitchen, ...change };
  const next = { ...project, kitchen };
  return checked([...checkKitchen(kitchen, 'kitchen'), ...checkFixtureBeams(next, 'kitchen')], next);
}

/** Each need once, in the order of `USERS`; none leaves the field out. */
function setUsers(project: Project, users: readonly UserNeed[]): Result<Project> {
  const stranger = users.find((user) => !USERS.includes(user));
  if (stranger !== undefined) return failure(bad('unknown-user', 'users', `There is no need "${stranger}" of users.`));
  const { users: _, ...rest } = project;
  const kept = USERS.filter((user) => users.includes(user));
  return success(kept.length > 0 ? { ...rest, users: kept } : rest);
}

/** What is not known leaves the field out. */
function setYear(project: Project, year: number | null): Result<Project> {
  const { year_built: _, ...rest } = project;
  return year === null ? success(rest) : checked(checkYear(year, 'year_built'), { ...rest, year_built: year });
}

function setGroup(project: Project, command: SetGroup): Result<Project> {
  const { group } = command;
  if (!LAMP_GROUPS.includes(group)) {
    return failure(bad('unknown-group', 'group', `There is no group of lamps "${group}".`));
  }
  return onSetting(project, command.setting, (setting) => {
    const { level, light, dims } = setting.lamps[group];
    const isWarm = (command.dims ?? dims) === 'warm';
    const after: GroupSetting = {
      level: command.level ?? level,
      light: command.light ?? light,
      ...(isWarm ? { dims: 'warm' } : {}),
    };
    return checked(checkGroup(project, after, `lamps.${group}`), {
      ...setting,
      lamps: { ...setting.lamps, [group]: after },
    });
  });
}

function onSetting(project: Project, id: string, change: (setting: Setting) => Result<Setting>): Result<Project> {
  const setting = project.settings.find((one) => one.id === id);
  if (!setting) return unknown('setting', id, project.settings);
  const changed = change(setting);
  if (!changed.ok) return changed;
  return success({ ...project, settings: replace(project.settings, setting, changed.value) });
}

/** A copy stands behind the one it was made from. */
function copySetting(project: Project, from: string, id: string, name: string): Result<Project> {
  const at = project.settings.findIndex((one) => one.id === from);
  const setting = project.settings[at];
  if (!setting) return unknown('setting', from, project.settings);
  if (project.settings.some((one) => one.id === id)) return taken('setting', id);
  const settings = [...project.settings];
  settings.splice(at + 1, 0, { ...setting, id, name });
  return checked([...checkText(id, 'id'), ...checkText(name, 'name')], { ...project, settings });
}

const taken = (what: string, id: string): Result<never> =>
  failure(bad('duplicate-id', `${what}.id`, `The project has a ${what} "${id}" already.`));

function checked<T>([problem, ...more]: readonly Problem[], value: T): Result<T> {
  return problem ? failure(problem, more) : success(value);
}
