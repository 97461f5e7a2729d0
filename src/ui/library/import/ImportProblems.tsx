import type { Problem } from '../../../engine/result';
import { RefusalWords } from '../../parts/RefusalWords';

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
      <RefusalWords list={[first, ...more]} />
    </div>
  );
}
