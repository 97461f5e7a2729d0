import type { Problem } from '../../engine/result';
import { checkNumber, checkText, checkUnique } from '../check-number';
import { checkPrice } from '../price';
import { ASSUMPTION_BOUNDS, type QuantityAssumptions } from '../quantity/assumptions';
import { checkDay } from './day';
import { isExtraTag, isItemTag } from './item-tags';
import type { ExtraItem, ItemRecord, Job, SampleRecord } from './records';
import { STAGES } from './stages';

/** Longest lead times there are; more would be a slip of the pen. */
export const LEAD_WEEKS = [0, 104, 'weeks'] as const;
export const WASTE_PERCENT = [0, 100, '%'] as const;
export const SPARE_PACKS = [0, 20, ''] as const;
export const STAGE_DAYS = [0, 365, 'days'] as const;
export const EXTRA_AMOUNT = [0, 1_000_000, ''] as const;

type NumberBounds = readonly [number, number, string];

const maybeNumber = (value: number | undefined, bounds: NumberBounds, path: string): readonly Problem[] =>
  value === undefined ? [] : checkNumber(value, bounds, path);

/** Nobody sells half a pack or rolls half a coat. */
const WHOLE: readonly (keyof typeof ASSUMPTION_BOUNDS)[] = ['wall_coats', 'front_coats', 'spare_packs'];

const maybeWhole = (value: number | undefined, bounds: NumberBounds, path: string): readonly Problem[] => {
  const problems = maybeNumber(value, bounds, path);
  if (value === undefined || problems.length > 0 || Number.isInteger(value)) return problems;
  return [
    {
      code: 'not-whole',
      text: `${path} is ${value}, no whole number.`,
      at: { path },
      remedy: 'Give a whole number.',
    },
  ];
};

/** What is wrong with what is known of a job. */
export const checkJob = (job: Job, path: string): readonly Problem[] => [
  ...checkDay(job.starts_on, `${path}.starts_on`),
  ...maybeNumber(job.margin_days, STAGE_DAYS, `${path}.margin_days`),
  ...STAGES.flatMap((stage) => maybeNumber(job.stage_days?.[stage], STAGE_DAYS, `${path}.stage_days.${stage}`)),
];

/** What is wrong with assumptions of a project. */
export const checkAssumptions = (own: Partial<QuantityAssumptions>, path: string): readonly Problem[] =>
  (Object.keys(ASSUMPTION_BOUNDS) as (keyof typeof ASSUMPTION_BOUNDS)[]).flatMap((name) =>
    WHOLE.includes(name)
      ? maybeWhole(own[name], ASSUMPTION_BOUNDS[name], `${path}.${name}`)
      : maybeNumber(own[name], ASSUMPTION_BOUNDS[name], `${path}.${name}`),
  );

/** What is wrong with the records of an option's items. What they are said of may be gone, so finishes are not looked up. */
export const checkItems = (items: readonly ItemRecord[], path: string): readonly Problem[] => [
  ...checkUnique(
    items.map(({ item, finish }) => `${item} ${finish}`),
    path,
  ),
  ...items.flatMap((record, i) => checkItem(record, `${path}[${i}]`)),
];

export const checkItem = (record: ItemRecord, path: string): readonly Problem[] => [
  ...(isItemTag(record.item) ? [] : [noTag(record.item, `${path}.item`)]),
  ...checkText(record.finish, `${path}.finish`),
  ...maybeNumber(record.waste_percent, WASTE_PERCENT, `${path}.waste_percent`),
  ...maybeWhole(record.spare_packs, SPARE_PACKS, `${path}.spare_packs`),
  ...(record.price ? checkPrice(record.price, `${path}.price`) : []),
  ...maybeNumber(record.lead_time_weeks, LEAD_WEEKS, `${path}.lead_time_weeks`),
  ...checkDay(record.needed_on, `${path}.needed_on`),
  ...checkDay(record.ordered_on, `${path}.ordered_on`),
  ...checkDay(record.delivery?.on, `${path}.delivery.on`),
  ...(record.approved
    ? [...checkText(record.approved.by, `${path}.approved.by`), ...checkDay(record.approved.on, `${path}.approved.on`)]
    : []),
];

/** What is wrong with what an option orders besides. */
export const checkExtras = (extras: readonly ExtraItem[], path: string): readonly Problem[] => [
  ...checkUnique(
    extras.map(({ id }) => id),
    path,
  ),
  ...extras.flatMap((extra, i) => checkExtra(extra, `${path}[${i}]`)),
];

export const checkExtra = (extra: ExtraItem, path: string): readonly Problem[] => [
  ...(isExtraTag(extra.id) ? [] : [noTag(extra.id, `${path}.id`)]),
  ...checkText(extra.what, `${path}.what`),
  ...maybeNumber(extra.quantity, EXTRA_AMOUNT, `${path}.quantity`),
  ...maybeNumber(extra.lead_time_weeks, LEAD_WEEKS, `${path}.lead_time_weeks`),
  ...(extra.price ? checkPrice(extra.price, `${path}.price`) : []),
  ...checkDay(extra.ordered_on, `${path}.ordered_on`),
];

/** What is wrong with the samples of a project. */
export const checkSamples = (samples: readonly SampleRecord[], path: string): readonly Problem[] => [
  ...checkUnique(
    samples.map(({ finish }) => finish),
    path,
  ),
  ...samples.flatMap((sample, i) => checkSample(sample, `${path}[${i}]`)),
];

export const checkSample = (sample: SampleRecord, path: string): readonly Problem[] => [
  ...checkText(sample.finish, `${path}.finish`),
  ...checkDay(sample.on, `${path}.on`),
  ...sample.verdicts.flatMap((verdict, i) => [
    ...checkText(verdict.light, `${path}.verdicts[${i}].light`),
    ...checkText(verdict.by, `${path}.verdicts[${i}].by`),
    ...checkDay(verdict.on, `${path}.verdicts[${i}].on`),
  ]),
];

const noTag = (tag: string, path: string): Problem => ({
  code: 'bad-tag',
  text: `${path} is "${tag}", which is no tag of an item.`,
  at: { path },
  remedy: 'Use the tag the schedule shows, like CT1; things of your own are X1, X2, and so on.',
});
