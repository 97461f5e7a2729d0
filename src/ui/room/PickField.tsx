import { useState } from 'react';
import type { Problem } from '../../engine/result';
import type { LengthUnit } from '../../model/length-text';
import { inUnit } from '../../model/unit-words';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { problemAtField } from './field-problem';

interface PickFieldProps<Id extends string> {
  readonly label: string;
  /** What may be picked, in order, with its words. */
  readonly words: { readonly [I in Id]: string };
  readonly chosen: NoInfer<Id>;
  readonly as: 'row' | 'menu';
  /** By what a drawing finds the field. */
  readonly path?: string;
  readonly unit: LengthUnit;
  readonly onPick: (id: Id) => readonly Problem[];
  /** What was refused holds no longer once this changes. */
  readonly basis: unknown;
}

/** One of a few, as a row of choices or a menu; what is refused is said under it with the reason, and nothing changes. */
export function PickField<Id extends string>(props: PickFieldProps<Id>) {
  const { label, words, chosen, basis } = props;
  const [said, setSaid] = useState<{ readonly words: string; readonly basis: unknown } | null>(null);
  const choices = (Object.keys(words) as Id[]).map((id) => ({ id, name: words[id] }));
  const pick = (id: Id) => {
    const [problem] = props.onPick(id);
    setSaid(problem ? { words: inUnit(problemAtField(problem, label), props.unit), basis } : null);
  };
  return (
    <div className="pick-field" data-field={props.path}>
      {props.as === 'menu' ? (
        <Menu label={label} value={chosen} choices={choices.map(({ id, name }) => [id, name])} onChoose={pick} />
      ) : (
        <div className="field">
          <span className="label">{label}</span>
          <Choices label={label} choices={choices} chosen={chosen} onChoose={pick} />
        </div>
      )}
      {said && said.basis === basis && (
        <p className="small field-wrong" role="alert">
          {said.words}
        </p>
      )}
    </div>
  );
}
