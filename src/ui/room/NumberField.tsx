import { useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import { problemAtField } from './field-problem';
import { LENGTH, type Measure, PLAIN } from './measures';

interface NumberFieldProps {
  readonly label: string;
  readonly unit?: string;
  /** What kind of number it is; absent: a plain one. */
  readonly measure?: Measure;
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
export function NumberField({
  label,
  measure = PLAIN,
  value,
  onValue,
  onEmpty,
  hint,
  path,
  basis,
  ...given
}: NumberFieldProps) {
  const id = useId();
  const unit = given.unit ?? measure.unit();
  const [typed, setTyped] = useState<{
    readonly text: string;
    readonly over: number | null;
    readonly basis: unknown;
    readonly unit: string;
  } | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const isTyped = typed !== null && typed.over === value && typed.basis === basis && typed.unit === unit;
  const text = isTyped ? typed.text : value === null ? '' : measure.text(value);
  const wrong = isTyped ? refused : null;
  const take = () => {
    if (!isTyped) return;
    const isEmpty = typed.text.trim() === '' && onEmpty !== undefined;
    const number = isEmpty ? null : measure.read(typed.text);
    if (number === null && !isEmpty) return setRefused(measure.wrong());
    // The same to look at is the same: a number is not changed by being shown in other units.
    if (number !== null && value !== null && measure.text(number) === measure.text(value)) return setTyped(null);
    const [problem] = number === null ? onEmpty!() : onValue(number);
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
        inputMode={measure === LENGTH && unit === 'in' ? 'text' : 'decimal'}
        autoComplete="off"
        value={text}
        placeholder={hint}
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        onChange={(event) => {
          setTyped({ text: event.target.value, over: value, basis, unit });
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
