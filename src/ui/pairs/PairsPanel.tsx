import { useEffect, useState } from 'react';
import type { Warning } from '../../engine/judge/assessment';
import type { PairTable, TableCell } from '../../engine/judge/pair-table';
import type { SurfaceId } from '../../engine/surface';
import { PanelFrame } from '../room/PanelFrame';
import { PAIRS } from '../words/pairs';
import { type CellSign, signOf, urgency, warningsBetween } from './cell-sign';
import { PairDetail } from './PairDetail';
import { PairGrid } from './PairGrid';
import { PairLegend } from './PairLegend';
import './pairs.css';

interface PairsPanelProps {
  /** Null until it is worked out. */
  readonly table: PairTable | null;
  readonly warnings: readonly Warning[];
  readonly settingName: string;
  readonly isDark: boolean;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onClose: () => void;
}

/** All pairs in one table; what the chosen square says stands beneath, and its surfaces are outlined in the picture. */
export function PairsPanel({ table, warnings, settingName, isDark, onPoint, onClose }: PairsPanelProps) {
  const [at, setAt] = useState<{ readonly a: number; readonly b: number } | null>(null);
  const sign = (cell: TableCell) => signOf(warnings, table!, cell);
  const chosen = table && (table.cells.find(({ a, b }) => a === at?.a && b === at.b) ?? mostUrgent(table, sign));
  const outlined = table && at && chosen ? surfacesOf(table, chosen) : NONE;
  const names = outlined.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same surfaces are outlined once
  useEffect(() => {
    onPoint(outlined);
    return () => onPoint(NONE);
  }, [names]);
  return (
    <PanelFrame title={PAIRS.title} opener="pairs" onClose={onClose}>
      {!table && <p>{PAIRS.waiting}</p>}
      {table && !chosen && <p>{PAIRS.none}</p>}
      {table && chosen && (
        <>
          <div className="pair-table">
            <p className="small quiet">{PAIRS.intro}</p>
            <PairGrid table={table} chosen={chosen} signOf={sign} onChoose={(cell) => setAt(cell)} />
            <PairLegend cells={table.cells} signOf={sign} />
          </div>
          <PairDetail
            table={table}
            cell={chosen}
            settingName={settingName}
            isDark={isDark}
            also={warningsBetween(warnings, table, chosen)}
          />
        </>
      )}
    </PanelFrame>
  );
}

const NONE: readonly SurfaceId[] = [];

/** Opened, the table shows what one would look for: its worst square. */
const mostUrgent = ({ cells }: PairTable, sign: (cell: TableCell) => CellSign): TableCell | null =>
  cells.reduce<TableCell | null>(
    (best, cell) => (!best || urgency(sign(cell)) > urgency(sign(best)) ? cell : best),
    null,
  );

const surfacesOf = ({ rows }: PairTable, { a, b }: TableCell): readonly SurfaceId[] => [
  ...rows[a]!.surfaces,
  ...rows[b]!.surfaces,
];
