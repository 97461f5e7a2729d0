import { useEffect, useId, useRef } from 'react';
import type { Project } from '../../model/project';
import { LINK } from '../words/link';
import './link.css';

interface LinkDialogProps {
  readonly project: Project;
  readonly onOpen: () => void;
  readonly onLeave: () => void;
}

/** What a link brings, to open or to leave; Esc leaves it. */
export function LinkDialog({ project, onOpen, onLeave }: LinkDialogProps) {
  const title = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const { name, kitchen, library, settings, options } = project;
  return (
    <dialog
      ref={dialog}
      className="link-dialog"
      aria-labelledby={title}
      onClose={() => (dialog.current?.returnValue === 'open' ? onOpen() : onLeave())}
    >
      <h2 id={title}>{LINK.brings(options[0]!.name)}</h2>
      <p>{LINK.contents(name, kitchen.name, library.length, settings.length)}</p>
      <p className="small quiet">{LINK.beside}</p>
      <form method="dialog">
        <button type="submit" value="open" className="button button-strong">
          {LINK.open}
        </button>
        <button type="submit" value="leave" className="button button-outlined">
          {LINK.leave}
        </button>
      </form>
    </dialog>
  );
}
