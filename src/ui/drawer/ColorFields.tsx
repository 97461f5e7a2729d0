import { useId } from 'react';
import { conditionsWords, D65_AT_2 } from '../../engine/finish/conditions';
import type { Conditions } from '../../engine/finish/given-color';
import { TYPE_IN } from '../words/drawer';
import { Menu } from './Menu';
import { isMeasured, isNumbers, NUMBER_KINDS, type OwnFinishEntry, withValue } from './own-finish';
import { SpectrumField } from './SpectrumField';

interface ColorFieldsProps {
  readonly entry: OwnFinishEntry;
  readonly isWrong: boolean;
  /** Id of the panel that says what the color means. */
  readonly meaningId: string;
  readonly onEntry: (change: (before: OwnFinishEntry) => OwnFinishEntry) => void;
}

const UNDER: readonly Conditions[] = [
  D65_AT_2,
  { illuminant: 'D65', observer_deg: 10 },
  { illuminant: 'D50', observer_deg: 2 },
  { illuminant: 'D50', observer_deg: 10 },
  { illuminant: 'C', observer_deg: 2 },
  { illuminant: 'A', observer_deg: 2 },
  { illuminant: 'A', observer_deg: 10 },
];

const SPECULARS = ['unsaid', 'included', 'excluded'] as const;
const SPACES = ['srgb', 'display-p3'] as const;

/** The color itself and what belongs to its kind: light and observer of numbers, the space of a hex code, a printed LRV. */
export function ColorFields({ entry, isWrong, meaningId, onEntry }: ColorFieldsProps) {
  const id = useId();
  const { kind, conditions = D65_AT_2 } = entry;
  const under = conditionsWords(conditions);
  const change = (changes: Partial<OwnFinishEntry>) => onEntry((before) => ({ ...before, ...changes }));
  // A pasted line may name a light that is not on the list.
  const choices = UNDER.some((one) => conditionsWords(one) === under) ? UNDER : [...UNDER, conditions];
  return (
    <>
      {isNumbers(kind) && (
        <Menu
          label={TYPE_IN.numbers}
          value={kind}
          choices={NUMBER_KINDS.map((one) => [one, TYPE_IN.numbersOf[one]])}
          onChoose={(one) => change({ kind: one })}
        />
      )}
      {kind === 'spectrum' ? (
        <SpectrumField
          {...(entry.spectrum && { opened: entry.spectrum })}
          onOpened={(spectrum) => change({ spectrum })}
        />
      ) : (
        <div className="field">
          <label htmlFor={`${id}-value`}>{TYPE_IN.labels[kind](under)}</label>
          <input
            id={`${id}-value`}
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
      )}
      {isNumbers(kind) && (
        <Menu
          label={TYPE_IN.conditions}
          value={under}
          choices={choices.map((one) => {
            const words = conditionsWords(one);
            return [words, TYPE_IN.conditionsOf[words] ?? words];
          })}
          onChoose={(words) => change({ conditions: choices.find((one) => conditionsWords(one) === words)! })}
        />
      )}
      {isMeasured(kind) && (
        <Menu
          label={TYPE_IN.specular}
          value={entry.specular ?? 'unsaid'}
          choices={SPECULARS.map((one) => [one, TYPE_IN.speculars[one]])}
          onChoose={(specular) => change({ specular })}
        />
      )}
      {kind === 'hex' && (
        <Menu
          label={TYPE_IN.space}
          value={entry.space ?? 'srgb'}
          choices={SPACES.map((one) => [one, TYPE_IN.spaces[one]])}
          onChoose={(space) => change({ space })}
        />
      )}
      {kind !== 'lrv' && (
        <div className="field">
          <label htmlFor={`${id}-lrv`}>{TYPE_IN.lrv}</label>
          <input
            id={`${id}-lrv`}
            className="input"
            value={entry.lrv ?? ''}
            placeholder={TYPE_IN.lrvHint}
            inputMode="decimal"
            autoComplete="off"
            onChange={(event) => change({ lrv: event.target.value })}
          />
        </div>
      )}
    </>
  );
}
