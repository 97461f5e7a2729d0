import { useId, useRef } from 'react';

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  /** `continues`: the same note is being typed on. */
  readonly onNote: (note: string, continues: boolean) => void;
}

/** A note to type: taken at every letter, so that it is kept at once; one step to undo for as long as the focus stays. */
export function NoteField({ label, value, onNote }: NoteFieldProps) {
  const id = useId();
  const goesOn = useRef(false);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        className="input project-note"
        rows={2}
        value={value}
        onChange={(event) => {
          onNote(event.target.value, goesOn.current);
          goesOn.current = true;
        }}
        onBlur={() => {
          goesOn.current = false;
        }}
      />
    </div>
  );
}
