import { useState } from 'react';
import { LIBRARIES } from '../words/libraries';

interface NameFormProps {
  readonly name: string;
  readonly note?: string;
  readonly label: string;
  readonly onName: (name: string, note: string) => void;
  readonly onCancel: () => void;
}

/** Longer than any line it stands in. */
const MOST_LETTERS = 80;

/** A name and a note; takes the focus. */
export function NameForm({ name, note = '', label, onName, onCancel }: NameFormProps) {
  const [typed, setTyped] = useState({ name, note });
  const isEmpty = typed.name.trim() === '';
  return (
    <form
      className="name-form"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        if (!isEmpty) onName(typed.name.trim(), typed.note.trim());
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        event.stopPropagation();
        onCancel();
      }}
    >
      <label className="field">
        <span className="label">{LIBRARIES.name}</span>
        <input
          className="input"
          // biome-ignore lint/a11y/noAutofocus: it comes where the button was that asked for it
          autoFocus
          value={typed.name}
          maxLength={MOST_LETTERS}
          aria-invalid={isEmpty}
          onFocus={(event) => event.target.select()}
          onChange={(event) => setTyped({ ...typed, name: event.target.value })}
        />
      </label>
      <label className="field">
        <span className="label">{LIBRARIES.note}</span>
        <input
          className="input"
          value={typed.note}
          maxLength={4 * MOST_LETTERS}
          onChange={(event) => setTyped({ ...typed, note: event.target.value })}
        />
      </label>
      {isEmpty && <p className="small">{LIBRARIES.emptyName}</p>}
      <div className="name-ways">
        <button type="submit" className="button button-strong" disabled={isEmpty}>
          {LIBRARIES.keepName}
        </button>
        <button type="button" className="button button-outlined" onClick={onCancel}>
          {LIBRARIES.cancel}
        </button>
      </div>
    </form>
  );
}
