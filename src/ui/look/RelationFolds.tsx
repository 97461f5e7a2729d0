import { relationGroups } from '../../engine/judge/relations/groups';
import type { SurfaceId } from '../../engine/surface';
import type { CarriedLook } from '../../kitchen/carry/carry-over';
import { LOOK } from '../words/look';
import { retold } from '../words/spoken';
import { pointing } from './pointing';

interface RelationFoldsProps {
  readonly carried: CarriedLook;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** What holds, what cannot be told, and what was not sure enough in the look: folded. */
export function RelationFolds({ carried, onPoint }: RelationFoldsProps) {
  const { holds, cannot_tell, left_out, counts } = carried;
  return (
    <>
      {holds.length > 0 && (
        <details className="fold">
          <summary>{LOOK.held(counts.holds)}</summary>
          {relationGroups(holds).map(({ title, checks, also }) => (
            <div key={title}>
              <h4 className="look-group">{retold(title)}</h4>
              <ul className="fold-list small">
                {checks.map(({ relation, here }) => (
                  <li key={relation.id} {...pointing(relation.surfaces, onPoint)}>
                    {retold(relation.text)}
                    {relation.kind === 'balance' && <> {retold(here)}</>}
                  </li>
                ))}
                {also > 0 && <li className="quiet">{LOOK.also(also)}</li>}
              </ul>
            </div>
          ))}
        </details>
      )}
      {cannot_tell.length > 0 && (
        <details className="fold">
          <summary>{LOOK.open(counts.cannot_tell)}</summary>
          <ul className="fold-list small">
            {cannot_tell.map(({ relation, here }) => (
              <li key={relation.id} {...pointing(relation.surfaces, onPoint)}>
                {retold(relation.text)} {retold(here)}
              </li>
            ))}
          </ul>
        </details>
      )}
      {left_out.length > 0 && (
        <details className="fold">
          <summary>{LOOK.leftOut(left_out.length)}</summary>
          <ul className="fold-list small">
            {left_out.map(({ id, text }) => (
              <li key={id}>{retold(text)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
