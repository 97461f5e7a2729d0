import type { Problem } from '../engine/result';
import { checkText } from './check-number';
import type { LogEntry } from './log';
import type { Revision } from './project';

/** What is wrong with a line of the log. What it is about may be gone, so its ids are not looked up. */
export const checkLogEntry = (entry: LogEntry, path: string): readonly Problem[] => [
  ...checkMoment(entry.at, `${path}.at`),
  ...checkText(entry.text, `${path}.text`),
];

/** What is wrong with a revision but for its document. */
export const checkRevision = ({ id, name, at }: Omit<Revision, 'document'>, path: string): readonly Problem[] => [
  ...(REVISION_ID.test(id) ? [] : [noRevisionId(id, `${path}.id`)]),
  ...checkText(name, `${path}.name`),
  ...checkMoment(at, `${path}.at`),
];

const REVISION_ID = /^R[1-9]\d{0,5}$/;

const noRevisionId = (id: string, path: string): Problem => ({
  code: 'bad-revision-id',
  text: `${path} is "${id}", not R and a number.`,
  at: { path },
  remedy: 'Number revisions R1, R2, and so on.',
});

/** ISO 8601, extended format with offset; seconds and their fraction may be left out. */
const MOMENT = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d{1,9})?)?(?:Z|[+-](\d\d):(\d\d))$/;

/** Of a leap year. */
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function checkMoment(text: string, path: string): readonly Problem[] {
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0, offsetHour = 0, offsetMinute = 0] = (
    MOMENT.exec(text) ?? []
  )
    .slice(1)
    .map((part) => Number(part ?? 0));
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 && !isLeap ? 28 : (DAYS[month - 1] ?? 0);
  const isMoment =
    day >= 1 && day <= days && hour < 24 && minute < 60 && second < 60 && offsetHour < 24 && offsetMinute < 60;
  if (isMoment) return [];
  return [
    {
      code: 'no-such-time',
      text: `${path} is "${text}", which is no date and time.`,
      at: { path },
      remedy: 'Write it like 2026-05-04T16:30:00Z.',
    },
  ];
}
