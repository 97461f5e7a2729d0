import { Printer, X } from 'lucide-react';
import { useEffect, useId, useRef } from 'react';
import type { Job } from '../../model/order/records';
import type { Option, Setting } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { FreezeForm } from '../revisions/FreezeForm';
import { TextField } from '../schedule/TextField';
import { HANDOVER } from '../words/handover';
import { settingNames } from '../words/picture';
import { PROJECTS } from '../words/projects';
import type { SheetPart } from './blocks';
import { type Paper, Sheets } from './Sheets';
import './handover.css';

/** What the set is made with; kept by whoever shows the dialog. */
export interface HandoverChoices {
  readonly paper: Paper;
  /** Ids of the options in it, the one to sign among them. */
  readonly options: readonly string[];
  readonly signed: string;
  readonly day: string;
  readonly evening: string;
  readonly onePage: boolean;
}

/** How far the drawing of the views is; null once all are there. */
export interface HandoverProgress {
  readonly option: string;
  readonly setting: string;
  readonly done: number;
  readonly of: number;
  /** Somebody stopped it. */
  readonly isStopped: boolean;
}

export interface HandoverDialogProps {
  readonly options: readonly Option[];
  readonly settings: readonly Setting[];
  readonly choices: HandoverChoices;
  readonly onChoices: (change: Partial<HandoverChoices>) => void;
  /** Whom it is for and by whom: kept with the schedule. */
  readonly job: Job;
  readonly onJob: (job: Job, continues: boolean) => void;
  /** How to freeze the project, for the set to be signed; null where it is as frozen. */
  readonly freezing: { readonly revisions: number; readonly onFreeze: (name: string, note: string) => void } | null;
  readonly parts: readonly SheetPart[];
  readonly running: string;
  readonly progress: HandoverProgress | null;
  readonly onStop: () => void;
  readonly onGoOn: () => void;
  readonly onPrint: () => void;
  readonly onClose: () => void;
}

/** The pages of the handover set as they will print, over the whole window, with what one may choose about them. */
export function HandoverDialog(props: HandoverDialogProps) {
  const { options, choices, onChoices, job, onJob, freezing, parts, running, progress } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const id = useId();
  const isBusy = progress !== null && !progress.isStopped;
  const settings = settingNames(props.settings).map((name, i) => [props.settings[i]!.id, name] as const);
  useEffect(() => {
    // Not by showModal: what a browser puts above everything prints on one page only.
    const before = document.activeElement;
    const behind = document.querySelectorAll<HTMLElement>('.screen');
    for (const one of behind) one.inert = true;
    dialog.current?.show();
    title.current?.focus();
    return () => {
      for (const one of behind) one.inert = false;
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  const { onClose } = props;
  // Wherever the focus is: a button that goes once all is drawn takes it along.
  useEffect(() => {
    const close = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      onClose();
    };
    window.addEventListener('keydown', close);
    return () => window.removeEventListener('keydown', close);
  }, [onClose]);
  return (
    <dialog ref={dialog} className="handover" aria-modal="true" aria-labelledby={id} aria-busy={isBusy}>
      <header className="handover-head">
        <div className="handover-title">
          <h2 id={id} ref={title} tabIndex={-1}>
            {HANDOVER.title}
          </h2>
          <Progress {...props} />
          <div className="handover-acts">
            <button type="button" className="button button-strong" disabled={isBusy} onClick={props.onPrint}>
              <Printer className="icon" aria-hidden="true" />
              {HANDOVER.print}
            </button>
            <button type="button" className="button button-outlined" onClick={props.onClose}>
              <X className="icon" aria-hidden="true" />
              {HANDOVER.close}
            </button>
          </div>
        </div>
        <div className="handover-choices">
          <div className="field">
            <span className="label">{HANDOVER.paper}</span>
            <Choices
              label={HANDOVER.paper}
              choices={HANDOVER.papers}
              chosen={choices.paper}
              onChoose={(paper) => onChoices({ paper })}
            />
          </div>
          {options.length > 1 && (
            <Menu
              label={HANDOVER.signed}
              value={choices.signed}
              choices={options.map((option) => [option.id, option.name] as const)}
              onChoose={(signed) => onChoices({ signed, options: [...new Set([...choices.options, signed])] })}
            />
          )}
          {options.length > 1 && !choices.onePage && (
            <fieldset className="handover-options">
              <legend className="small quiet">{HANDOVER.options}</legend>
              {options.map((option) => (
                <label key={option.id} className="check">
                  <input
                    type="checkbox"
                    checked={choices.options.includes(option.id)}
                    disabled={option.id === choices.signed}
                    onChange={({ target }) =>
                      onChoices({
                        options: options
                          .map((one) => one.id)
                          .filter((one) => (one === option.id ? target.checked : choices.options.includes(one))),
                      })
                    }
                  />
                  {option.name}
                </label>
              ))}
            </fieldset>
          )}
          <Menu label={HANDOVER.day} value={choices.day} choices={settings} onChoose={(day) => onChoices({ day })} />
          <Menu
            label={HANDOVER.evening}
            value={choices.evening}
            choices={settings}
            onChoose={(evening) => onChoices({ evening })}
          />
          <TextField
            label={HANDOVER.preparedFor}
            value={job.prepared_for ?? ''}
            onText={(prepared_for, continues) => onJob({ ...job, prepared_for }, continues)}
          />
          <TextField
            label={HANDOVER.preparedBy}
            value={job.prepared_by ?? ''}
            onText={(prepared_by, continues) => onJob({ ...job, prepared_by }, continues)}
          />
          <label className="check">
            <input
              type="checkbox"
              checked={choices.onePage}
              onChange={({ target }) => onChoices({ onePage: target.checked })}
            />
            {HANDOVER.onePage}
          </label>
          {freezing && (
            <details className="handover-freeze">
              <summary>{HANDOVER.freeze}</summary>
              <FreezeForm usual={PROJECTS.revisionUsual(freezing.revisions + 1)} onFreeze={freezing.onFreeze} />
            </details>
          )}
        </div>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard */}
      <section className="handover-pages ring-inside" aria-label={HANDOVER.pages} tabIndex={0}>
        <Sheets paper={choices.paper} parts={parts} running={running} />
      </section>
    </dialog>
  );
}

function Progress({ progress, onStop, onGoOn }: HandoverDialogProps) {
  const { option = '', setting = '', done = 0, of = 0, isStopped = false } = progress ?? {};
  return (
    <div className="handover-progress small">
      <p role="status">
        {progress === null
          ? HANDOVER.printHint
          : isStopped
            ? HANDOVER.stopped(of - done)
            : HANDOVER.making(option, setting, done, of)}
      </p>
      {progress && (
        <>
          <progress value={done} max={of} aria-label={HANDOVER.title} />
          <button type="button" className="button button-outlined" onClick={isStopped ? onGoOn : onStop}>
            {isStopped ? HANDOVER.goOn : HANDOVER.stop}
          </button>
        </>
      )}
    </div>
  );
}
