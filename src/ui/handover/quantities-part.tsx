import { madeGroups } from '../../kitchen/schedule/made-groups';
import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import { madeCount, madeSizes } from '../schedule/part-size';
import { boughtText, netText } from '../schedule/quantity-text';
import { elementText } from '../schedule/row-words';
import { SlabPlan } from '../schedule/SlabPlan';
import { ORDERING } from '../words/ordering-pages';
import { retold } from '../words/spoken';
import type { Block, FlowPart } from './blocks';
import { withUnits } from './unbroken';

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
            elementText(row),
            withUnits(netText(row.quantity!)),
            <b key="order">{withUnits(boughtText(row))}</b>,
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

/** Doors, drawer fronts and panels by size, as a workshop asks for them; handles and the like counted. */
function madeBlocks(rows: readonly ScheduleRow[]): readonly Block[] {
  const made = rows
    .filter(({ quantity }) => quantity!.slabs === null)
    .flatMap((row) => madeGroups(row.quantity!.parts).map((group, i) => ({ row, group, isFirst: i === 0 })));
  if (made.length === 0) return [];
  return [
    {
      kind: 'flow',
      key: 'made-head',
      keeps: true,
      node: (
        <>
          <h4>{ORDERING.made}</h4>
          <p className="sheet-small">{ORDERING.madeNote}</p>
        </>
      ),
    },
    {
      kind: 'table',
      key: 'made',
      label: ORDERING.madeLabel,
      columns: [
        { head: ORDERING.id, width: 1.3 },
        { head: ORDERING.kind, width: 3.4 },
        { head: ORDERING.sizeHead, width: 12 },
      ],
      rows: made.map(({ row, group, isFirst }) => ({
        key: `${row.id} ${group.kind}`,
        begins: isFirst,
        cells: [row.id, madeCount(group), madeSizes(group)],
      })),
    },
  ];
}

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
          <h4>{cut.some(({ slabs }) => slabs.noun === 'panel') ? ORDERING.slabsAndPanels : ORDERING.slabs}</h4>
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
              <b>{ORDERING.slabsOf(row.id, elementText(row))}</b>
            </p>
            <SlabPlan slabs={slabs} />
          </div>
        ),
      }),
    ),
  ];
}
