import { useId, useState } from 'react';
import type { Bounds } from '../../model/check-number';
import { boundsText, type LengthUnit } from '../../model/length-text';
import { FIELD } from '../words/daylight';
import { unitNow } from '../words/spoken';
import { mmOf, mmText, type TypedMm } from './mm-text';

interface MmFieldProps {
  readonly label: string;
  readonly mm: number | undefined;
  readonly bounds: Bounds;
  readonly problem: (least: string, most: string, unit: string) => string;
  readonly onMm: (mm: number) => void;
}

/** A field for a length: keeps what is typed as long as the document agrees, and says what it takes where it is none. */
export function MmField({ label, mm, bounds, problem, onMm }: MmFieldProps) {
  const id = useId();
  const unit = unitNow();
  const [typed, setTyped] = useState<(TypedMm & { readonly unit: LengthUnit }) | null>(null);
  const text = mmText(typed?.unit === unit ? typed : null, mm, unit);
  const isWrong = text !== '' && mmOf(text, bounds, unit) === null;
  const name = FIELD.lengthUnits[unit];
  return (
    <div className="field">
      <label htmlFor={id}>{FIELD.withUnit(label, name)}</label>
      <input
        id={id}
        className="input"
        inputMode={unit === 'mm' ? 'decimal' : 'text'}
        value={text}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : undefined}
        onChange={(event) => {
          const next = mmOf(event.target.value, bounds, unit);
          setTyped({ text: event.target.value, mm: next ?? mm, unit });
          if (next !== null) onMm(next);
        }}
      />
      {isWrong && (
        <p id={`${id}-wrong`} className="small">
          {problem(...boundsText([bounds[0], bounds[1]], unit), name)}
        </p>
      )}
    </div>
  );
}
