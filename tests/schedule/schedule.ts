import { scheduleOf } from '../../src/kitchen/schedule/schedule-of';
import type { Schedule, ScheduleRow } from '../../src/kitchen/schedule/types';
import { applyCommand } from '../../src/model/apply-command';
import type { Command } from '../../src/model/commands';
import type { Finish, Project } from '../../src/model/project';
import { demoProject } from '../io/demo';

export const OPTION = 'our-floor';

/** The demo after commands. */
export const demoAfter = (...commands: readonly Command[]): Project => applied(demoProject(), ...commands);

const applied = (project: Project, ...commands: readonly Command[]): Project =>
  commands.reduce((before, command) => {
    const result = applyCommand(before, command);
    if (!result.ok) throw new Error(result.problem.text);
    return result.value;
  }, project);

export const scheduled = (project: Project, today: string | null = null): Schedule =>
  scheduleOf(project, project.options.find(({ id }) => id === OPTION)!, [], today);

export function rowIn({ rows }: Schedule, id: string): ScheduleRow {
  const row = rows.find((one) => one.id === id);
  if (!row) throw new Error(`no row ${id} among ${rows.map((one) => one.id).join(', ')}`);
  return row;
}

export const finishOf = (project: Project, id: string): Finish => project.library.find((one) => one.id === id)!;

export const codes = ({ problems }: ScheduleRow): readonly string[] => problems.map(({ code }) => code);
