import type { ReactNode } from 'react';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { Day } from '../../model/order/day';
import type { Finish } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import { dayText as textOfDay } from '../schedule/day-text';
import { rowPrice } from '../schedule/price-text';
import { boughtText, netText } from '../schedule/quantity-text';
import { elementText, locationText, problemText } from '../schedule/row-words';
import { LAYOUT_WORDS, labelWithoutCode, PROVENANCE_SHORT, SHEEN_WORDS, STATE_WORDS } from '../words/finishes';
import { leadTime } from '../words/lead-time';
import { capital, integer } from '../words/numbers';
import { ORDERING } from '../words/ordering-pages';
import { SAMPLES, SCHEDULE } from '../words/schedule';
import { retold } from '../words/spoken';
import { LotText } from './LotText';
import { unbroken, withUnits } from './unbroken';

const dayText = (day: Day): string => unbroken(textOfDay(day));

const Small = ({ children }: { readonly children: ReactNode }) => <span className="sheet-small">{children}</span>;

/** What it is: element, place, finish, color, laying, grout, note, and what is to be settled. */
export function itemCell(row: ScheduleRow, library: ReadonlyMap<string, Finish>): ReactNode {
  const [color] = row.colors;
  const { lrv, gloss_gu } = row;
  const laying = layingText(row);
  // That no price is known stands with supply and cost.
  const settled = row.problems.filter(({ code }) => code !== 'no-price');
  return (
    <>
      <b>{elementText(row)}</b>
      {row.location !== '' && <Small>{locationText(row)}</Small>}
      <span className="schedule-finish">
        {row.finish === null
          ? row.kind === 'extra'
            ? ''
            : SCHEDULE.nothing
          : capital(labelWithoutCode(row.item, row.finish))}
      </span>
      {color && (
        <Small>
          {ORDERING.color(...(color.lab_d65.map((one) => one.toFixed(1)) as [string, string, string]))},{' '}
          {ORDERING.colorNote(PROVENANCE_SHORT[color.provenance], color.uncertainty_de00.toFixed(1))}
        </Small>
      )}
      {(lrv !== null || gloss_gu !== null) && (
        <Small>
          {[
            lrv !== null && ORDERING.lrv(integer(lrv)),
            gloss_gu !== null && `${SHEEN_WORDS[sheenOf(gloss_gu)]}, ${SCHEDULE.gloss(gloss_gu)}`,
          ]
            .filter(Boolean)
            .join(' · ')}
        </Small>
      )}
      {laying !== '' && <Small>{laying}</Small>}
      {row.grout !== null && <Small>{ORDERING.grout(groutName(library, row.grout))}</Small>}
      {row.note !== null && <Small>{row.note}</Small>}
      {settled.length > 0 && (
        <span className="schedule-settle">{ORDERING.settle(settled.map(problemText).join(' '))}</span>
      )}
    </>
  );
}

const groutName = (library: ReadonlyMap<string, Finish>, id: string): string => {
  const finish = library.get(id);
  return finish ? labelWithoutCode(finish.label, id).toLowerCase() : id;
};

/** Size, thickness, edge, layout, start, direction, joint. */
function layingText(row: ScheduleRow): string {
  const parts = [
    row.size_mm && retold(ORDERING.size(integer(row.size_mm[0]), integer(row.size_mm[1]))),
    row.thickness_mm !== null && ORDERING.thick(String(row.thickness_mm)),
    row.edge !== null && ORDERING.edge(ORDERING.edges[row.edge as keyof typeof ORDERING.edges]),
    row.layout !== null && row.layout !== 'plain' && LAYOUT_WORDS[row.layout].toLowerCase(),
    row.start !== null && ORDERING.start[row.start],
    row.direction_deg !== null && row.direction_deg !== 0 && ORDERING.turned(row.direction_deg),
    row.joint_mm !== null && ORDERING.joint(String(row.joint_mm)),
  ];
  return parts.filter(Boolean).join(', ');
}

/** How much is bought, what is needed, waste and spares. */
export function quantityCell(row: ScheduleRow): ReactNode {
  const { quantity } = row;
  if (!quantity) {
    if (row.state === 'fixed') return ORDERING.stays;
    if (row.kind === 'extra') return <b>{withUnits(boughtText(row))}</b>;
    return row.problems.length === 0 ? '' : ORDERING.cannotTell;
  }
  return (
    <>
      <b>{withUnits(boughtText(row))}</b>
      <Small>{ORDERING.net(withUnits(netText(quantity)))}</Small>
      {quantity.waste_percent > 0 && <Small>{ORDERING.waste(String(quantity.waste_percent))}</Small>}
      {quantity.order.spares > 0 && <Small>{ORDERING.spare(quantity.order.spares)}</Small>}
    </>
  );
}

/** From whom, its code, lot and cost. */
export function supplyCell(row: ScheduleRow): ReactNode {
  if (row.state === 'fixed' || (row.finish === null && row.kind !== 'extra')) return '';
  const lot = Object.values(row.lot ?? {}).filter(Boolean);
  const { unit_price, total } = row;
  return (
    <>
      {row.supplier}
      <Small>{row.code}</Small>
      <Small>{lot.length > 0 ? <LotText lot={row.lot} /> : ORDERING.noLot}</Small>
      {unit_price && <Small>{ORDERING.costOf(rowPrice(unit_price))}</Small>}
      {!unit_price && !total && <Small>{ORDERING.noCost}</Small>}
      {total && <b>{ORDERING.total(rowPrice(total))}</b>}
    </>
  );
}

/** By when to order, when it is needed, how long it takes. */
export function datesCell(row: ScheduleRow): ReactNode {
  if (row.state === 'fixed' || (row.finish === null && row.kind !== 'extra')) return '';
  return (
    <>
      {row.ordered_on ? (
        <b>{ORDERING.ordered(dayText(row.ordered_on))}</b>
      ) : row.order_by ? (
        <b>{ORDERING.orderBy(dayText(row.order_by))}</b>
      ) : (
        ORDERING.noDates
      )}
      {row.needed_on && <Small>{ORDERING.needed(dayText(row.needed_on))}</Small>}
      <Small>
        {row.lead_time_weeks === null ? ORDERING.noLead : ORDERING.lead(unbroken(leadTime(row.lead_time_weeks)))}
      </Small>
    </>
  );
}

/** How far it is: state, sample, revision, approval. */
export function stateCell(row: ScheduleRow): ReactNode {
  const isBought = row.state !== 'fixed' && row.finish !== null;
  return (
    <>
      <b>{capital(STATE_WORDS[row.state])}</b>
      {isBought && <Small>{row.sample ? ORDERING.sample(SAMPLES.statuses[row.sample]) : ORDERING.noSample}</Small>}
      <Small>{row.revision ? ORDERING.since(row.revision) : ORDERING.draft}</Small>
      {isBought && (
        <Small>{row.approved ? ORDERING.approved(row.approved.by, dayText(row.approved.on)) : ORDERING.approve}</Small>
      )}
    </>
  );
}
