import { Choices } from '../parts/Choices';
import { useHold } from '../parts/use-hold';
import { BAR } from '../words/top-bar';

export interface OptionSwitchProps {
  readonly options: readonly { readonly id: string; readonly name: string }[];
  readonly chosen: string;
  readonly holding: boolean;
  readonly onChoose: (id: string) => void;
  readonly onHold: (holding: boolean) => void;
}

/** A click chooses an option; press and hold anywhere shows the other one for as long as it is held. */
export function OptionSwitch({ options, chosen, holding, onChoose, onHold }: OptionSwitchProps) {
  const hold = useHold(
    () => onHold(true),
    () => onHold(false),
  );
  return (
    <div className={`option-switch ${holding ? 'is-holding' : ''}`} title={BAR.optionHint} {...hold}>
      <Choices label={BAR.option} choices={options} chosen={chosen} onChoose={onChoose} />
      <span className="hidden-visually" role="status">
        {holding ? BAR.holding(options.find((option) => option.id === chosen)?.name ?? '') : ''}
      </span>
    </div>
  );
}
