import type { LookRelations } from '../../engine/judge/relations/types';
import { LOOK, POINTS } from '../words/look';
import { retold } from '../words/spoken';

/** The relations that points yield, with how sure each is; folded, what was not sure enough. */
export function YieldedRelations({
  relations,
  hasEnough,
}: {
  readonly relations: LookRelations | null;
  readonly hasEnough: boolean;
}) {
  return (
    <section className="yielded" aria-label={POINTS.yields}>
      <h3>{POINTS.yields}</h3>
      {!hasEnough && <p className="small quiet">{POINTS.needs}</p>}
      {hasEnough && !relations && (
        <p className="small quiet" role="status">
          {POINTS.working}
        </p>
      )}
      {hasEnough && relations && (
        <>
          {relations.relations.length === 0 && <p className="small">{LOOK.noRelations}</p>}
          <ul className="yielded-list small">
            {relations.relations.map(({ id, text, holds_in }) => (
              <li key={id}>
                {retold(text)} <span className="quiet">{POINTS.sure(holds_in)}</span>
              </li>
            ))}
          </ul>
          {relations.left_out.length > 0 && (
            <details className="small">
              <summary>
                {POINTS.leftOut} ({relations.left_out.length})
              </summary>
              <ul className="yielded-list">
                {relations.left_out.map(({ id, text }) => (
                  <li key={id}>{retold(text)}</li>
                ))}
              </ul>
            </details>
          )}
        </>
      )}
    </section>
  );
}
