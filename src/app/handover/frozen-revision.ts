import { documentIn } from '../../model/change-log';
import { withoutProgress } from '../../model/order/without-progress';
import type { Project, Revision } from '../../model/project';
import { whatChanged } from '../../model/what-changed';

/**
 * The latest frozen revision that the project is now, null where it is none. What comes after freezing (approvals, samples, orders) makes it
 * no other one.
 */
export function frozenRevision(project: Project): Revision | null {
  const document = withoutProgress(documentIn(project));
  return (
    project.revisions?.findLast((one) => whatChanged(withoutProgress(one.document), document).length === 0) ?? null
  );
}
