import { failure, type Problem, type Result, success } from '../../engine/result';
import { bad, replace, unknown } from '../change-problems';
import { type OrderCommand, optionById } from '../commands';
import type { Option, Project } from '../project';
import { checkAssumptions, checkExtra, checkItem, checkJob, checkSample } from './check-order';
import type { ItemRecord } from './records';

/** The document after a command on what is ordered: the job, its quantities, items, samples. What says nothing leaves its field out. */
export function changeOrder(project: Project, command: OrderCommand): Result<Project> {
  switch (command.kind) {
    case 'set-job': {
      const { job: _, ...rest } = project;
      const job = said(command.job);
      return checked(checkJob(job, 'job'), isNothing(job) ? rest : { ...rest, job });
    }
    case 'set-assumptions': {
      const { quantities: _, ...rest } = project;
      const own = said(command.assumptions);
      return checked(checkAssumptions(own, 'assumptions'), isNothing(own) ? rest : { ...rest, quantities: own });
    }
    case 'set-item':
      return setItem(project, command.option, command.record);
    case 'set-extra':
      return onOption(project, command.option, ({ extras = [], ...rest }) => {
        const extra = said(command.extra);
        const known = extras.find(({ id }) => id === extra.id);
        const next = known ? replace(extras, known, extra) : [...extras, extra];
        return checked(checkExtra(extra, 'extra'), { ...rest, extras: next });
      });
    case 'remove-extra':
      return onOption(project, command.option, ({ extras = [], ...rest }) => {
        const left = extras.filter(({ id }) => id !== command.id);
        if (left.length === extras.length)
          return failure(bad('unknown-extra', 'id', `The schedule has no ${command.id}.`));
        return success(left.length > 0 ? { ...rest, extras: left } : rest);
      });
    case 'set-sample': {
      const { samples = [], ...rest } = project;
      const sample = said(command.sample);
      if (!project.library.some(({ id }) => id === sample.finish))
        return unknown('finish', sample.finish, project.library);
      const known = samples.find(({ finish }) => finish === sample.finish);
      const next = known ? replace(samples, known, sample) : [...samples, sample];
      return checked(checkSample(sample, 'sample'), { ...rest, samples: next });
    }
    case 'remove-sample': {
      const { samples = [], ...rest } = project;
      const left = samples.filter(({ finish }) => finish !== command.finish);
      if (left.length === samples.length)
        return failure(bad('unknown-sample', 'finish', `There is no sample of ${command.finish}.`));
      return success(left.length > 0 ? { ...rest, samples: left } : rest);
    }
  }
}

function setItem(project: Project, option: string, { approved, delivery, ...given }: ItemRecord): Result<Project> {
  return onOption(project, option, ({ items = [], ...rest }) => {
    const record: ItemRecord = {
      ...said(given),
      ...(approved && { approved }),
      // Its day is needed, and refused where it is none.
      ...(delivery && { delivery: { ...said(delivery), on: delivery.on } }),
    };
    const known = items.find(({ item, finish }) => item === record.item && finish === record.finish);
    const saysSomething = Object.keys(record).some((name) => name !== 'item' && name !== 'finish');
    const others = items.filter((one) => one !== known);
    const next = !saysSomething ? others : known ? replace(items, known, record) : [...items, record];
    return checked(checkItem(record, 'record'), next.length > 0 ? { ...rest, items: next } : rest);
  });
}

function onOption(project: Project, id: string, change: (option: Option) => Result<Option>): Result<Project> {
  const option = optionById(project, id);
  if (!option) return unknown('option', id, project.options);
  const after = change(option);
  return after.ok ? success({ ...project, options: replace(project.options, option, after.value) }) : after;
}

/** Without fields that say nothing: undefined, texts of blanks, records without fields; the same data is the same text in a file. */
function said<T extends object>(value: T): T {
  const entries = Object.entries(value).map(([name, one]) => {
    const isRecord = typeof one === 'object' && one !== null && !Array.isArray(one);
    return [name, isRecord ? said(one as object) : one] as const;
  });
  const kept = entries.filter(
    ([name, one]) => one !== undefined && (NEEDED.has(name) || !isBlank(one)) && !isNothing(one),
  );
  return Object.fromEntries(kept) as T;
}

/** What a record cannot do without: a blank one is refused, not left out. */
const NEEDED: ReadonlySet<string> = new Set(['item', 'finish', 'id', 'what']);

const isBlank = (value: unknown): boolean => typeof value === 'string' && value.trim() === '';

const isNothing = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;

function checked<T>([problem, ...more]: readonly Problem[], value: T): Result<T> {
  return problem ? failure(problem, more) : success(value);
}
