import type { Caution } from '../../model/cautions';
import type { Day } from '../../model/order/day';
import { STAGES } from '../../model/order/stages';
import type { Option, Project, ProjectDocument } from '../../model/project';
import { assumptionsOf } from '../../model/quantity/assumptions';
import { takeOff } from '../takeoff/take-off';
import { extraRow } from './extra-row';
import { scheduleItems } from './items';
import { rowOf } from './row';
import { supersededRows, withRevisions } from './row-revisions';
import type { BareRow } from './row-spec';
import { daysOfItems } from './schedule-days';
import type { Schedule } from './types';

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
  const { rows, days } = rowsOf(project, option, cautions, today);
  const frozen = (project.revisions ?? []).flatMap(({ id, document }) => {
    const then = frozenRows(document, option.id);
    return then ? [{ id, rows: then }] : [];
  });
  return {
    project: project.name,
    option: option.name,
    rows: withRevisions(rows, frozen),
    superseded: supersededRows(rows, frozen, option.items),
    days,
    problems: days === null ? [NO_START] : [],
  };
}

const frozenBefore = new WeakMap<ProjectDocument, Map<string, readonly BareRow[] | null>>();

/** The rows of an option in a frozen document; null where it has no such option. Frozen documents never change, so they are remembered. */
function frozenRows(document: ProjectDocument, id: string): readonly BareRow[] | null {
  const known = frozenBefore.get(document) ?? new Map<string, readonly BareRow[] | null>();
  frozenBefore.set(document, known);
  const before = known.get(id);
  if (before !== undefined) return before;
  const option = document.options.find((one) => one.id === id);
  const rows = option ? rowsOf(document, option, [], null).rows : null;
  known.set(id, rows);
  return rows;
}

const NO_START = {
  code: 'no-start-day',
  text: 'No first day of installing is set: nothing can be said of when to order.',
} as const;

function rowsOf(
  project: ProjectDocument,
  option: Option,
  cautions: readonly Caution[],
  today: Day | null,
): { readonly rows: readonly BareRow[]; readonly days: Schedule['days'] } {
  const { kitchen, library, job = {} } = project;
  const assumptions = assumptionsOf(project.quantities);
  const takeoff = takeOff(kitchen, assumptions);
  const items = scheduleItems(option, library, [...takeoff.keys()]);
  const days = daysOfItems(job, items, option);
  const basis = {
    kitchen,
    measured: { option, library: new Map(library.map((finish) => [finish.id, finish])), takeoff, assumptions },
    calendar: { job, days, today, isTemplated: items.some(({ kind, state }) => kind === 'slab' && state !== 'fixed') },
    cautions,
    samples: project.samples ?? [],
  };
  const made = items.map((item) => rowOf(item, basis));
  const extras = (option.extras ?? []).map((extra) => extraRow(extra, basis));
  return { rows: inStages([...made, ...extras]), days };
}

/** In the order of installing; what no surface shows stands behind the items it is put in with. */
const inStages = (rows: readonly BareRow[]): readonly BareRow[] =>
  [...rows].sort((a, b) => STAGES.indexOf(a.stage) - STAGES.indexOf(b.stage));
