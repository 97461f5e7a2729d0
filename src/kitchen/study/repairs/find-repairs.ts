import type { Assessment, FindingRef, Repair, Unrepaired, Warning } from '../../../engine/judge/assessment';
import { isRepairable } from '../../../engine/judge/repairs/repairable';
import type { JudgedOption, OtherSetting } from './judged-option';
import { bySize, type LibraryChange } from './library-changes';
import { repairRecord, unrepairedRecord } from './repair-record';
import { type Offer, RepairSearch } from './search';

/**
 * The assessment, done: for every warning that a finish may clear the smallest changes of the library that do. Yields every few
 * milliseconds. Every change is screened as samples; what passes is run as installed, smallest first, and in every other setting,
 * before it is offered. What is open comes first, and what clears a warning from everywhere before what leaves some of it; something
 * decided is changed only where nothing open will do.
 */
export function* findRepairs(from: JudgedOption, others: readonly OtherSetting[]): Generator<null, Assessment> {
  const { held, setting } = from;
  const repairs: Repair[] = [];
  const unrepaired: Unrepaired[] = [];
  const wanted = held.warnings.filter(isRepairable);
  if (wanted.length > 0) {
    const search = new RepairSearch(from, others);
    yield* search.screen(wanted);
    const offers = new Map<LibraryChange, Offer>();
    for (const warning of wanted) {
      for (const offer of yield* search.offersFor(warning)) {
        const known = offers.get(offer.change);
        if (!known || known.grade > offer.grade) offers.set(offer.change, offer);
      }
    }
    const settings = [setting.id, ...others.map((other) => other.setting.id)];
    repairs.push(...[...offers.values()].sort(inOrder).map((offer) => repairRecord(offer, from, settings)));
    // What is offered for one warning may clear another on the way.
    const isHelped = (warning: Warning) =>
      repairs.some(({ cleared, softened }) => [...cleared, ...softened].some((ref) => isOf(ref, warning)));
    for (const warning of wanted) {
      if (isHelped(warning)) continue;
      unrepaired.push(unrepairedRecord(warning, search.nearestTo(warning), search.isSettled(warning)));
    }
  }
  return { ...held, repairs, unrepaired, status: 'done' };
}

const inOrder = (one: Offer, other: Offer): number =>
  Number(one.change.isDecided) - Number(other.change.isDecided) ||
  one.grade - other.grade ||
  bySize(one.change, other.change);

const isOf = (ref: FindingRef, { code, surfaces }: Warning): boolean =>
  ref.code === code && String(ref.surfaces) === String(surfaces);
