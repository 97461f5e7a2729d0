import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { MeasuredPart } from '../../kitchen/takeoff/types';
import { lengthText } from '../../model/length-text';
import { netText, orderText } from '../schedule/quantity-text';
import { SlabPlan } from '../schedule/SlabPlan';
import { MADE } from '../words/made';
import { capital } from '../words/numbers';
import { ORDERING } from '../words/ordering-pages';
import { retold, unitNow } from '../words/spoken';
import type { Block, FlowPart } from './blocks';

/** Every quantity with all it rests on, what is made to size, and how slabs are cut. */
export function quantitiesPart({ rows }: Schedule): FlowPart {
  const counted = rows.filter(({ quantity }) => quantity !== null);
  return {
    id: 'quantities',
    title: ORDERING.quantities,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{ORDERING.quantitiesIntro}</p> },
      {
        kind: 'table',
        key: 'rows',
        label: ORDERING.quantitiesLabel,
        columns: [
          { head: ORDERING.id, width: 1.4 },
          { head: ORDERING.item, width: 3.4 },
          { head: ORDERING.area, width: 2.9 },
          { head: ORDERING.bought, width: 3.3 },
          { head: ORDERING.rests, width: 7.4 },
        ],
        rows: counted.map((row) => ({
          key: row.id,
          cells: [
            row.id,
            retold(row.element),
            netText(row.quantity!),
            <b key="order">{orderText(row.quantity!)}</b>,
            <span key="rests" className="quantity-rests">
              {row.quantity!.rests_on.map(retold).join(' ')}
            </span>,
          ],
        })),
      },
      ...madeBlocks(counted),
      ...slabBlocks(counted),
    ],
  };
}

/** Doors, drawer fronts and panels by size: what a workshop asks for. */
function madeBlocks(rows: readonly ScheduleRow[]): readonly Block[] {
  const made = rows
    .filter(({ quantity }) => quantity!.slabs === null)
    .flatMap((row) => row.quantity!.parts.map((part) => ({ row, part })));
  if (made.length === 0) return [];
  return [
    { kind: 'flow', key: 'made-head', keeps: true, node: <h4>{ORDERING.made}</h4> },
    {
      kind: 'table',
      key: 'made',
      label: ORDERING.madeLabel,
      columns: [
        { head: ORDERING.id, width: 1.3 },
        { head: ORDERING.kind, width: 5 },
        { head: ORDERING.count, width: 2, align: 'end' },
        { head: ORDERING.sizeHead, width: 5, align: 'end' },
      ],
      rows: made.map(({ row, part }, i) => ({
        key: `${row.id} ${i}`,
        cells: [row.id, capital(MADE[part.kind]), String(part.count), sizeText(part)],
      })),
    },
  ];
}

const sizeText = ({ length_mm, width_mm }: MeasuredPart): string =>
  `${lengthText(length_mm, unitNow())} × ${lengthText(width_mm, unitNow())} ${unitNow()}`;

function slabBlocks(rows: readonly ScheduleRow[]): readonly Block[] {
  const cut = rows.flatMap((row) => (row.quantity?.slabs ? [{ row, slabs: row.quantity.slabs }] : []));
  if (cut.length === 0) return [];
  return [
    {
      kind: 'flow',
      key: 'slabs-head',
      keeps: true,
      node: (
        <>
          <h4>{ORDERING.slabs}</h4>
          <p className="sheet-small">{ORDERING.slabsNote}</p>
        </>
      ),
    },
    ...cut.map(
      ({ row, slabs }): Block => ({
        kind: 'flow',
        key: `slabs ${row.id}`,
        node: (
          <div className="printed-slabs">
            <p>
              <b>{ORDERING.slabsOf(row.id, retold(row.element))}</b>
            </p>
            <SlabPlan slabs={slabs} />
          </div>
        ),
      }),
    ),
  ];
}
