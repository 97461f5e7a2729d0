import { useEffect, useRef } from 'react';
import { KEYS_HELP } from '../words/top-bar';

/** The keys that do something, in a native modal dialog. */
export function KeysHelp({ onClose }: { readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="keys" aria-labelledby="keys-title" onClose={onClose}>
      <h2 id="keys-title" className="keys-title">
        {KEYS_HELP.title}
      </h2>
      <dl className="keys-list">
        {KEYS_HELP.rows.map(([keys, does]) => (
          <div key={keys} className="keys-row">
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p className="small quiet">{KEYS_HELP.note}</p>
      <form method="dialog">
        <button type="submit" className="button button-strong">
          {KEYS_HELP.close}
        </button>
      </form>
    </dialog>
  );
}
