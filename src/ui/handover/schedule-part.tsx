import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Finish } from '../../model/project';
import { elementText } from '../schedule/row-words';
import { sumsOf } from '../schedule/sums-of';
import { ORDERING } from '../words/ordering-pages';
import { retold } from '../words/spoken';
import type { FlowPart, SheetRow } from './blocks';
import { datesCell, itemCell, quantityCell, stateCell, supplyCell } from './schedule-cells';

/** The finish schedule: every column of the trade, grouped in cells, stage by stage; then what is superseded, struck through. */
export function schedulePart({ rows, superseded, problems, option }: Schedule, library: readonly Finish[]): FlowPart {
  const byId = new Map(library.map((finish) => [finish.id, finish]));
  return {
    id: 'schedule',
    title: ORDERING.schedule,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{ORDERING.scheduleIntro(option)}</p> },
      {
        kind: 'table',
        key: 'rows',
        label: ORDERING.scheduleLabel,
        columns: [
          { head: ORDERING.id, width: 1.4 },
          { head: ORDERING.item, width: 5.6 },
          { head: ORDERING.quantity, width: 3.1 },
          { head: ORDERING.supply, width: 3.1 },
          { head: ORDERING.dates, width: 3 },
          { head: ORDERING.state, width: 2.8 },
        ],
        rows: rows.map(
          (row, i): SheetRow => ({
            key: row.id,
            begins: i > 0 && rows[i - 1]!.stage !== row.stage,
            cells: [row.id, itemCell(row, byId), quantityCell(row), supplyCell(row), datesCell(row), stateCell(row)],
          }),
        ),
      },
      { kind: 'flow', key: 'sums', node: <p className="sheet-small">{sumsText(rows)}</p> },
      ...problems.map(({ code, text }) => ({
        kind: 'flow' as const,
        key: code,
        node: <p className="sheet-small">{retold(text)}</p>,
      })),
      ...(superseded.length > 0
        ? [
            {
              kind: 'flow' as const,
              key: 'gone-head',
              keeps: true,
              node: (
                <>
                  <h4>{ORDERING.superseded}</h4>
                  <p className="sheet-small">{ORDERING.supersededIntro}</p>
                </>
              ),
            },
            {
              kind: 'table' as const,
              key: 'gone',
              label: ORDERING.superseded,
              columns: [
                { head: ORDERING.id, width: 1.3 },
                { head: ORDERING.item, width: 12 },
                { head: ORDERING.state, width: 4 },
              ],
              rows: superseded.map((row) => ({
                key: `${row.id} ${row.revision} ${row.item}`,
                cells: [
                  <s key="id">{row.id}</s>,
                  <s key="item">
                    {elementText(row)}: {row.item}
                  </s>,
                  ORDERING.last(row.revision),
                ],
              })),
            },
          ]
        : []),
    ],
  };
}

function sumsText(rows: readonly ScheduleRow[]): string {
  const { words, priced, all } = sumsOf(rows);
  return words.length === 0 ? ORDERING.noSums : ORDERING.sums(words.join(' + '), priced, all);
}
