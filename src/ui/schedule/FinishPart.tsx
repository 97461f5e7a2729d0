import type { ScheduleRow } from '../../kitchen/schedule/types';
import { PROVENANCE_SHORT } from '../words/finishes';
import { SCHEDULE } from '../words/schedule';
import { ITEM } from '../words/schedule-item';
import { retold } from '../words/spoken';
import { rowPrice } from './price-text';
import { locationText } from './row-words';

/** What is known of the finish of an item: place, size, color, supply and price. */
export function FinishPart({ row }: { readonly row: ScheduleRow }) {
  const [color] = row.colors;
  const lines = [
    locationText(row),
    row.size_mm && retold(`${row.size_mm.join(' × ')} mm`),
    row.thickness_mm !== null && retold(`${row.thickness_mm} mm`),
    row.lrv !== null && SCHEDULE.lrv(row.lrv.toFixed(0)),
    row.gloss_gu !== null && SCHEDULE.gloss(row.gloss_gu),
  ].filter((one): one is string => typeof one === 'string' && one !== '');
  return (
    <section className="item-part">
      <h3>{ITEM.finish}</h3>
      <p className="small">{lines.join(' · ')}</p>
      {color && (
        <p className="small">
          {SCHEDULE.color(...(color.lab_d65.map((one) => one.toFixed(1)) as [string, string, string]))}{' '}
          <span className="quiet">
            {PROVENANCE_SHORT[color.provenance]}, {SCHEDULE.off(color.uncertainty_de00.toFixed(1))}.{' '}
            {SCHEDULE.given(color.given)}.
          </span>
        </p>
      )}
      <p className="small">
        {[row.supplier ?? ITEM.notKnown, row.code].filter(Boolean).join(', ')}
        {' · '}
        {row.unit_price && `${rowPrice(row.unit_price)}${row.total ? ' · ' : ''}`}
        {row.total ? (
          <>
            {SCHEDULE.total} <b>{rowPrice(row.total)}</b>
          </>
        ) : (
          !row.unit_price && `${ITEM.price} ${ITEM.notKnown}`
        )}
      </p>
    </section>
  );
}
