import type { RelationCheck } from '../../engine/judge/relations/types';
import { joined, surfacesPhrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import type { RelationRepair } from '../../kitchen/carry/repair-relations';
import { LOOK } from '../words/look';
import { capital } from '../words/numbers';
import { pointing } from './pointing';

interface RepairListProps {
  readonly repairs: readonly RelationRepair[];
  /** All relations that the repairs speak of. */
  readonly checks: readonly RelationCheck[];
  readonly onTry: (repair: RelationRepair) => void;
  readonly onLay: (repair: RelationRepair) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** One or two changes each, with what they mend and at what price. */
export function RepairList({ repairs, checks, onTry, onLay, onPoint }: RepairListProps) {
  const textOf = (id: string) => checks.find(({ relation }) => relation.id === id)?.relation.text ?? id;
  return (
    <div className="look-repairs">
      <h3>{LOOK.repairs}</h3>
      <p className="small quiet">{repairs.length > 0 ? LOOK.repairsNote : LOOK.noRepairs}</p>
      <ul className="look-list">
        {repairs.map((repair) => {
          const surfaces = repair.changes.flatMap((change) => change.surfaces);
          const what = joined(repair.changes.map((one) => LOOK.change(one.label, surfacesPhrase(one.surfaces).text)));
          return (
            <li key={what} className="look-repair" {...pointing(surfaces, onPoint)}>
              <p>{what}</p>
              <details className="small">
                <summary>
                  {LOOK.mends(repair.mends.length)}, {LOOK.costs(repair.costs.length)}
                </summary>
                <ul className="look-lines">
                  {repair.mends.map((id) => (
                    <li key={id}>
                      {capital('mended')}: {textOf(id)}
                    </li>
                  ))}
                  {repair.costs.map((id) => (
                    <li key={id}>
                      {capital('broken')}: {textOf(id)}
                    </li>
                  ))}
                </ul>
              </details>
              <div className="look-row">
                <button type="button" className="button button-outlined" onClick={() => onTry(repair)}>
                  {LOOK.tryIt}
                </button>
                <button type="button" className="button button-plain" onClick={() => onLay(repair)}>
                  {LOOK.layWith}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
