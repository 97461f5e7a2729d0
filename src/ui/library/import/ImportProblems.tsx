import type { Problem } from '../../../engine/result';
import { IMPORT } from '../../words/import';
import { PROBLEMS, placeWords, problemWords } from '../../words/problems';
import { retold } from '../../words/spoken';

interface ImportProblemsProps {
  /** At least one. */
  readonly problems: readonly Problem[];
}

/** Why a file could not be read: the first problem, and all others behind it. */
export function ImportProblems({ problems }: ImportProblemsProps) {
  const [first, ...more] = problems;
  if (!first) return null;
  return (
    <div className="import-problem" role="alert">
      <p>
        <strong>{IMPORT.notRead}</strong> <span className="quiet">{placeWords(first)}</span>
      </p>
      <p>
        {problemWords(first)} {retold(first.remedy)}
      </p>
      {more.length > 0 && (
        <details>
          <summary>{PROBLEMS.more(more.length)}</summary>
          <ul>
            {more.map((problem) => (
              <li key={`${problem.at?.path} ${problem.text}`}>
                {problemWords(problem)} {retold(problem.remedy)} <span className="quiet">{placeWords(problem)}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
