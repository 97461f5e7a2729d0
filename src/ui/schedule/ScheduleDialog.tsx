import { Download, History, Printer, X } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import { Choices } from '../parts/Choices';
import { listed } from '../words/numbers';
import { SCHEDULE } from '../words/schedule';
import { REVISIONS } from '../words/schedule-revisions';
import { AssumedForm } from './AssumedForm';
import { ItemList } from './ItemList';
import { JobForm } from './JobForm';
import { RevisionList } from './RevisionList';
import { SampleList } from './SampleList';
import type { ScheduleDoors } from './schedule-props';
import { TaggedDrawings } from './TaggedDrawings';
import './schedule.css';

interface ScheduleDialogProps extends ScheduleDoors {
  readonly onCsv: () => void;
  readonly onPrint: () => void;
  readonly onClose: () => void;
}

const VIEWS = ['items', 'samples', 'job', 'quantities', 'drawings', 'revisions'] as const;
type View = (typeof VIEWS)[number];

/** The list that is signed and ordered from, with what it rests on: items, samples, dates, quantities, tags on drawings, revisions. */
export function ScheduleDialog(props: ScheduleDialogProps) {
  const { past } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [view, setView] = useState<View>('items');
  // Counts how often somebody asked to freeze one: each time the name has the focus.
  const [asked, setAsked] = useState(0);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  // Else a button would have the focus that changes something at once, or one that is there no more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: wherever one comes to look
  useEffect(() => heading.current?.focus(), [past?.id]);
  const close = () => dialog.current?.close();
  const lookAt = (revision: string | null) => {
    setView('items');
    props.onLookAt(revision);
  };
  const isPast = past !== null;
  const views = VIEWS.filter((id) => !isPast || id !== 'revisions');
  return (
    <dialog ref={dialog} className="schedule" aria-labelledby={title} onClose={props.onClose}>
      <header className="schedule-head">
        <div className="schedule-title">
          <h2 id={title} ref={heading} tabIndex={-1}>
            {SCHEDULE.title} <span className="quiet">{SCHEDULE.ofOption(props.option)}</span>
          </h2>
          <p className="small quiet" role="status">
            {revisionWords(props)}
          </p>
        </div>
        <div className="schedule-ways">
          {isPast ? (
            <button type="button" className="button button-strong" onClick={() => lookAt(null)}>
              <History className="icon" aria-hidden="true" />
              {REVISIONS.back}
            </button>
          ) : (
            <button
              type="button"
              className="button button-outlined"
              disabled={props.isFrozen}
              title={props.isFrozen ? SCHEDULE.isFrozen : undefined}
              onClick={() => {
                setView('revisions');
                setAsked(asked + 1);
              }}
            >
              {SCHEDULE.freeze}
            </button>
          )}
          <button type="button" className="button button-outlined" onClick={props.onCsv}>
            <Download className="icon" aria-hidden="true" />
            {SCHEDULE.csv}
          </button>
          {!isPast && (
            <button type="button" className="button button-strong" onClick={props.onPrint}>
              <Printer className="icon" aria-hidden="true" />
              {SCHEDULE.print}
            </button>
          )}
          <button type="button" className="button button-outlined" onClick={close}>
            <X className="icon" aria-hidden="true" />
            {SCHEDULE.close}
          </button>
        </div>
        <Choices
          className="schedule-views"
          label={SCHEDULE.views}
          choices={views.map((id) => ({ id, name: SCHEDULE.view[id] }))}
          chosen={view}
          onChoose={(next) => {
            setAsked(0);
            setView(next);
          }}
        />
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reached by keys */}
      <section className="schedule-body" aria-label={SCHEDULE.view[view]} tabIndex={0}>
        {view === 'items' && <ItemList key={past?.id} {...props} />}
        {/* Stays made, so that what is half typed is still there when one comes back. */}
        <fieldset className="as-frozen" hidden={view !== 'samples'} disabled={isPast}>
          <SampleList key={past?.id} {...props} />
        </fieldset>
        {(view === 'job' || view === 'quantities') && (
          <fieldset className="as-frozen" disabled={isPast}>
            {view === 'job' ? <JobForm {...props} /> : <AssumedForm {...props} />}
          </fieldset>
        )}
        {view === 'drawings' && <TaggedDrawings {...props} />}
        {view === 'revisions' && (
          <RevisionList key={asked} doors={{ ...props, onLookAt: lookAt }} isAsked={asked > 0} />
        )}
      </section>
    </dialog>
  );
}

function revisionWords({ past, revisions, schedule, isFrozen }: ScheduleDoors): string {
  if (past) return REVISIONS.past(past.id, past.name, past.at);
  const latest = revisions.at(-1)?.id;
  if (latest === undefined) return SCHEDULE.notFrozen;
  const changed = schedule.rows.filter((row) => row.revision === null).map(({ id }) => id);
  if (changed.length > 0) return SCHEDULE.changedSince(latest, changed.length, listed(changed));
  return isFrozen ? SCHEDULE.frozenAs(latest) : REVISIONS.elsewhere(latest);
}
