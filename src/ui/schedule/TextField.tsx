import { useId, useRef } from 'react';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly type?: 'text' | 'date';
  /** Words to choose from besides typing. */
  readonly offered?: readonly string[];
  readonly lines?: number;
  /** `continues`: the same text is being typed on. */
  readonly onText: (text: string, continues: boolean) => void;
}

/** A text or a day, taken at every letter, so that it is kept at once; one step to undo for as long as the focus stays. */
export function TextField({ label, value, type = 'text', offered, lines = 1, onText }: TextFieldProps) {
  const id = useId();
  const goesOn = useRef(false);
  const shared = {
    id,
    value,
    onChange: (event: { readonly target: { readonly value: string } }) => {
      onText(event.target.value, goesOn.current);
      goesOn.current = true;
    },
    onBlur: () => {
      goesOn.current = false;
    },
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {lines > 1 ? (
        <textarea {...shared} className="input project-note" rows={lines} />
      ) : (
        <input {...shared} className="input" type={type} autoComplete="off" list={offered && `${id}-offered`} />
      )}
      {offered && (
        <datalist id={`${id}-offered`}>
          {offered.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
    </div>
  );
}
