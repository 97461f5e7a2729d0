import { useId } from 'react';
import { conditionsWords, D65_AT_2 } from '../../engine/finish/conditions';
import { TYPE_IN } from '../words/drawer';
import { type OwnFinishEntry, withValue } from './own-finish';
import { SpectrumField } from './SpectrumField';

interface ColorBoxProps {
  readonly entry: OwnFinishEntry;
  readonly isWrong: boolean;
  /** Id of the panel that says what the color means. */
  readonly meaningId: string;
  readonly onEntry: (change: (before: OwnFinishEntry) => OwnFinishEntry) => void;
}

/** The color itself, as wide as a line from a data sheet. */
export function ColorBox({ entry, isWrong, meaningId, onEntry }: ColorBoxProps) {
  const id = useId();
  const { kind, conditions = D65_AT_2 } = entry;
  if (kind === 'spectrum') {
    return (
      <SpectrumField
        {...(entry.spectrum && { opened: entry.spectrum })}
        onOpened={(spectrum) => onEntry((before) => ({ ...before, spectrum }))}
      />
    );
  }
  return (
    <div className="field type-in-color">
      <label htmlFor={id}>{TYPE_IN.labels[kind](conditionsWords(conditions))}</label>
      <input
        id={id}
        className="input"
        value={entry.value}
        placeholder={TYPE_IN.hints[kind]}
        aria-invalid={isWrong}
        aria-describedby={meaningId}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => onEntry((before) => withValue(before, event.target.value))}
      />
    </div>
  );
}
