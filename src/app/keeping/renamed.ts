import type { History } from '../../model/history';
import type { Project } from '../../model/project';

/** The same history with one of its projects under another id and name, in all of its documents. */
export function renamed(
  history: History<Project>,
  id: string,
  identity: Pick<Project, 'id' | 'name'>,
): History<Project> {
  const own = (document: Project): Project => (document.id === id ? { ...document, ...identity } : document);
  const step = ({ label, document }: History<Project>['past'][number]) => ({ label, document: own(document) });
  return {
    past: history.past.map(step),
    present: own(history.present),
    future: history.future.map(step),
  };
}
