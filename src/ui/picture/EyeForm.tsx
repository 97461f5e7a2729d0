import { useId } from 'react';
import type { Problem } from '../../engine/result';
import { boundsText, lengthWords } from '../../model/length-text';
import { Choices } from '../parts/Choices';
import { LENGTH } from '../room/measures';
import { NumberField } from '../room/NumberField';
import { reread } from '../words/spoken';
import { VIEW } from '../words/view';

type EyesOf = keyof typeof VIEW.eyes;
type Unit = keyof typeof VIEW.units;

const STEP_MM = 10;

export interface EyeFormProps {
  readonly of: EyesOf;
  /** Also when the same is chosen once more. */
  readonly onOf: (of: EyesOf) => void;
  readonly height_mm: number;
  readonly least_mm: number;
  readonly most_mm: number;
  readonly onHeight: (height_mm: number) => void;
  readonly unit: Unit;
  readonly onUnit: (unit: Unit) => void;
  /** A hand or a key has moved the eye from the place. */
  readonly isMoved: boolean;
  readonly onBack: () => void;
}

const EYES = reread(() => (Object.keys(VIEW.eyes) as EyesOf[]).map((id) => ({ id, name: VIEW.eyes[id] })));
const UNITS = reread(() => (Object.keys(VIEW.units) as Unit[]).map((id) => ({ id, name: VIEW.units[id] })));

/** How high the eye is: that of the place, or one's own standing or seated. */
export function EyeForm(props: EyeFormProps) {
  const { height_mm, least_mm, most_mm, unit, onHeight } = props;
  const slider = useId();
  const take = (mm: number): readonly Problem[] => {
    if (mm >= least_mm - 0.5 && mm <= most_mm + 0.5) {
      onHeight(mm);
      return [];
    }
    const range = VIEW.heightRange(...boundsText([least_mm, most_mm], unit), VIEW.units[unit]);
    return [{ code: 'eye-height', text: VIEW.noHeight, remedy: range }];
  };
  return (
    <div className="view-part">
      <h3>{VIEW.eyesOf}</h3>
      <Choices label={VIEW.eyesOf} choices={EYES} chosen={props.of} onChoose={props.onOf} onChooseAgain={props.onOf} />
      <div className="eye-row">
        <input
          id={slider}
          type="range"
          className="range"
          min={least_mm}
          max={most_mm}
          step={STEP_MM}
          value={height_mm}
          aria-label={VIEW.eye}
          aria-valuetext={lengthWords(height_mm, unit)}
          onChange={({ target }) => onHeight(Number(target.value))}
        />
        <NumberField label={VIEW.eye} measure={LENGTH} value={Math.round(height_mm)} onValue={take} />
        <Choices label={VIEW.unit} choices={UNITS} chosen={unit} onChoose={props.onUnit} />
      </div>
      {props.isMoved && (
        <div className="eye-moved small" role="status">
          <p>{VIEW.moved(lengthWords(height_mm, unit))}</p>
          <button type="button" className="button button-outlined" onClick={props.onBack}>
            {VIEW.back}
          </button>
        </div>
      )}
    </div>
  );
}
