import type { TableCell } from '../../engine/judge/pair-table';
import { capital } from '../words/numbers';
import { MEETS_WORDS, PAIRS, signWords } from '../words/pairs';
import { type CellSign, urgency } from './cell-sign';
import { PairMark } from './PairMark';

interface PairLegendProps {
  readonly cells: readonly TableCell[];
  readonly signOf: (cell: TableCell) => CellSign;
}

/** The signs that the table has, in words, the gravest first. */
export function PairLegend({ cells, signOf }: PairLegendProps) {
  const signs = new Map(cells.map(signOf).map((sign) => [`${sign.kind} ${sign.severity}`, sign]));
  const gravestFirst = [...signs].sort(([, one], [, other]) => urgency(other) - urgency(one));
  const meets = (['adjacent', 'together', 'apart'] as const).filter((one) => cells.some((cell) => cell.meets === one));
  return (
    <details className="fold pair-legend">
      <summary>{PAIRS.legend}</summary>
      <ul className="small">
        {gravestFirst.map(([key, sign]) => (
          <li key={key}>
            <PairMark {...sign} /> {capital(signWords(sign))}
          </li>
        ))}
        {meets.map((one) => (
          <li key={one}>
            <span className={`pair-square pair-${one}`} /> {capital(MEETS_WORDS[one])}
          </li>
        ))}
      </ul>
    </details>
  );
}
