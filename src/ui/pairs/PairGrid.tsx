import { type KeyboardEvent, useRef } from 'react';
import type { PairTable, TableCell } from '../../engine/judge/pair-table';
import { cellName, PAIRS } from '../words/pairs';
import type { CellSign } from './cell-sign';
import { movedSquare } from './grid-moves';
import { PairMark } from './PairMark';

interface PairGridProps {
  readonly table: PairTable;
  readonly chosen: TableCell;
  readonly signOf: (cell: TableCell) => CellSign;
  readonly onChoose: (cell: TableCell) => void;
}

/** The upper triangle of all finishes by all finishes; one square is in the tab order, arrow keys move it. */
export function PairGrid({ table, chosen, signOf, onChoose }: PairGridProps) {
  const body = useRef<HTMLTableSectionElement>(null);
  const { rows, cells } = table;
  const at = (a: number, b: number) => cells.find((cell) => cell.a === a && cell.b === b);
  const move = (event: KeyboardEvent) => {
    const to = movedSquare({ row: chosen.a, column: chosen.b }, event.key, rows.length);
    const cell = to && at(to.row, to.column);
    if (!cell) return;
    event.preventDefault();
    onChoose(cell);
    body.current?.querySelector<HTMLElement>(`[data-square="${cell.a} ${cell.b}"]`)?.focus();
  };
  return (
    <div className="pair-scroll">
      <table className="pair-grid" aria-label={PAIRS.grid}>
        <thead>
          <tr>
            <td />
            {rows.slice(1).map(({ name }, i) => (
              <th key={name} scope="col" aria-label={name}>
                {i + 2}
              </th>
            ))}
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map(({ name }, a) => (
            <tr key={name}>
              <th scope="row">
                <span className="pair-name">
                  <b>{a + 1}</b> {name}
                </span>
              </th>
              {rows.slice(1).map((other, i) => {
                const cell = at(a, i + 1);
                if (!cell) return <td key={other.name} />;
                const sign = signOf(cell);
                const isChosen = cell.a === chosen.a && cell.b === chosen.b;
                return (
                  <td key={other.name}>
                    <button
                      type="button"
                      className={`pair-square pair-${cell.meets}`}
                      data-square={`${cell.a} ${cell.b}`}
                      tabIndex={isChosen ? 0 : -1}
                      aria-pressed={isChosen}
                      aria-label={cellName(name, other.name, sign, cell.meets)}
                      onClick={() => onChoose(cell)}
                      onKeyDown={move}
                    >
                      <PairMark {...sign} />
                    </button>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
