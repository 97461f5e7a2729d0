import type { RowProblem } from '../../kitchen/schedule/types';
import { ITEM } from '../words/schedule-item';
import { problemText } from './row-words';

/** What one has to know of a row before one orders by it; nothing where there is nothing. */
export function ToSettle({ problems }: { readonly problems: readonly RowProblem[] }) {
  if (problems.length === 0) return null;
  return (
    <section className="item-part item-wide">
      <h3>{ITEM.toSettle}</h3>
      <ul className="small">
        {problems.map((problem) => (
          <li key={problem.code}>{problemText(problem)}</li>
        ))}
      </ul>
    </section>
  );
}
