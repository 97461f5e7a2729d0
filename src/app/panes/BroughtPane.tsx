import { useEffect } from 'react';
import { LinkDialog } from '../../ui/projects/LinkDialog';
import { LINK } from '../../ui/words/link';
import { useApp, useAppState } from '../context';
import { documentOf } from '../state';

/** What a link brings, until it is opened or left. Where nobody has worked yet there is nothing to ask about: it opens. */
export function BroughtPane() {
  const { store, projects, demo } = useApp();
  const brought = useAppState((state) => state.brought);
  const isFirst = useAppState((state) => state.keeping.state === 'nothing' && documentOf(state) === demo);
  const opensAtOnce = brought !== null && isFirst;
  const open = async () => {
    if (!brought) return;
    const { project, notices } = brought;
    store.setState({ brought: null });
    const option = project.options[0]!.name;
    const named = { ...project, name: LINK.nameOf(project.name, option) };
    await projects.openDocument(named, { label: LINK.opened(option), notices });
    if (!isFirst) return;
    // The demonstration was nobody's work to go back to.
    store.setState(({ keeping }) =>
      keeping.notice?.kind === 'switched' ? { keeping: { ...keeping, notice: null } } : {},
    );
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for what is brought
  useEffect(() => {
    if (opensAtOnce) void open();
  }, [opensAtOnce]);
  if (!brought || opensAtOnce) return null;
  return (
    <LinkDialog
      project={brought.project}
      onOpen={() => void open()}
      onLeave={() => store.setState({ brought: null })}
    />
  );
}
