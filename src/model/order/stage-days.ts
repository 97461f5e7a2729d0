import { addDays, type Day } from './day';
import type { Job } from './records';
import { STAGES, type Stage } from './stages';

/** Days a stage takes until the next can begin; of a template: until the counter comes, where no lead time is known. Our own planning values. */
export const USUAL_STAGE_DAYS: { readonly [S in Stage]: number } = {
  floor: 4,
  cabinets: 4,
  template: 14,
  counter: 1,
  backsplash: 3,
  fittings: 1,
  paint: 3,
};

/** Between the day a delivery is due and the day it is needed. */
export const USUAL_MARGIN_DAYS = 7;

const DAYS_PER_WEEK = 7;

/**
 * The first day of each stage; null where no first day of the job is known. `counterWeeks`: the counter's lead time, which runs from its
 * template. A stage in which nothing is put in (`idle`) takes no day unless one says so.
 */
export function stageDays(
  job: Job,
  counterWeeks: number | undefined,
  idle: ReadonlySet<Stage> = new Set(),
): { readonly [S in Stage]: Day } | null {
  if (job.starts_on === undefined) return null;
  let day = job.starts_on;
  const begins: Partial<Record<Stage, Day>> = {};
  for (const stage of STAGES) {
    begins[stage] = day;
    const usual = job.stage_days?.[stage] ?? (idle.has(stage) ? 0 : USUAL_STAGE_DAYS[stage]);
    const makes = stage === 'template' && counterWeeks !== undefined && job.stage_days?.template === undefined;
    day = addDays(day, makes ? Math.ceil(counterWeeks * DAYS_PER_WEEK) : usual);
  }
  return begins as { readonly [S in Stage]: Day };
}

/**
 * The day by which to order what is needed on a day. What is made to a template is ordered, its slabs reserved, by the template: its lead time
 * runs from there. Null where a lead time or a day is not known.
 */
export function orderBy(
  stage: Stage,
  isMadeToTemplate: boolean,
  days: { readonly [S in Stage]: Day } | null,
  weeks: number | undefined,
  job: Job,
  needed?: Day,
): Day | null {
  const margin = job.margin_days ?? USUAL_MARGIN_DAYS;
  if (isMadeToTemplate && needed === undefined) return days && addDays(days.template, -margin);
  const on = needed ?? days?.[stage];
  return on === undefined || weeks === undefined ? null : addDays(on, -Math.ceil(weeks * DAYS_PER_WEEK) - margin);
}
