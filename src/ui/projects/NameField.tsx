import { useId, useState } from 'react';

interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  /** Said when it is left empty, which keeps the name there was. */
  readonly whenEmpty: string;
  readonly onName: (name: string) => void;
}

/** A name to type: taken when the field is left or by Enter, given up by Esc. */
export function NameField({ label, value, whenEmpty, onName }: NameFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const isEmpty = typed !== null && typed.trim() === '';
  const take = () => {
    setTyped(null);
    const name = typed?.trim() ?? '';
    if (name !== '' && name !== value) onName(name);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="input"
        value={typed ?? value}
        autoComplete="off"
        aria-invalid={isEmpty}
        aria-describedby={isEmpty ? `${id}-empty` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key !== 'Escape' || typed === null) return;
          event.stopPropagation();
          setTyped(null);
        }}
      />
      {isEmpty && (
        <p id={`${id}-empty`} className="small field-wrong">
          {whenEmpty}
        </p>
      )}
    </div>
  );
}
