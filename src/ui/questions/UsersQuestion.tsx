import type { UserNeed } from '../../model/new-project';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './NewProject';

const NEEDS = Object.keys(QUESTIONS.needs) as readonly UserNeed[];

/** Who uses the kitchen; "nobody special" is an answer, too. */
export function UsersQuestion({ answers, onAnswers }: QuestionProps) {
  const { users } = answers;
  const put = (need: UserNeed, holds: boolean) => {
    const others = (users ?? []).filter((one) => one !== need);
    onAnswers({ ...answers, users: holds ? [...others, need] : others });
  };
  return (
    <fieldset className="questions-set">
      <legend className="small quiet">{QUESTIONS.usersHint}</legend>
      <div className="questions-grid">
        {NEEDS.map((need) => (
          <label key={need} className="check">
            <input
              type="checkbox"
              checked={users?.includes(need) ?? false}
              onChange={(event) => put(need, event.target.checked)}
            />
            {QUESTIONS.needs[need]}
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
  );
}
