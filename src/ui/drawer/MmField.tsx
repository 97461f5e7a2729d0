import { useId, useState } from 'react';
import type { Bounds } from '../../model/check-number';
import { mmOf, mmText, type TypedMm } from './mm-text';

interface MmFieldProps {
  readonly label: string;
  readonly mm: number | undefined;
  readonly bounds: Bounds;
  readonly problem: (least: number, most: number) => string;
  readonly onMm: (mm: number) => void;
}

/** A field for a length: keeps what is typed as long as the document agrees, and says what it takes where it is none. */
export function MmField({ label, mm, bounds, problem, onMm }: MmFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<TypedMm | null>(null);
  const text = mmText(typed, mm);
  const isWrong = text !== '' && mmOf(text, bounds) === null;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="input"
        inputMode="decimal"
        value={text}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : undefined}
        onChange={(event) => {
          const next = mmOf(event.target.value, bounds);
          setTyped({ text: event.target.value, mm: next ?? mm });
          if (next !== null) onMm(next);
        }}
      />
      {isWrong && (
        <p id={`${id}-wrong`} className="small">
          {problem(bounds[0], bounds[1])}
        </p>
      )}
    </div>
  );
}
