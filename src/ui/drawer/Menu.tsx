import { useId } from 'react';

interface MenuProps<Id extends string> {
  readonly label: string;
  readonly value: NoInfer<Id>;
  readonly choices: readonly (readonly [id: Id, words: string])[];
  /** There is nothing to choose. */
  readonly isFixed?: boolean;
  readonly onChoose: (id: Id) => void;
}

/** A native menu with its label above. */
export function Menu<Id extends string>({ label, value, choices, isFixed = false, onChoose }: MenuProps<Id>) {
  const menu = useId();
  return (
    <div className="field">
      <label htmlFor={menu}>{label}</label>
      <select
        id={menu}
        className="select"
        value={value}
        disabled={isFixed}
        onChange={(event) => onChoose(choices.find(([id]) => id === event.target.value)![0])}
      >
        {choices.map(([id, words]) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
