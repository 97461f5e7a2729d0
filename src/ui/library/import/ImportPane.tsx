import { ChevronLeft, Upload } from 'lucide-react';
import { type DragEvent, useEffect, useRef, useState } from 'react';
import { IMPORT } from '../../words/import';
import { FINISH_FORM } from '../../words/libraries';
import { ImportPreview } from './ImportPreview';
import { ImportProblems } from './ImportProblems';
import type { ImportPaneProps } from './import-props';
import { LibraryPreview } from './LibraryPreview';
import { useImport } from './use-import';
import './import.css';

/** From a file to a library: choose it, see what it is and what becomes of each row, keep what one wants. Nothing is kept before. */
export function ImportPane(props: ImportPaneProps) {
  const { openImport, takeFirst, onDone, held } = props;
  const { state, read, choose, stop } = useImport(openImport);
  /** What waits for an answer: to leave, or to read another file. */
  const [leaving, setLeaving] = useState<{ readonly act: () => void; readonly reads?: true } | null>(null);
  const [isOver, setOver] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const isRead = state.at === 'sheet' || state.at === 'library';
  // biome-ignore lint/correctness/useExhaustiveDependencies: each step takes the focus when it comes
  useEffect(() => heading.current?.focus(), [state.at]);
  useEffect(() => {
    held.current = isRead ? (act) => setLeaving({ act }) : null;
    return () => {
      held.current = null;
    };
  }, [held, isRead]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the pane opens
  useEffect(() => {
    const first = takeFirst();
    if (first) read(first);
  }, []);
  const leave = (act: () => void) => (held.current ? held.current(act) : act());
  const readInstead = (file: File) => (isRead ? setLeaving({ act: () => read(file), reads: true }) : read(file));
  const drop = (event: DragEvent) => {
    event.preventDefault();
    event.stopPropagation();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file) readInstead(file);
  };
  return (
    <section
      className="import"
      aria-label={IMPORT.title}
      data-over={isOver || undefined}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div className="import-head">
        <button type="button" className="button button-plain" onClick={() => leave(() => onDone())}>
          <ChevronLeft className="icon" aria-hidden="true" />
          {IMPORT.back}
        </button>
        <h3 ref={heading} tabIndex={-1}>
          {IMPORT.title}
        </h3>
        {isRead && (
          <button type="button" className="button button-outlined" onClick={() => input.current?.click()}>
            <Upload className="icon" aria-hidden="true" />
            {IMPORT.again}
          </button>
        )}
        <input
          ref={input}
          type="file"
          accept={IMPORT.accept}
          hidden
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) readInstead(file);
          }}
        />
      </div>
      {leaving && (
        <p className="import-leave" role="alert">
          <strong>{leaving.reads ? IMPORT.instead : IMPORT.leave}</strong>{' '}
          <button type="button" className="button button-strong" onClick={() => setLeaving(null)}>
            {leaving.reads ? IMPORT.insteadNo : FINISH_FORM.leaveNo}
          </button>{' '}
          <button
            type="button"
            className="button button-outlined"
            onClick={() => {
              held.current = null;
              setLeaving(null);
              leaving.act();
            }}
          >
            {leaving.reads ? IMPORT.insteadYes : FINISH_FORM.leaveYes}
          </button>
        </p>
      )}
      {state.at === 'start' && (
        <div className="import-start">
          {state.problems.length > 0 && <ImportProblems problems={state.problems} />}
          <p>{IMPORT.intro}</p>
          <p className="import-choose">
            <button type="button" className="button button-strong" onClick={() => input.current?.click()}>
              <Upload className="icon" aria-hidden="true" />
              {IMPORT.choose}
            </button>
            <span className="quiet">{IMPORT.drop}</span>
          </p>
        </div>
      )}
      {state.at === 'reading' && (
        <div className="import-reading" aria-busy="true">
          <p>
            <strong>{state.file}</strong>
          </p>
          <label className="import-progress">
            <span role="status">{IMPORT.stages[state.progress.stage]}</span>
            <progress value={state.progress.share ?? undefined} max={1} />
          </label>
          <button type="button" className="button button-outlined" onClick={stop}>
            {IMPORT.stop}
          </button>
        </div>
      )}
      {state.at === 'sheet' && (
        <ImportPreview key={state.head.file} {...props} state={state} onChoices={choose} onStop={stop} />
      )}
      {state.at === 'library' && <LibraryPreview {...props} {...state} />}
    </section>
  );
}
