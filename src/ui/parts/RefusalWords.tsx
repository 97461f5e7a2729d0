import type { Problem } from '../../engine/result';
import { placeWords, problemWords } from '../words/problems';
import { plainly, REFUSAL } from '../words/refusals';
import { retold } from '../words/spoken';
import './banner.css';

interface RefusalWordsProps {
  readonly list: readonly [first: Problem, ...more: Problem[]];
  /** Said first, as what matters most. */
  readonly lead?: string;
}

/** Why something was refused: what came of it, what is wrong in plain words, what to do; what only a program's maker wants to know comes last. */
export function RefusalWords({ list, lead = REFUSAL.lead }: RefusalWordsProps) {
  const [first, ...more] = list;
  const plain = plainly(first);
  const place = placeWords(plain && first.at ? { ...first, at: withoutPath(first.at) } : first);
  return (
    <>
      <p>
        <strong>
          {lead} {plain ? plain.text : problemWords(first)}
        </strong>
        {place && <span className="quiet"> {place}</span>}
      </p>
      <p>{plain ? plain.remedy : retold(first.remedy)}</p>
      {(plain || more.length > 0) && (
        <details className="small">
          <summary>{plain ? REFUSAL.details(list.length) : REFUSAL.more(more.length)}</summary>
          <ul className="banner-more">
            {(plain ? list : more).map((problem) => (
              <li key={`${problem.at?.path}-${problem.text}`}>
                {problemWords(problem)} {retold(problem.remedy)}
                <span className="quiet"> {placeWords(beside(problem, first))}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

/** Without the place that was named already. */
function beside(problem: Problem, { at }: Problem): Problem {
  if (!problem.at || problem.at.file !== at?.file || problem.at.line !== at?.line) return problem;
  const { file: _, line: __, ...rest } = problem.at;
  return { ...problem, at: rest };
}

const withoutPath = ({ path: _, ...at }: NonNullable<Problem['at']>): NonNullable<Problem['at']> => at;
