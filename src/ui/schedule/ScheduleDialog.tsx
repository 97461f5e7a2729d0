import { Download, Printer, X } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import { Choices } from '../parts/Choices';
import { listed } from '../words/numbers';
import { SCHEDULE } from '../words/schedule';
import { AssumedForm } from './AssumedForm';
import { ItemList } from './ItemList';
import { JobForm } from './JobForm';
import { SampleList } from './SampleList';
import type { ScheduleDoors } from './schedule-props';
import { TaggedDrawings } from './TaggedDrawings';
import './schedule.css';

interface ScheduleDialogProps extends ScheduleDoors {
  readonly onCsv: () => void;
  readonly onPrint: () => void;
  readonly onFreeze: () => void;
  readonly onClose: () => void;
}

const VIEWS = ['items', 'samples', 'job', 'quantities', 'drawings'] as const;
type View = (typeof VIEWS)[number];

/** The list that is signed and ordered from, with what it rests on: items, samples, dates, quantities, tags on drawings. */
export function ScheduleDialog(props: ScheduleDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [view, setView] = useState<View>('items');
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    // Else a button would have the focus that changes something at once.
    heading.current?.focus();
  }, []);
  const close = () => dialog.current?.close();
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
          <button
            type="button"
            className="button button-outlined"
            disabled={props.isFrozen}
            title={props.isFrozen ? SCHEDULE.isFrozen : undefined}
            onClick={props.onFreeze}
          >
            {SCHEDULE.freeze}
          </button>
          <button type="button" className="button button-outlined" onClick={props.onCsv}>
            <Download className="icon" aria-hidden="true" />
            {SCHEDULE.csv}
          </button>
          <button type="button" className="button button-strong" onClick={props.onPrint}>
            <Printer className="icon" aria-hidden="true" />
            {SCHEDULE.print}
          </button>
          <button type="button" className="button button-outlined" onClick={close}>
            <X className="icon" aria-hidden="true" />
            {SCHEDULE.close}
          </button>
        </div>
        <Choices
          className="schedule-views"
          label={SCHEDULE.views}
          choices={VIEWS.map((id) => ({ id, name: SCHEDULE.view[id] }))}
          chosen={view}
          onChoose={setView}
        />
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reached by keys */}
      <section className="schedule-body" aria-label={SCHEDULE.view[view]} tabIndex={0}>
        {view === 'items' && <ItemList {...props} />}
        {/* Stays made, so that what is half typed is still there when one comes back. */}
        <div hidden={view !== 'samples'}>
          <SampleList {...props} />
        </div>
        {view === 'job' && <JobForm {...props} />}
        {view === 'quantities' && <AssumedForm {...props} />}
        {view === 'drawings' && <TaggedDrawings {...props} />}
      </section>
    </dialog>
  );
}

function revisionWords({ revision, schedule }: ScheduleDoors): string {
  if (revision === null) return SCHEDULE.notFrozen;
  const changed = schedule.rows.filter((row) => row.revision === null).map(({ id }) => id);
  return changed.length === 0
    ? SCHEDULE.frozenAs(revision)
    : SCHEDULE.changedSince(revision, changed.length, listed(changed));
}
