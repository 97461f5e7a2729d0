import { sentenceCase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import type { BrokenRelation, CarriedLook } from '../../kitchen/carry/carry-over';
import { surfacesPhrase } from '../words/engine-words';
import { LOOK } from '../words/look';
import { retold } from '../words/spoken';
import { pointing } from './pointing';

interface BrokenRelationsProps {
  readonly carried: CarriedLook;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** What breaks, one entry for each surface that explains it; what goes with it is folded. */
export function BrokenRelations({ carried, onPoint }: BrokenRelationsProps) {
  const { causes, breaks } = carried;
  return (
    <ul className="look-list">
      {causes.map(({ surfaces, text, whole, count, relations }) => (
        <li key={relations.join()} className="look-broken" {...pointing(surfaces, onPoint)}>
          <p className="look-here">{retold(text)}</p>
          {whole !== null && <p className="look-here">{retold(whole)}</p>}
          <details className="small">
            <summary>{LOOK.goesWith(count)}</summary>
            <ul className="look-lines">
              {breaks
                .filter(({ relation }) => relations.includes(relation.id))
                .map((one) => (
                  <li key={one.relation.id} {...pointing(one.relation.surfaces, onPoint)}>
                    <BrokenOne check={one} isSaid={one.here === whole} />
                  </li>
                ))}
            </ul>
          </details>
        </li>
      ))}
    </ul>
  );
}

/** As it is here, as it was there, by how much, and whether that shows in the room. */
function BrokenOne({ check, isSaid }: { readonly check: BrokenRelation; readonly isSaid: boolean }) {
  const { relation, here, by, holds_in, in_place, kept } = check;
  const stays = surfacesPhrase(kept);
  // The sentence of the balance says what stays itself.
  const saysStay = kept.length > 0 && kept.length === relation.surfaces.length && !/\bstays?\b/.test(here);
  return (
    <>
      {!isSaid && <p>{retold(here)}</p>}
      <p>
        <span className="look-key">{LOOK.there}</span> {retold(relation.text)}
      </p>
      {by && !here.includes(by.text) && <p>{sentenceCase(retold(by.text))}.</p>}
      <p className="quiet">
        {in_place && `${LOOK.inPlace[in_place.stands]} `}
        {saysStay && `${LOOK.stays(sentenceCase(stays.text), stays.plural)} `}
        {LOOK.sure(relation.holds_in, holds_in)}
      </p>
    </>
  );
}
