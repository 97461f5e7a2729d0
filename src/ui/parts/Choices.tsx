import { useId } from 'react';

interface Choice<Id extends string> {
  readonly id: Id;
  readonly name: string;
  /** In full where `name` is short for it. */
  readonly fullName?: string;
}

export interface ChoicesProps<Id extends string> {
  readonly label: string;
  readonly choices: readonly Choice<Id>[];
  readonly chosen: Id;
  readonly onChoose: (id: Id) => void;
  /** The chosen one was clicked once more. */
  readonly onChooseAgain?: (id: Id) => void;
  readonly className?: string;
}

/** A row of choices of which one is chosen: native radio buttons, so arrow keys and screen readers work as they know it. */
export function Choices<Id extends string>({
  label,
  choices,
  chosen,
  onChoose,
  onChooseAgain,
  className,
}: ChoicesProps<Id>) {
  const group = useId();
  return (
    <div className={`choices ${className ?? ''}`} role="radiogroup" aria-label={label}>
      {choices.map((choice) => (
        <label key={choice.id} className="choice" title={choice.fullName}>
          <input
            type="radio"
            name={group}
            value={choice.id}
            aria-label={choice.fullName}
            checked={choice.id === chosen}
            onChange={() => onChoose(choice.id)}
            onClick={() => choice.id === chosen && onChooseAgain?.(choice.id)}
          />
          <span className="choice-label" data-text={choice.name}>
            {choice.name}
          </span>
        </label>
      ))}
    </div>
  );
}
