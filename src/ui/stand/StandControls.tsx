import type { Arrangement, Backing, StandChoice } from '../../kitchen/stand/types';
import { Choices } from '../parts/Choices';
import { FittingChoices } from '../parts/FittingChoices';
import { reread } from '../words/spoken';
import { SAMPLE_STAND } from '../words/stand';

export interface StandControlsProps {
  readonly choice: StandChoice;
  readonly onChoice: (choice: Partial<StandChoice>) => void;
}

const named = <Id extends string>(names: Readonly<Record<Id, string>>) =>
  (Object.keys(names) as Id[]).map((id) => ({ id, name: names[id] }));
const ARRANGEMENTS = reread(() => named<Arrangement>(SAMPLE_STAND.arrangements));
const BACKINGS = reread(() => named<Backing>(SAMPLE_STAND.backings));

/** How the samples of the stand are placed, and before what. */
export function StandControls({ choice, onChoice }: StandControlsProps) {
  return (
    <>
      <FittingChoices
        label={SAMPLE_STAND.arrangement}
        choices={ARRANGEMENTS}
        chosen={choice.arrangement}
        onChoose={(arrangement) => onChoice({ arrangement })}
      />
      <Choices
        label={SAMPLE_STAND.backing}
        choices={BACKINGS}
        chosen={choice.backing}
        onChoose={(backing) => onChoice({ backing })}
      />
    </>
  );
}
