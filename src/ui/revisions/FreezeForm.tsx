import { type FormEvent, type Ref, useId, useState } from 'react';
import { PROJECTS } from '../words/projects';
import './revisions.css';

interface FreezeFormProps {
  readonly ref?: Ref<HTMLInputElement>;
  /** The name it gets when none is typed. */
  readonly usual: string;
  readonly onFreeze: (name: string, note: string) => void;
}

/** Freezes the project as it is, under a name and with a note; `ref` is the field of the name. */
export function FreezeForm({ ref, usual, onFreeze }: FreezeFormProps) {
  const id = useId();
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const freeze = (event: FormEvent) => {
    event.preventDefault();
    onFreeze(name.trim() || usual, note.trim());
    setName('');
    setNote('');
  };
  return (
    <form className="freeze-form" onSubmit={freeze}>
      <div className="field">
        <label htmlFor={`${id}-name`}>{PROJECTS.revisionName}</label>
        <input
          ref={ref}
          id={`${id}-name`}
          className="input"
          value={name}
          placeholder={usual}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
      </div>
      <div className="field">
        <label htmlFor={`${id}-note`}>{PROJECTS.revisionNote}</label>
        <input
          id={`${id}-note`}
          className="input"
          value={note}
          autoComplete="off"
          onChange={(event) => setNote(event.target.value)}
        />
      </div>
      <button type="submit" className="button button-outlined">
        {PROJECTS.freeze}
      </button>
    </form>
  );
}
