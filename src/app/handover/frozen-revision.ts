import { documentIn } from '../../model/change-log';
import type { Project, Revision } from '../../model/project';
import { whatChanged } from '../../model/what-changed';

/** The latest frozen revision that the project is now, null where it is none. */
export function frozenRevision(project: Project): Revision | null {
  const document = documentIn(project);
  return project.revisions?.findLast((one) => whatChanged(one.document, document).length === 0) ?? null;
}
