import { type PointerEvent, useEffect, useRef } from 'react';
import { Choices } from '../parts/Choices';
import { BAR } from '../words/top-bar';

/** Pressing longer than this shows the other option instead of choosing, ms. */
const HOLD_MS = 280;

export interface OptionSwitchProps {
  readonly options: readonly { readonly id: string; readonly name: string }[];
  readonly chosen: string;
  readonly holding: boolean;
  readonly onChoose: (id: string) => void;
  readonly onHold: (holding: boolean) => void;
}

/** A click chooses an option; press and hold anywhere shows the other one for as long as it is held. */
export function OptionSwitch({ options, chosen, holding, onChoose, onHold }: OptionSwitchProps) {
  const timer = useRef(0);
  const held = useRef(false);

  const release = () => {
    window.clearTimeout(timer.current);
    if (held.current) onHold(false);
  };
  const press = (event: PointerEvent) => {
    if (event.button !== 0) return;
    held.current = false;
    timer.current = window.setTimeout(() => {
      held.current = true;
      onHold(true);
    }, HOLD_MS);
  };
  useEffect(() => () => window.clearTimeout(timer.current), []);

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: holding is a shortcut; the radio buttons inside do the choosing
    <div
      className={`option-switch ${holding ? 'is-holding' : ''}`}
      title={BAR.optionHint}
      onPointerDown={press}
      onPointerUp={release}
      onPointerCancel={release}
      onPointerLeave={release}
      onContextMenu={(event) => event.preventDefault()}
      onClickCapture={(event) => {
        // Only the click of the pointer that held ends the hold; keys choose (they count no clicks).
        const endsHold = held.current && event.detail > 0;
        held.current = false;
        if (!endsHold) return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      <Choices label={BAR.option} choices={options} chosen={chosen} onChoose={onChoose} />
      <span className="hidden-visually" role="status">
        {holding ? BAR.holding(options.find((option) => option.id === chosen)?.name ?? '') : ''}
      </span>
    </div>
  );
}
