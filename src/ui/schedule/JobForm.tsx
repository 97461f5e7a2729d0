import type { Schedule } from '../../kitchen/schedule/types';
import { STAGE_DAYS } from '../../model/order/check-order';
import type { Job } from '../../model/order/records';
import { USUAL_MARGIN_DAYS, USUAL_STAGE_DAYS } from '../../model/order/stage-days';
import { STAGES, type Stage } from '../../model/order/stages';
import { NumberField } from '../room/NumberField';
import { leadTime } from '../words/lead-time';
import { JOB, SCHEDULE } from '../words/schedule';
import { dayText } from './day-text';
import type { ScheduleDoors } from './schedule-props';
import { TextField } from './TextField';
import { within } from './within';

const DAYS_PER_WEEK = 7;
const MS_PER_DAY = 86_400_000;

/** How long a stage takes as things stand: until the next begins; where that is not known as long as usual, or no day where nothing is done. */
function daysOf(stage: Stage, { days, schedule }: ScheduleDoors): number {
  const next = STAGES[STAGES.indexOf(stage) + 1];
  if (!days || !next) return idleWords(stage, schedule) === null ? USUAL_STAGE_DAYS[stage] : 0;
  return Math.round((Date.parse(days[next]) - Date.parse(days[stage])) / MS_PER_DAY);
}

/** Why a stage takes no day by itself; null where something is put in. */
function idleWords(stage: Stage, { rows }: Schedule): string | null {
  const own =
    stage === 'template' ? rows.filter(({ kind }) => kind === 'slab') : rows.filter((row) => row.stage === stage);
  if (own.some(({ state }) => state !== 'fixed')) return null;
  return own.length > 0 ? JOB.stays : JOB.nothingIn;
}

/** The longest lead time of what is cut to the template, where the counter comes by it; null where something else says when. */
function templateWeeks(doors: ScheduleDoors): number | null {
  const { days, job, schedule } = doors;
  const weeks = schedule.rows.flatMap(({ kind, state, lead_time_weeks }) =>
    kind === 'slab' && state !== 'fixed' ? (lead_time_weeks ?? []) : [],
  );
  if (!days || job.stage_days?.template !== undefined || weeks.length === 0) return null;
  const longest = Math.max(...weeks);
  return daysOf('template', doors) === Math.ceil(longest * DAYS_PER_WEEK) ? longest : null;
}

/** Whom the work is for, and when what is put in. */
export function JobForm(doors: ScheduleDoors) {
  const { job, days, schedule, onJob } = doors;
  const weeks = templateWeeks(doors);
  const change = (changes: { readonly [K in keyof Job]?: Job[K] | undefined }, continues = false) =>
    onJob({ ...job, ...changes } as Job, continues);
  const text = (name: 'prepared_for' | 'prepared_by' | 'place', label: string) => (
    <TextField label={label} value={job[name] ?? ''} onText={(value, on) => change({ [name]: value }, on)} />
  );
  const numberOf = (take: (value: number | undefined) => void) => ({
    onValue: (value: number) => within(value, [STAGE_DAYS[0], STAGE_DAYS[1], JOB.days], () => take(Math.round(value))),
    onEmpty: () => {
      take(undefined);
      return [];
    },
  });
  return (
    <div className="job">
      <section>
        <h3>{JOB.who}</h3>
        <div className="item-fields job-names">
          {text('prepared_for', JOB.preparedFor)}
          {text('prepared_by', JOB.preparedBy)}
          {text('place', JOB.place)}
        </div>
        <TextField
          label={JOB.brief}
          lines={3}
          value={job.brief ?? ''}
          onText={(brief, continues) => change({ brief }, continues)}
        />
        <p className="small quiet">{JOB.kept}</p>
      </section>
      <section>
        <h3>{JOB.dates}</h3>
        <p className="small">{JOB.order}</p>
        <div className="item-fields">
          <TextField
            label={JOB.startsOn}
            type="date"
            value={job.starts_on ?? ''}
            onText={(starts_on, continues) => change({ starts_on }, continues)}
          />
          <NumberField
            label={JOB.margin}
            unit={JOB.days}
            value={job.margin_days ?? null}
            hint={String(USUAL_MARGIN_DAYS)}
            {...numberOf((margin_days) => change({ margin_days }))}
          />
        </div>
        {!days && <p className="small">{JOB.noStart}</p>}
        <h4>{JOB.stageDays}</h4>
        <ul className="job-stages">
          {STAGES.map((stage) => (
            <li key={stage}>
              <NumberField
                label={SCHEDULE.stages[stage]}
                unit={JOB.days}
                value={job.stage_days?.[stage] ?? null}
                hint={String(daysOf(stage, doors))}
                {...numberOf((value) => change({ stage_days: { ...job.stage_days, [stage]: value } as never }))}
              />
              {idleWords(stage, schedule) !== null && job.stage_days?.[stage] === undefined ? (
                <p className="small quiet">{idleWords(stage, schedule)}</p>
              ) : (
                days && (
                  <p className="small quiet">
                    {JOB.begins} {dayText(days[stage])}
                  </p>
                )
              )}
            </li>
          ))}
        </ul>
        {weeks !== null && <p className="small quiet">{JOB.templateFrom(leadTime(weeks))}</p>}
      </section>
    </div>
  );
}
