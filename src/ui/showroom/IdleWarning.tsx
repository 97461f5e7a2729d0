import { useEffect, useRef } from 'react';
import { SHOWROOM } from '../words/showroom';
import './showroom.css';

export interface IdleWarningProps {
  readonly left_s: number;
  readonly onGoOn: () => void;
  readonly onStartOver: () => void;
}

/** Read out at these seconds: a reader that said every one would say nothing else. */
const SAID_EVERY_S = 10;

/** Asks whether anybody is still there. Esc and a touch beside it go on. */
export function IdleWarning({ left_s, onGoOn, onStartOver }: IdleWarningProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const said = Math.ceil(left_s / SAID_EVERY_S) * SAID_EVERY_S;
  return (
    <dialog
      ref={dialog}
      role="alertdialog"
      className="showroom-box"
      aria-labelledby="still-there"
      aria-describedby="starts-afresh"
      onCancel={(event) => {
        event.preventDefault();
        onGoOn();
      }}
      onPointerDown={(event) => {
        if (event.target === dialog.current) onGoOn();
      }}
    >
      <div className="showroom-inside">
        <h2 id="still-there" className="showroom-title">
          {SHOWROOM.stillThere}
        </h2>
        <p aria-hidden="true" className="showroom-left">
          {SHOWROOM.startsAfresh(left_s)}
        </p>
        <p id="starts-afresh" className="hidden-visually" aria-live="polite">
          {SHOWROOM.startsAfresh(said)}
        </p>
        <div className="showroom-acts">
          {/* biome-ignore lint/a11y/noAutofocus: it is what most would press, and a dialog takes the focus anyway */}
          <button type="button" className="button button-strong" autoFocus onClick={onGoOn}>
            {SHOWROOM.goOn}
          </button>
          <button type="button" className="button button-outlined" onClick={onStartOver}>
            {SHOWROOM.startOverNow}
          </button>
        </div>
      </div>
    </dialog>
  );
}
