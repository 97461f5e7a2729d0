import { useId, useRef, useState } from 'react';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly type?: 'text' | 'date';
  /** What counts while nothing is typed. */
  readonly hint?: string;
  /** Words to choose from besides typing. */
  readonly offered?: readonly string[];
  readonly lines?: number;
  /** `continues`: the same text is being typed on. */
  readonly onText: (text: string, continues: boolean) => void;
  readonly onLeave?: () => void;
}

/** Earlier years are half typed. */
const FIRST_DAY = '1900-01-01';

/** A text or a day, taken at every letter, so that it is kept at once; one step to undo for as long as the focus stays. */
export function TextField({ label, value, type = 'text', hint, offered, lines = 1, onText, onLeave }: TextFieldProps) {
  const id = useId();
  const goesOn = useRef(false);
  // A year is typed digit by digit: 0202 is on its way to 2027, and no day to count from.
  const [typed, setTyped] = useState<string | null>(null);
  const shared = {
    id,
    value: typed ?? value,
    placeholder: hint,
    onChange: ({ target }: { readonly target: { readonly value: string } }) => {
      const isUnderWay = type === 'date' && target.value !== '' && target.value < FIRST_DAY;
      setTyped(isUnderWay ? target.value : null);
      if (isUnderWay) return;
      onText(target.value, goesOn.current);
      goesOn.current = true;
    },
    onBlur: () => {
      goesOn.current = false;
      setTyped(null);
      onLeave?.();
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
