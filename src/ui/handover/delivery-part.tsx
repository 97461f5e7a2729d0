import type { Schedule } from '../../kitchen/schedule/types';
import { dayText } from '../schedule/day-text';
import { boughtText } from '../schedule/quantity-text';
import { elementText, locationText } from '../schedule/row-words';
import { labelWithoutCode } from '../words/finishes';
import { capital } from '../words/numbers';
import { ORDERING } from '../words/ordering-pages';
import type { FlowPart } from './blocks';
import { LotText } from './LotText';
import { TickBoxes } from './TickBoxes';
import { withUnits } from './unbroken';

/** What comes, with room to write down what it is and whether it is right. */
export function deliveryPart({ rows }: Schedule): FlowPart {
  const coming = rows.filter(
    ({ state, kind, quantity, finish }) =>
      state !== 'fixed' && (kind === 'extra' || (finish !== null && quantity !== null)),
  );
  return {
    id: 'delivery',
    title: ORDERING.delivery,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{ORDERING.deliveryIntro}</p> },
      {
        kind: 'table',
        key: 'rows',
        label: ORDERING.deliveryLabel,
        look: 'forms',
        columns: [
          { head: ORDERING.id, width: 1.3 },
          { head: ORDERING.item, width: 4.4 },
          { head: ORDERING.bought, width: 2.6 },
          { head: ORDERING.agreed, width: 2.4 },
          { head: ORDERING.came, width: 3.6 },
          { head: ORDERING.outcome, width: 2 },
          { head: ORDERING.who, width: 2.2 },
        ],
        rows: coming.map((row) => ({
          key: row.id,
          cells: [
            row.id,
            <>
              {row.finish === null ? row.item : capital(labelWithoutCode(row.item, row.finish))}
              <span className="sheet-small">{row.finish === null ? locationText(row) : elementText(row)}</span>
            </>,
            withUnits(boughtText(row)),
            <LotText key="agreed" lot={row.lot} />,
            <LotText key="came" lot={row.delivery} />,
            <TickBoxes key="outcome" of={ORDERING.outcomes} />,
            row.delivery ? [row.delivery.by, dayText(row.delivery.on)].filter(Boolean).join(', ') : '',
          ],
        })),
      },
    ],
  };
}
