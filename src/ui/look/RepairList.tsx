import { beyondRepair, relationName } from '../../engine/judge/relations/relation-names';
import type { RelationCheck } from '../../engine/judge/relations/types';
import { joined } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import type { RelationRepair } from '../../kitchen/carry/relation-repair';
import { shownName } from '../words/built-in';
import { surfacesPhrase } from '../words/engine-words';
import { LOOK } from '../words/look';
import { retold } from '../words/spoken';
import { pointing } from './pointing';

interface RepairListProps {
  readonly repairs: readonly RelationRepair[];
  /** All relations that the repairs speak of. */
  readonly checks: readonly RelationCheck[];
  readonly onTry: (repair: RelationRepair) => void;
  readonly onLay: (repair: RelationRepair) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

const EFFECTS = ['mends', 'costs', 'worsens', 'opens'] as const;

/** One or two changes each, with what they mend and at what price. */
export function RepairList({ repairs, checks, onTry, onLay, onPoint }: RepairListProps) {
  const textOf = (id: string) => {
    const found = checks.find(({ relation }) => relation.id === id);
    return found ? retold(relationName(found.relation)) : id;
  };
  const beyond = beyondRepair(checks);
  return (
    <div className="look-repairs">
      <h3>{LOOK.repairs}</h3>
      <p className="small quiet">{repairs.length > 0 ? LOOK.repairsNote : LOOK.noRepairs}</p>
      {beyond.length > 0 && <p className="small">{LOOK.beyond(retold(joined(beyond)))}</p>}
      <ul className="look-list">
        {repairs.map((repair) => {
          const surfaces = repair.changes.flatMap((change) => change.surfaces);
          const what = joined(
            repair.changes.map((one) => LOOK.change(shownName(one.label), surfacesPhrase(one.surfaces).text)),
          );
          return (
            <li key={what} className="look-repair" {...pointing(surfaces, onPoint)}>
              <p>{what}</p>
              <details className="small">
                <summary>{LOOK.effect(repair.counts)}</summary>
                <ul className="look-lines">
                  {EFFECTS.flatMap((effect) =>
                    repair[effect].map((id) => (
                      <li key={id}>
                        {LOOK.effects[effect]}: {textOf(id)}
                      </li>
                    )),
                  )}
                </ul>
              </details>
              {repair.decided.length > 0 && (
                <p className="small">{LOOK.decided(surfacesPhrase(repair.decided).text)}</p>
              )}
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
