import { useId } from 'react';
import { conditionsWords, D65_AT_2 } from '../../engine/finish/conditions';
import type { Conditions } from '../../engine/finish/given-color';
import { TYPE_IN } from '../words/drawer';
import { Menu } from './Menu';
import { isMeasured, isNumbers, NUMBER_KINDS, type OwnFinishEntry } from './own-finish';

interface ColorDetailsProps {
  readonly entry: OwnFinishEntry;
  readonly onChange: (changes: Partial<OwnFinishEntry>) => void;
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

/**
 * What belongs to a kind of color. Light and observer of numbers come first: without them numbers are half a color, and
 * what stands last may need a scroll to be seen.
 */
export function ColorDetails({ entry, onChange }: ColorDetailsProps) {
  const id = useId();
  const { kind, conditions = D65_AT_2 } = entry;
  const under = conditionsWords(conditions);
  // A pasted line may name a light that is not on the list.
  const choices = UNDER.some((one) => conditionsWords(one) === under) ? UNDER : [...UNDER, conditions];
  return (
    <>
      {isNumbers(kind) && (
        <Menu
          label={TYPE_IN.conditions}
          value={under}
          choices={choices.map((one) => {
            const words = conditionsWords(one);
            return [words, TYPE_IN.conditionsOf[words] ?? words];
          })}
          onChoose={(words) => onChange({ conditions: choices.find((one) => conditionsWords(one) === words)! })}
        />
      )}
      {kind !== 'lrv' && (
        <div className="field">
          <label htmlFor={id}>{TYPE_IN.lrv}</label>
          <input
            id={id}
            className="input"
            value={entry.lrv ?? ''}
            placeholder={TYPE_IN.lrvHint}
            inputMode="decimal"
            autoComplete="off"
            onChange={(event) => onChange({ lrv: event.target.value })}
          />
        </div>
      )}
      {isMeasured(kind) && (
        <Menu
          label={TYPE_IN.specular}
          value={entry.specular ?? 'unsaid'}
          choices={SPECULARS.map((one) => [one, TYPE_IN.speculars[one]])}
          onChoose={(specular) => onChange({ specular })}
        />
      )}
      {isNumbers(kind) && (
        <Menu
          label={TYPE_IN.numbers}
          value={kind}
          choices={NUMBER_KINDS.map((one) => [one, TYPE_IN.numbersOf[one]])}
          onChoose={(one) => onChange({ kind: one })}
        />
      )}
      {kind === 'hex' && (
        <Menu
          label={TYPE_IN.space}
          value={entry.space ?? 'srgb'}
          choices={SPACES.map((one) => [one, TYPE_IN.spaces[one]])}
          onChoose={(space) => onChange({ space })}
        />
      )}
    </>
  );
}
