import { ChevronDown, ChevronRight } from 'lucide-react';
import { useId } from 'react';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import { Swatch } from '../swatch/Swatch';
import { labelWithoutCode } from '../words/finishes';
import { capital } from '../words/numbers';
import { SAMPLES, SCHEDULE, STATE_SHORT } from '../words/schedule';
import { dayText } from './day-text';
import { ExtraFields } from './ExtraForm';
import { ItemDetails } from './ItemDetails';
import { boughtText, netText } from './quantity-text';
import { elementText, locationText } from './row-words';
import type { ScheduleDoors } from './schedule-props';

interface ItemRowProps {
  readonly row: ScheduleRow;
  readonly doors: ScheduleDoors;
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}

/** One item: what, how much, by when, how far; the rest when it is opened. */
export function ItemRow({ row, doors, isOpen, onOpen }: ItemRowProps) {
  const id = useId();
  const paint = doors.paintOf(row);
  // That no price is known is said in the details, and summed up over the list.
  const settles = row.problems.filter(({ code }) => code !== 'no-price').length;
  const Sign = isOpen ? ChevronDown : ChevronRight;
  return (
    <li className={`item ${isOpen ? 'is-open' : ''}`}>
      <button
        type="button"
        className="item-line"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => onOpen(!isOpen)}
      >
        <Sign className="icon" aria-hidden="true" />
        <b className="tag">{row.id}</b>
        <span className="item-swatch">{paint && <Swatch paint={paint} width={44} height={32} />}</span>
        <span className="item-what">
          <b>{elementText(row)}</b>
          <span className="small">{whatText(row)}</span>
        </span>
        <span className="item-quantity">
          <b>{boughtText(row)}</b>
          <span className="small quiet">
            {row.quantity ? `${SCHEDULE.net} ${netText(row.quantity)}` : row.state === 'fixed' && SCHEDULE.stays}
          </span>
        </span>
        <span className="item-when small">{whenText(row)}</span>
        <span className="item-state small">
          <b>{STATE_SHORT[row.state]}</b>
          {row.finish !== null && row.state !== 'fixed' && (
            <span className="quiet">
              {row.sample ? SCHEDULE.sampleOf(SAMPLES.statuses[row.sample]) : SCHEDULE.noSample}
            </span>
          )}
        </span>
        <span className="item-settle small">{settles > 0 && SCHEDULE.toSettle(settles)}</span>
      </button>
      {isOpen && (
        <fieldset className="as-frozen" disabled={doors.past !== null}>
          <div id={id} className="item-more">
            {row.kind === 'extra' ? <ExtraFields row={row} doors={doors} /> : <ItemDetails row={row} doors={doors} />}
          </div>
        </fieldset>
      )}
    </li>
  );
}

function whatText(row: ScheduleRow): string {
  if (row.kind === 'extra') return locationText(row);
  return row.finish === null ? SCHEDULE.nothing : capital(labelWithoutCode(row.item, row.finish));
}

function whenText(row: ScheduleRow): string {
  if (row.ordered_on) return SCHEDULE.orderedOn(dayText(row.ordered_on));
  if (row.order_by) return `${SCHEDULE.orderBy} ${dayText(row.order_by)}`;
  return '';
}
