import type { Provenance } from '../../../engine/finish/types';
import { UNCERTAINTY_DE00 } from '../../../engine/finish/uncertainty';
import type { ImportChoices } from '../../../io/sheet/types';
import { Menu } from '../../drawer/Menu';
import { TYPE_IN } from '../../words/drawer';
import { PROVENANCE_WORDS } from '../../words/finishes';
import { IMPORT } from '../../words/import';
import { capital } from '../../words/numbers';
import { OFF_BY, offBy } from '../../words/off-by';
import { uncertaintyWord } from '../../words/reading';
import { OffByMeaning } from '../OffByMeaning';

interface ImportTrustProps {
  readonly choices: ImportChoices;
  readonly onChoices: (choices: ImportChoices) => void;
  readonly uncertainty: string;
  readonly isWrong: boolean;
  readonly onUncertainty: (text: string) => void;
}

const PROVENANCES: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye', 'screen'];

/** How the colors of all rows are known, and how far that can be trusted. */
export function ImportTrust({ choices, onChoices, uncertainty, isWrong, onUncertainty }: ImportTrustProps) {
  const { provenance, ...rest } = choices;
  return (
    <section className="import-trust" aria-label={IMPORT.trust}>
      <h4>{IMPORT.trust}</h4>
      <Menu<string>
        label={IMPORT.provenance}
        value={provenance ?? ''}
        choices={[['', IMPORT.asFile], ...PROVENANCES.map((one) => [one, TYPE_IN.provenances[one]] as const)]}
        onChoose={(id) => {
          const one = PROVENANCES.find((known) => known === id);
          onChoices(one ? { ...rest, provenance: one } : rest);
        }}
      />
      {provenance && (
        <p className="small quiet">
          {OFF_BY.certainty(
            capital(PROVENANCE_WORDS[provenance]),
            offBy(UNCERTAINTY_DE00[provenance]),
            uncertaintyWord(UNCERTAINTY_DE00[provenance]),
          )}
        </p>
      )}
      <label className="field">
        <span className="label">{OFF_BY.labelAll}</span>
        <input
          className="input"
          inputMode="decimal"
          value={uncertainty}
          placeholder={OFF_BY.hint}
          aria-invalid={isWrong}
          onChange={(event) => onUncertainty(event.target.value)}
        />
      </label>
      <OffByMeaning />
      {isWrong && <p className="small">{OFF_BY.wrong}</p>}
    </section>
  );
}
