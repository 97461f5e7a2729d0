import { USERS } from '../../model/project';
import { CLEARANCES } from '../words/clearances';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './question-props';

/** Who uses the kitchen; "nobody special" is an answer, too. */
export function UsersQuestion({ answers, onAnswers }: QuestionProps) {
  const { users } = answers;
  const put = (need: (typeof USERS)[number], holds: boolean) => {
    const others = (users ?? []).filter((one) => one !== need);
    onAnswers({ ...answers, users: holds ? [...others, need] : others });
  };
  return (
    <>
      <fieldset className="questions-set">
        <legend className="small quiet">{QUESTIONS.usersHint}</legend>
        <div className="questions-grid">
          {USERS.map((need) => (
            <label key={need} className="check">
              <input
                type="checkbox"
                checked={users?.includes(need) ?? false}
                onChange={(event) => put(need, event.target.checked)}
              />
              {CLEARANCES.needs[need]}
            </label>
          ))}
          <label className="check">
            <input
              type="checkbox"
              checked={users?.length === 0}
              onChange={(event) => {
                const { users: _, ...rest } = answers;
                onAnswers(event.target.checked ? { ...rest, users: [] } : rest);
              }}
            />
            {QUESTIONS.nobody}
          </label>
        </div>
      </fieldset>
      <label className="field questions-name">
        <span className="label">{QUESTIONS.name}</span>
        <input
          className="input"
          value={answers.name ?? ''}
          placeholder={QUESTIONS.nameHint}
          maxLength={80}
          autoComplete="off"
          onChange={(event) => {
            const { name: _, ...rest } = answers;
            onAnswers(event.target.value === '' ? rest : { ...rest, name: event.target.value });
          }}
        />
      </label>
    </>
  );
}
