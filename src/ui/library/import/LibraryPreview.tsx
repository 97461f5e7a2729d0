import { useMemo } from 'react';
import type { Problem } from '../../../engine/result';
import type { Library } from '../../../model/library';
import { IMPORT } from '../../words/import';
import { ImportRows } from './ImportRows';
import type { ImportPaneProps } from './import-props';
import { KeepForm } from './KeepForm';

interface LibraryPreviewProps extends ImportPaneProps {
  readonly library: Library;
  readonly notices: readonly Problem[];
}

/** A library that this program saved: everything is said in it. */
export function LibraryPreview({ library, notices, ...place }: LibraryPreviewProps) {
  const outcome = useMemo(
    () => ({
      kept: library.finishes.map((finish, row) => ({ row, finish, notices: [] })),
      refused: [],
      questions: [],
      notices: [],
    }),
    [library],
  );
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
