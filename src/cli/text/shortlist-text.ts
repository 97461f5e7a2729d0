import type { AcceptedFinish, RejectedFinish, Shortlist, ShortlistGroup } from '../../engine/judge/shortlist/types';
import { surfacesPhrase } from '../../engine/judge/surface-words';
import type { ShortlistReport } from '../../kitchen/study/shortlist-report';
import type { Setting } from '../../model/project';
import { wrapped } from './figures';

const GROUPS: readonly (readonly [ShortlistGroup, string])[] = [
  ['clear', 'Accepted, in rank order:'],
  ['compare', 'May clash, compare samples:'],
  ['part', 'A part of it clashes, look before you choose:'],
];

/** A shortlist in plain text. */
export function shortlistText(
  report: ShortlistReport & { readonly hidden: number },
  settings: readonly Setting[],
): string {
  const { accepted, rejected, why } = report;
  const made = rejected.filter(({ code }) => code !== 'not-made-for-it');
  const notMade = rejected.filter(({ code }) => code === 'not-made-for-it');
  const groups = GROUPS.flatMap(([group, title]) => {
    const rows = accepted.filter((row) => row.group === group);
    return rows.length === 0 ? [] : ['', title, ...rows.flatMap(acceptedLines)];
  });
  return [
    `${report.project}, ${report.option}: finishes for ${surfacesPhrase(report.surfaces).text}`,
    wrapped(report.held_words, '  '),
    ...orderLines(report),
    wrapped(basisWords(accepted, settings), '  '),
    ...(report.hidden > 0 ? [`  ${report.hidden} of other classes are hidden.`] : []),
    ...(accepted.length === 0 ? ['', 'No finish is left.'] : groups),
    ...(made.length > 0 ? ['', 'Rejected:', ...made.flatMap(rejectedLines)] : []),
    ...(notMade.length > 0 ? ['', 'Not made for it:', ...notMadeLines(notMade)] : []),
    ...(why ? ['', `Why ${why.finish}:`, ...whyPart(why.points, report.held_words)] : []),
  ].join('\n');
}

const orderLines = ({ order }: Shortlist): readonly string[] => [
  wrapped(`Order: ${order.map(({ words }) => words).join('; ')}.`, '  '),
];

function basisWords(accepted: readonly AcceptedFinish[], settings: readonly Setting[]): string {
  const count = accepted.filter(({ basis }) => basis === 'installed').length;
  const names = settings.map(({ name }) => `"${name}"`).join(', ');
  return count === 0
    ? 'All were judged as samples.'
    : `All were judged as samples, ${count === accepted.length ? 'and those accepted' : `and the best ${count}`} in place in ${names}.`;
}

function acceptedLines({ rank, finish, label, reasons, basis, is_laid }: AcceptedFinish): readonly string[] {
  const marks = [...(is_laid ? ['on it now'] : []), ...(basis === 'sample' ? ['as a sample only'] : [])];
  return [
    `${String(rank).padStart(4)}  ${finish}  ${label}${marks.length > 0 ? ` (${marks.join('; ')})` : ''}`,
    wrapped(reasons.join(' '), '        '),
  ];
}

const rejectedLines = ({ finish, label, code, reason, is_laid }: RejectedFinish): readonly string[] => [
  `      ${finish}  ${label}${is_laid ? ' (on it now)' : ''}`,
  wrapped(`${reason} [${code}]`, '        '),
];

/** Many for few reasons: by reason. */
function notMadeLines(rows: readonly RejectedFinish[]): readonly string[] {
  const byReason = new Map<string, string[]>();
  for (const { reason, finish } of rows) byReason.set(reason, [...(byReason.get(reason) ?? []), finish]);
  return [...byReason].map(([reason, ids]) => wrapped(`${reason} ${ids.join(', ')}`, '      '));
}

const whyPart = (points: NonNullable<ShortlistReport['why']>['points'], heldWords: string): readonly string[] =>
  points.length === 0 ? [wrapped(`There is nothing to say of it. ${heldWords}`, '    ')] : points.flatMap(whyLines);

const whyLines = ({ text, why }: NonNullable<ShortlistReport['why']>['points'][number]): readonly string[] => [
  wrapped(text, '    '),
  wrapped(why, '        '),
];
