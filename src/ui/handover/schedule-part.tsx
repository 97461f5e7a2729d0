import type { ReactNode } from 'react';
import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Finish } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import { dayText } from '../schedule/day-text';
import { rowPrice } from '../schedule/price-text';
import { boughtText, netText } from '../schedule/quantity-text';
import { elementText, locationText, problemText } from '../schedule/row-words';
import { sumsOf } from '../schedule/sums-of';
import { LAYOUT_WORDS, labelWithoutCode, PROVENANCE_SHORT, SHEEN_WORDS, STATE_WORDS } from '../words/finishes';
import { leadTime } from '../words/lead-time';
import { capital, integer } from '../words/numbers';
import { ORDERING } from '../words/ordering-pages';
import { SAMPLES, SCHEDULE } from '../words/schedule';
import { retold } from '../words/spoken';
import type { FlowPart, SheetRow } from './blocks';

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

const Small = ({ children }: { readonly children: ReactNode }) => <span className="sheet-small">{children}</span>;

function itemCell(row: ScheduleRow, library: ReadonlyMap<string, Finish>): ReactNode {
  const [color] = row.colors;
  const { lrv, gloss_gu } = row;
  const laying = layingText(row);
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
      {row.problems.length > 0 && (
        <span className="schedule-settle">{ORDERING.settle(row.problems.map(problemText).join(' '))}</span>
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

function quantityCell(row: ScheduleRow): ReactNode {
  const { quantity } = row;
  if (!quantity) {
    if (row.state === 'fixed') return ORDERING.stays;
    if (row.kind === 'extra') return <b>{boughtText(row)}</b>;
    return row.problems.length === 0 ? '' : ORDERING.cannotTell;
  }
  return (
    <>
      <b>{boughtText(row)}</b>
      <Small>{ORDERING.net(netText(quantity))}</Small>
      {quantity.waste_percent > 0 && <Small>{ORDERING.waste(String(quantity.waste_percent))}</Small>}
      {quantity.order.spares > 0 && <Small>{ORDERING.spare(quantity.order.spares)}</Small>}
    </>
  );
}

function supplyCell(row: ScheduleRow): ReactNode {
  if (row.state === 'fixed' || (row.finish === null && row.kind !== 'extra')) return '';
  const lot = Object.values(row.lot ?? {}).filter(Boolean);
  const { unit_price, total } = row;
  return (
    <>
      {row.supplier}
      <Small>{row.code}</Small>
      <Small>{lot.length > 0 ? lot.join(', ') : ORDERING.noLot}</Small>
      <Small>{unit_price ? ORDERING.costOf(rowPrice(unit_price)) : ORDERING.noCost}</Small>
      {total && <b>{ORDERING.total(rowPrice(total))}</b>}
    </>
  );
}

function datesCell(row: ScheduleRow): ReactNode {
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
      <Small>{row.lead_time_weeks === null ? ORDERING.noLead : ORDERING.lead(leadTime(row.lead_time_weeks))}</Small>
    </>
  );
}

function stateCell(row: ScheduleRow): ReactNode {
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

function sumsText(rows: readonly ScheduleRow[]): string {
  const { words, priced, all } = sumsOf(rows);
  return words.length === 0 ? ORDERING.noSums : ORDERING.sums(words.join(' + '), priced, all);
}
