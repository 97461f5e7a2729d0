import type { Problem } from '../../engine/result';
import { PROBLEMS, placeWords, problemWords } from '../words/problems';
import '../styles/tokens.css';
import '../styles/base.css';
import './error-boundary.css';

/** Shown alone when not even the first project could be opened. */
export function BootProblem({ problem }: { readonly problem: Problem }) {
  return (
    <main className="broken" role="alert">
      <h1>{PROBLEMS.appBroke}</h1>
      <p>
        {problemWords(problem)} <span className="quiet">{placeWords(problem)}</span>
      </p>
      <p>{PROBLEMS.appRemedy}</p>
    </main>
  );
}
