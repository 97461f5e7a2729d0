import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Day } from '../../model/order/day';
import { STAGES, type Stage } from '../../model/order/stages';
import { dayText } from '../schedule/day-text';
import { boughtText } from '../schedule/quantity-text';
import { elementInLine, elementText } from '../schedule/row-words';
import { ORDERING } from '../words/ordering-pages';
import { SCHEDULE } from '../words/schedule';
import type { Block, FlowPart } from './blocks';
import { withUnits } from './unbroken';

/** When what is put in, and when to order it. */
export function datesPart({ rows }: Schedule, days: { readonly [S in Stage]: Day } | null): FlowPart {
  const bought = rows.filter(({ state, finish, kind }) => state !== 'fixed' && (finish !== null || kind === 'extra'));
  const dated = bought.filter(({ order_by }) => order_by !== null);
  const blocks: Block[] = [
    { kind: 'flow', key: 'intro', keeps: true, node: <p>{ORDERING.datesIntro}</p> },
    { kind: 'flow', key: 'stages-head', keeps: true, node: <h4>{ORDERING.stages}</h4> },
    {
      kind: 'table',
      key: 'stages',
      label: ORDERING.stages,
      columns: [
        { head: ORDERING.stageHead, width: 3 },
        { head: ORDERING.begins, width: 3 },
        { head: ORDERING.what, width: 8 },
      ],
      rows: STAGES.filter((stage) =>
        stage === 'template' ? bought.some(({ kind }) => kind === 'slab') : bought.some((row) => row.stage === stage),
      ).map((stage) => ({
        key: stage,
        cells: [
          SCHEDULE.stages[stage],
          days ? dayText(days[stage]) : '',
          bought
            .filter((row) => row.stage === stage)
            .map((row) => `${row.id} ${elementInLine(row)}`)
            .join('; '),
        ],
      })),
    },
    { kind: 'flow', key: 'orders-head', keeps: true, node: <h4>{ORDERING.ordersTitle}</h4> },
  ];
  if (dated.length === 0) {
    blocks.push({ kind: 'flow', key: 'none', node: <p>{days ? ORDERING.noLead : ORDERING.noStart}</p> });
  } else {
    blocks.push({
      kind: 'table',
      key: 'orders',
      label: ORDERING.ordersTitle,
      columns: [
        { head: ORDERING.dates, width: 3 },
        { head: ORDERING.id, width: 1.3 },
        { head: ORDERING.item, width: 7 },
        { head: ORDERING.quantity, width: 4 },
      ],
      rows: [...dated].sort(byOrder).map((row) => ({
        key: row.id,
        cells: [
          dayText(row.order_by!),
          row.id,
          <>
            {elementText(row)}
            {row.state === 'open' && <span className="dates-open"> {ORDERING.undecided}</span>}
          </>,
          withUnits(boughtText(row)),
        ],
      })),
    });
  }
  return { id: 'dates', title: ORDERING.datesTitle, blocks };
}

const byOrder = (a: ScheduleRow, b: ScheduleRow): number =>
  a.order_by! < b.order_by! ? -1 : a.order_by! > b.order_by! ? 1 : 0;
