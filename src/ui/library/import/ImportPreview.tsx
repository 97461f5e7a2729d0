import { useMemo, useState } from 'react';
import type { ImportChoices } from '../../../io/sheet/types';
import { IMPORT } from '../../words/import';
import { nameFromFile } from './file-name';
import { ImportColumns } from './ImportColumns';
import { ImportMaterials } from './ImportMaterials';
import { ImportQuestions } from './ImportQuestions';
import { ImportRows } from './ImportRows';
import { ImportTrust } from './ImportTrust';
import type { ImportPaneProps } from './import-props';
import { KeepForm } from './KeepForm';
import { uncertaintyIn, withUncertainty } from './trust';
import type { SheetState } from './use-import';

interface ImportPreviewProps extends ImportPaneProps {
  readonly state: SheetState;
  readonly onChoices: (choices: ImportChoices) => void;
  readonly onStop: () => void;
}

/** A table that was read: what it is, what is asked of it, and what becomes of each row. */
export function ImportPreview({ state, onChoices, onStop, ...place }: ImportPreviewProps) {
  const { head, choices, outcome, isWorking, share, asked } = state;
  const [uncertainty, setUncertainty] = useState('');
  const more = uncertaintyIn(uncertainty);
  const de00 = more.ok ? more.value : null;
  const finishes = useMemo(
    () => withUncertainty(outcome?.kept.map(({ finish }) => finish) ?? [], de00),
    [outcome, de00],
  );
  return (
    <>
      <div className="import-body">
        <div className="import-said">
          <section aria-label={IMPORT.what}>
            <h4>{head.file}</h4>
            <p className="small quiet">
              {IMPORT.formats[head.format]}, {IMPORT.rows(head.rows)}
            </p>
            {(outcome?.notices ?? head.notices).map(({ code, text, remedy }) => (
              <p key={`${code} ${text}`} className="small">
                {text} {remedy}
              </p>
            ))}
          </section>
          {asked.length > 0 && <ImportQuestions asked={asked} choices={choices} onChoices={onChoices} />}
          <ImportColumns
            columns={head.columns}
            isColorless={asked.some(({ about, rows }) => about === 'columns' && rows > 0)}
            choices={choices}
            onChoices={onChoices}
          />
          {outcome && outcome.words.length > 0 && (
            <ImportMaterials words={outcome.words} choices={choices} onChoices={onChoices} />
          )}
          <ImportTrust
            choices={choices}
            onChoices={onChoices}
            uncertainty={uncertainty}
            isWrong={!more.ok}
            onUncertainty={setUncertainty}
          />
        </div>
        <section className="import-outcome" aria-label={IMPORT.outcome} aria-busy={isWorking}>
          {outcome ? (
            <ImportRows outcome={outcome} isWorking={isWorking} paintOf={place.paintOf} />
          ) : (
            <div className="import-reading">
              <label className="import-progress">
                <span role="status">{IMPORT.stages.colors}</span>
                <progress value={share ?? undefined} max={1} />
              </label>
              <button type="button" className="button button-outlined" onClick={onStop}>
                {IMPORT.stop}
              </button>
            </div>
          )}
        </section>
      </div>
      <KeepForm
        {...place}
        finishes={finishes}
        name={nameFromFile(head.file)}
        note=""
        isReady={outcome !== null && !isWorking && more.ok}
      />
    </>
  );
}
