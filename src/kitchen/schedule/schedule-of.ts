import type { Caution } from '../../model/cautions';
import { optionById } from '../../model/commands';
import type { Day } from '../../model/order/day';

import type { Option, Project, ProjectDocument } from '../../model/project';
import { assumptionsOf } from '../../model/quantity/assumptions';
import { takeOff } from '../takeoff/take-off';
import { extraRow } from './extra-row';
import { scheduleItems } from './items';
import { rowOf } from './row';
import { supersededRows, withRevisions } from './row-revisions';
import { daysOfItems } from './schedule-days';
import type { Schedule, ScheduleRow } from './types';

/**
 * The schedule of an option: what is ordered, how much, when, in the order of installing. `today` tells what is late; without it nothing is
 * called late. Of frozen revisions those that have the option are looked through.
 */
export function scheduleOf(
  project: Project,
  option: Option,
  cautions: readonly Caution[],
  today: Day | null = null,
): Schedule {
  const rows = bareRows(project, option, cautions, today);
  const frozen = (project.revisions ?? []).flatMap(({ id, document }) => {
    const then = optionById({ ...document }, option.id);
    return then ? [{ id, rows: bareRows(document, then, [], null) }] : [];
  });
  return {
    project: project.name,
    option: option.name,
    rows: withRevisions(rows, frozen),
    superseded: supersededRows(rows, frozen),
    problems: project.job?.starts_on === undefined ? [NO_START] : [],
  };
}

const NO_START = {
  code: 'no-start-day',
  text: 'No first day of installing is set: nothing can be said of when to order.',
} as const;

function bareRows(
  project: ProjectDocument,
  option: Option,
  cautions: readonly Caution[],
  today: Day | null,
): readonly Omit<ScheduleRow, 'revision'>[] {
  const { kitchen, library, job = {} } = project;
  const assumptions = assumptionsOf(project.quantities);
  const takeoff = takeOff(kitchen, assumptions);
  const items = scheduleItems(option, library, [...takeoff.keys()]);
  const basis = {
    kitchen,
    measured: { option, library: new Map(library.map((finish) => [finish.id, finish])), takeoff, assumptions },
    calendar: { job, days: daysOfItems(job, items, option), today },
    cautions,
    samples: project.samples ?? [],
  };
  return [...items.map((item) => rowOf(item, basis)), ...(option.extras ?? []).map((extra) => extraRow(extra, basis))];
}
