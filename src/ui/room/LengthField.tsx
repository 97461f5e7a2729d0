import { RotateCcw } from 'lucide-react';
import { type KeyboardEvent, useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import {
  boundsText,
  type LengthUnit,
  lengthText,
  lengthWords,
  MM_PER_INCH,
  meantLength,
  parseLength,
} from '../../model/length-text';
import { inUnit } from '../../model/unit-words';
import { useDrag } from '../picture/use-drag';
import { KITCHEN } from '../words/kitchen';
import { problemAtField } from './field-problem';
import './length-field.css';

interface LengthFieldProps {
  readonly label: string;
  /** By what a drawing or a problem finds the field: the place of the value in the kitchen. */
  readonly path: string;
  readonly unit: LengthUnit;
  /** mm. */
  readonly value: number;
  /** What may stand here at all, mm; what else must fit is told by `onValue`. */
  readonly allowed: readonly [least: number, most: number];
  /** What is usual in the region, mm; absent where nothing is. */
  readonly usual?: number;
  /** `continues`: the change belongs to the one before (a held key is one step). */
  readonly onValue: (mm: number, continues: boolean) => readonly Problem[];
  /** What was refused may fit once this changes: the field then shows its value again. */
  readonly basis?: unknown;
}

const OTHER_UNIT: { readonly [U in LengthUnit]: LengthUnit } = { mm: 'in', in: 'mm' };
const STEP_MM: { readonly [U in LengthUnit]: number } = { mm: 10, in: MM_PER_INCH / 2 };

/**
 * A length in mm or inches, taken when one leaves the field or presses Enter; arrow keys step it. What is refused stays in
 * the field with the reason and what to do under it, and what was there before stays in force.
 */
export function LengthField(props: LengthFieldProps) {
  const { label, unit, value, usual, basis } = props;
  const [least, most] = props.allowed;
  const [from, to] = boundsText(props.allowed, unit);
  const id = useId();
  const [typed, setTyped] = useState<Typed | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const { continues, ends } = useDrag();
  const isTyped = typed !== null && typed.over === value && typed.unit === unit && typed.basis === basis;
  const text = isTyped ? typed.text : lengthText(value, unit);
  const wrong = isTyped ? refused : null;
  const hold = (next: string) => setTyped({ text: next, over: value, unit, basis });
  /** Takes a length and shows what came of it; what was refused stays as text. */
  const give = (mm: number, as: string, goesOn = false) => {
    const said =
      mm < least - TOLERANCE_MM || mm > most + TOLERANCE_MM
        ? KITCHEN.notAllowed(lengthWords(mm, unit), from, `${to} ${unit}`, meantLength(as, [least, most], unit))
        : problemWords(props.onValue(Math.min(most, Math.max(least, mm)), goesOn), label, unit);
    setRefused(said);
    if (said === null) setTyped(null);
    else hold(as);
  };
  const take = () => {
    if (!isTyped || refused !== null) return;
    const mm = parseLength(typed.text, unit);
    // What is there is allowed: the example is one that would be taken.
    if (mm === null) setRefused(KITCHEN.notLength[unit](lengthText(value, unit), lengthWords(value, OTHER_UNIT[unit])));
    else if (lengthText(mm, unit) === lengthText(value, unit)) setTyped(null);
    else give(mm, typed.text);
  };
  const step = (event: KeyboardEvent) => {
    if (event.key === 'Enter') return take();
    const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (way === 0 || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const start = (isTyped ? parseLength(typed.text, unit) : null) ?? value;
    const by = STEP_MM[unit];
    // The next mark of the ruler, so that steps from an odd value become even ones.
    const next = way > 0 ? Math.floor(start / by + 1 + 1e-3) * by : Math.ceil(start / by - 1 - 1e-3) * by;
    if (next >= 0) give(next, lengthText(next, unit), continues());
  };
  const isUnusual = usual !== undefined && lengthText(usual, unit) !== lengthText(value, unit);
  return (
    <div className="field length-field">
      <label htmlFor={id}>
        {label}
        <span className="field-unit">, {KITCHEN.unitName[unit]}</span>
      </label>
      <div className="length-row">
        <input
          id={id}
          className="input"
          inputMode={unit === 'mm' ? 'decimal' : 'text'}
          autoComplete="off"
          data-field={props.path}
          value={text}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? `${id}-allowed` : `${id}-wrong ${id}-allowed`}
          onChange={(event) => {
            hold(event.target.value);
            setRefused(null);
          }}
          onBlur={() => {
            ends.onBlur();
            take();
          }}
          onKeyUp={ends.onKeyUp}
          onKeyDown={step}
        />
        {isUnusual && (
          <button
            type="button"
            className="button button-outlined length-reset"
            title={KITCHEN.usually(lengthWords(usual, unit))}
            aria-label={KITCHEN.resetOf(label, lengthWords(usual, unit))}
            onClick={() => give(usual, lengthText(usual, unit))}
          >
            <RotateCcw className="icon" aria-hidden="true" />
          </button>
        )}
      </div>
      <p id={`${id}-allowed`} className="small quiet length-allowed">
        {KITCHEN.between(from, to, KITCHEN.unitName[unit])}
      </p>
      {wrong !== null && (
        <p id={`${id}-wrong`} className="small field-wrong" role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}

interface Typed {
  readonly text: string;
  readonly over: number;
  readonly unit: LengthUnit;
  readonly basis: unknown;
}

/** A bound shown to the sixteenth may be typed as it is shown. */
const TOLERANCE_MM = MM_PER_INCH / 32;

const problemWords = ([problem]: readonly Problem[], label: string, unit: LengthUnit): string | null =>
  problem ? inUnit(problemAtField(problem, label), unit) : null;
