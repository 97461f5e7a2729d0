import { useId } from 'react';
import type { FixtureKind } from '../../model/fixture';
import type { LampWhite } from '../../model/new-project';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './question-props';

const WHITES = Object.keys(QUESTIONS.whites) as readonly LampWhite[];
const KINDS = Object.keys(QUESTIONS.kindNames) as readonly FixtureKind[];

/** The white of the lamps and their kinds. */
export function LampsQuestion({ answers, onAnswers }: QuestionProps) {
  const name = useId();
  const lamps = answers.lamps ?? { white: 'unknown', kinds: [] };
  return (
    <>
      <fieldset className="questions-set">
        <legend className="small quiet">{QUESTIONS.white}</legend>
        <div className="questions-grid">
          {WHITES.map((white) => (
            <label key={white} className="room-item">
              <input
                type="radio"
                name={name}
                checked={lamps.white === white}
                onChange={() => onAnswers({ ...answers, lamps: { ...lamps, white } })}
              />
              {QUESTIONS.whites[white]}
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset className="questions-set">
        <legend className="small quiet">{QUESTIONS.kinds}</legend>
        <div className="questions-grid">
          {KINDS.map((kind) => (
            <label key={kind} className="check">
              <input
                type="checkbox"
                checked={lamps.kinds.includes(kind)}
                onChange={(event) => {
                  const others = lamps.kinds.filter((one) => one !== kind);
                  const kinds = event.target.checked ? [...others, kind] : others;
                  onAnswers({ ...answers, lamps: { ...lamps, kinds } });
                }}
              />
              {QUESTIONS.kindNames[kind]}
            </label>
          ))}
        </div>
      </fieldset>
    </>
  );
}
