import { useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import { FIELD } from '../words/daylight';
import { problemAtField } from './field-problem';

interface NumberFieldProps {
  readonly label: string;
  readonly unit?: string;
  /** Null: nothing is given. */
  readonly value: number | null;
  readonly onValue: (value: number) => readonly Problem[];
  /** Where nothing may stand in the field. */
  readonly onEmpty?: () => readonly Problem[];
  readonly hint?: string;
  /** By what a drawing finds the field. */
  readonly path?: string;
  /** What was refused may fit once this changes: the field then shows its value again. */
  readonly basis?: unknown;
}

/**
 * A number that is taken when one leaves the field or presses Enter. What is refused stays in the field with the reason
 * under it, and what was there before stays in force.
 */
export function NumberField({ label, unit, value, onValue, onEmpty, hint, path, basis }: NumberFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<{
    readonly text: string;
    readonly over: number | null;
    readonly basis: unknown;
  } | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const isTyped = typed !== null && typed.over === value && typed.basis === basis;
  const text = isTyped ? typed.text : value === null ? '' : String(value);
  const wrong = isTyped ? refused : null;
  const take = () => {
    if (!isTyped) return;
    const plain = typed.text.trim().replace(',', '.').replace('\u2212', '-');
    const number = Number(plain);
    if (plain === '' ? !onEmpty : !Number.isFinite(number)) return setRefused(FIELD.notNumber);
    if (number === value && plain !== '') return setTyped(null);
    const [problem] = plain === '' ? onEmpty!() : onValue(number);
    setRefused(problem ? problemAtField(problem, label) : null);
    if (!problem) setTyped(null);
  };
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {unit && <span className="field-unit">, {unit}</span>}
      </label>
      <input
        id={id}
        className="input"
        data-field={path}
        inputMode="decimal"
        autoComplete="off"
        value={text}
        placeholder={hint}
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        onChange={(event) => {
          setTyped({ text: event.target.value, over: value, basis });
          setRefused(null);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      {wrong !== null && (
        <p id={`${id}-wrong`} className="small field-wrong" role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}
