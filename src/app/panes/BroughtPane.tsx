import { LinkDialog } from '../../ui/projects/LinkDialog';
import { LINK } from '../../ui/words/link';
import { useApp, useAppState } from '../context';

/** What a link brings, until it is opened or left. */
export function BroughtPane() {
  const { store, projects } = useApp();
  const brought = useAppState((state) => state.brought);
  if (!brought) return null;
  const { project, notices } = brought;
  return (
    <LinkDialog
      project={project}
      onOpen={() => {
        store.setState({ brought: null });
        const option = project.options[0]!.name;
        const named = { ...project, name: LINK.nameOf(project.name, option) };
        void projects.openDocument(named, { label: LINK.opened(option), notices });
      }}
      onLeave={() => store.setState({ brought: null })}
    />
  );
}
