import { useId, useRef, useState } from 'react';

interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  /** Said when it is left empty, which keeps the name there was. */
  readonly whenEmpty: string;
  /** Taken at every letter, so that it is kept and shown at once, and one step to undo; else when the field is left. */
  readonly isLive?: boolean;
  /** `continues`: the same name is being typed on. */
  readonly onName: (name: string, continues: boolean) => void;
}

/** A name to type: taken when the field is left or by Enter, or as it is typed; given up by Esc. */
export function NameField({ label, value, whenEmpty, isLive = false, onName }: NameFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const isEmpty = typed !== null && typed.trim() === '';
  /** The name before it was typed on; null while nobody types. */
  const before = useRef<string | null>(null);
  const give = (text: string) => {
    const name = text.trim();
    if (name === '' || name === value) return;
    onName(name, before.current !== null);
    before.current ??= value;
  };
  const take = () => {
    setTyped(null);
    give(typed ?? '');
    before.current = null;
  };
  const type = (text: string) => {
    setTyped(text);
    if (isLive) give(text);
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
        onChange={(event) => type(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key !== 'Escape' || typed === null) return;
          event.stopPropagation();
          if (before.current !== null) give(before.current);
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
