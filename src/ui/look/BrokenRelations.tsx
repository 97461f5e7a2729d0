import type { RelationCheck } from '../../engine/judge/relations/types';
import { sentenceCase, surfacesPhrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { LOOK } from '../words/look';
import { pointing } from './pointing';

interface BrokenRelationsProps {
  readonly checks: readonly RelationCheck[];
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** What breaks: as it was there, as it is here, and by how much. */
export function BrokenRelations({ checks, onPoint }: BrokenRelationsProps) {
  return (
    <ul className="look-list">
      {checks.map(({ relation, here, by, holds_in, kept }) => {
        const stays = surfacesPhrase(kept);
        // The sentence of the balance says what stays itself.
        const saysStay = kept.length > 0 && !/\bstays?\b/.test(here);
        return (
          <li key={relation.id} className="look-broken" {...pointing(relation.surfaces, onPoint)}>
            <p className="look-here">{here}</p>
            <p className="small">
              <span className="look-key">{LOOK.there}</span> {relation.text}
            </p>
            {by && !here.includes(by.text) && <p className="small">{sentenceCase(by.text)}.</p>}
            <p className="small quiet">
              {saysStay && LOOK.stays(sentenceCase(stays.text), stays.plural)} {LOOK.sure(relation.holds_in, holds_in)}
            </p>
          </li>
        );
      })}
    </ul>
  );
}
