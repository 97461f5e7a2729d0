import { useId } from 'react';
import { NumberField } from '../room/NumberField';
import { directionWord } from '../words/daylight';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './question-props';

const EIGHTH_DEG = 45;

/** Where the window faces: an eighth of the compass, degrees, or not known. */
export function BearingQuestion({ answers, onAnswers }: QuestionProps) {
  const name = useId();
  const { bearing_deg, ...rest } = answers;
  const eighth = bearing_deg === undefined ? null : (Math.round(bearing_deg / EIGHTH_DEG) % 8) * EIGHTH_DEG;
  return (
    <>
      <fieldset className="questions-set">
        <legend className="small quiet">{QUESTIONS.bearingHint}</legend>
        <div className="questions-grid">
          {QUESTIONS.bearings.map((words, i) => (
            <label key={words} className="room-item">
              <input
                type="radio"
                name={name}
                checked={eighth === i * EIGHTH_DEG}
                onChange={() => onAnswers({ ...rest, bearing_deg: i * EIGHTH_DEG })}
              />
              {words}
            </label>
          ))}
          <label className="room-item">
            <input type="radio" name={name} checked={bearing_deg === undefined} onChange={() => onAnswers(rest)} />
            {QUESTIONS.bearingUnknown}
          </label>
        </div>
      </fieldset>
      <NumberField
        label={QUESTIONS.degrees}
        value={bearing_deg ?? null}
        onEmpty={() => {
          onAnswers(rest);
          return [];
        }}
        onValue={(deg) => {
          if (deg < 0 || deg >= 360) return [{ code: 'out-of-range', text: QUESTIONS.notDegrees, remedy: '' }];
          onAnswers({ ...rest, bearing_deg: deg });
          return [];
        }}
      />
      {bearing_deg !== undefined && <p className="small">{QUESTIONS.faces(directionWord(bearing_deg))}</p>}
    </>
  );
}
