import { useMemo } from 'react';
import type { Problem } from '../../../engine/result';
import type { RefusedRow } from '../../../io/sheet/types';
import type { Library } from '../../../model/library';
import { IMPORT } from '../../words/import';
import { ImportRows } from './ImportRows';
import type { ImportPaneProps } from './import-props';
import { KeepForm } from './KeepForm';

interface LibraryPreviewProps extends ImportPaneProps {
  readonly library: Library;
  readonly refused: readonly RefusedRow[];
  readonly notices: readonly Problem[];
}

/** A library that this program saved: everything is said in it. What was refused of it stands among its rows. */
export function LibraryPreview({ library, refused, notices, ...place }: LibraryPreviewProps) {
  const outcome = useMemo(() => {
    const gone = new Set(refused.map(({ row }) => row));
    let row = 0;
    const kept = library.finishes.map((finish) => {
      do row++;
      while (gone.has(row));
      return { row, finish, notices: [] };
    });
    return { kept, refused, words: [], questions: [], notices: [] };
  }, [library, refused]);
  return (
    <>
      <div className="import-body">
        <section className="import-said" aria-label={IMPORT.what}>
          <h4>{library.name}</h4>
          <p className="small quiet">{IMPORT.library(library.finishes.length)}</p>
          {notices.map(({ text, remedy }) => (
            <p key={text} className="small">
              {text} {remedy}
            </p>
          ))}
        </section>
        <section className="import-outcome" aria-label={IMPORT.outcome}>
          <ImportRows outcome={outcome} isWorking={false} paintOf={place.paintOf} />
        </section>
      </div>
      <KeepForm {...place} finishes={library.finishes} name={library.name} note={library.note} isReady />
    </>
  );
}
