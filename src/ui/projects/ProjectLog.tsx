import { type FormEvent, useId, useState } from 'react';
import type { LogEntry } from '../../model/log';
import { momentText, PROJECTS } from '../words/projects';
import { retold } from '../words/spoken';

interface ProjectLogProps {
  /** Oldest first. */
  readonly log: readonly LogEntry[];
  readonly onAdd: (text: string) => void;
  readonly onRemove: (entry: number) => void;
}

/** As many lines as one looks back over at a glance. */
const SHOWN_AT_FIRST = 8;

/** The log, newest first; one's own notes can be added and taken out. */
export function ProjectLog({ log, onAdd, onRemove }: ProjectLogProps) {
  const field = useId();
  const [text, setText] = useState('');
  const [all, setAll] = useState(false);
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return;
    onAdd(text.trim());
    setText('');
  };
  const newest = log.map((entry, at) => ({ entry, at })).reverse();
  const shown = all ? newest : newest.slice(0, SHOWN_AT_FIRST);
  return (
    <>
      <p className="small quiet">{PROJECTS.logNote}</p>
      <form className="project-row" onSubmit={add}>
        <div className="field">
          <label htmlFor={field}>{PROJECTS.addNote}</label>
          <input
            id={field}
            className="input"
            value={text}
            autoComplete="off"
            onChange={(event) => setText(event.target.value)}
          />
        </div>
        <button type="submit" className="button button-outlined" disabled={text.trim() === ''}>
          {PROJECTS.add}
        </button>
      </form>
      {log.length === 0 && <p className="small">{PROJECTS.logEmpty}</p>}
      <ul className="project-log">
        {shown.map(({ entry, at }) => (
          <li key={at}>
            <p className="small quiet">
              {PROJECTS.entryOf[entry.kind]}, {momentText(entry.at)}
            </p>
            <p className={entry.kind === 'note' ? '' : 'project-strong'}>
              {entry.kind === 'decision' ? retold(entry.text) : entry.text}
            </p>
            {entry.kind === 'note' && (
              <button
                type="button"
                className="button button-plain"
                aria-label={PROJECTS.of(PROJECTS.remove, entry.text)}
                onClick={() => onRemove(at)}
              >
                {PROJECTS.remove}
              </button>
            )}
          </li>
        ))}
      </ul>
      {shown.length < log.length && (
        <button type="button" className="button button-plain project-more" onClick={() => setAll(true)}>
          {PROJECTS.allEntries(log.length)}
        </button>
      )}
    </>
  );
}
