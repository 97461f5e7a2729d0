import type { Repair } from '../../engine/judge/assessment';
import type { SurfaceId } from '../../engine/surface';
import { FINDINGS, WARNING_WORDS } from '../words/findings';
import { listed } from '../words/numbers';

interface RepairListProps {
  readonly repairs: readonly Repair[];
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onTry: (surface: SurfaceId, finish: string) => void;
}

/** Changes of one finish that would clear a warning; trying one lays it, and undo takes it back. */
export function RepairList({ repairs, onPoint, onTry }: RepairListProps) {
  if (repairs.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        {FINDINGS.helps} ({repairs.length})
      </summary>
      <ul className="fold-list">
        {repairs.map((repair) => (
          <li
            key={`${repair.surface}-${repair.finish}`}
            className="repair"
            onPointerEnter={() => onPoint([repair.surface])}
            onPointerLeave={() => onPoint([])}
          >
            <p className="small">
              {repair.text}
              {repair.adds.length > 0 && ` ${FINDINGS.adds(listed(repair.adds.map((code) => WARNING_WORDS[code])))}`}
            </p>
            <button
              type="button"
              className="button button-outlined"
              onClick={() => onTry(repair.surface, repair.finish)}
            >
              {FINDINGS.tryIt}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
