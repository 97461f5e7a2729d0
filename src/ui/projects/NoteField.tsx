import { useEffect, useId, useRef, useState } from 'react';

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  /** `continues`: the same note is being typed on. */
  readonly onNote: (note: string, continues: boolean) => void;
}

/** What is typed is taken this often, ms: a tab that is killed loses no more of it. */
const TAKE_MS = 250;

/** A note to type: taken as one types, and when the field is left; one step to undo for as long as the focus stays. */
export function NoteField({ label, value, onNote }: NoteFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const goesOn = useRef(false);
  const take = () => {
    if (typed === null || typed === value) return;
    onNote(typed, goesOn.current);
    goesOn.current = true;
  };
  const latest = useRef(take);
  useEffect(() => {
    latest.current = take;
  });
  const isTyping = typed !== null;
  useEffect(() => {
    if (!isTyping) return;
    const taking = window.setInterval(() => latest.current(), TAKE_MS);
    return () => window.clearInterval(taking);
  }, [isTyping]);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        className="input project-note"
        rows={2}
        value={typed ?? value}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => {
          take();
          setTyped(null);
          goesOn.current = false;
        }}
      />
    </div>
  );
}
