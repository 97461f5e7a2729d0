import { useState } from 'react';
import type { Option, Project } from '../../model/project';
import { refusalTold } from '../../ui/parts/told';
import { LinkPart, type MadeLink } from '../../ui/projects/LinkPart';
import { LINK } from '../../ui/words/link';
import { useApp } from '../context';

interface LinkPaneProps {
  readonly project: Project;
  readonly option: Option;
}

interface Made extends MadeLink {
  readonly project: Project;
  readonly option: Option;
}

/** The link to an option; what makes it is fetched when somebody wants one. */
export function LinkPane({ project, option }: LinkPaneProps) {
  const { store } = useApp();
  const [made, setMade] = useState<Made | null>(null);
  const make = async () => {
    try {
      const { makeLink } = await import('../make-link');
      setMade({ ...makeLink(project, option), project, option });
    } catch {
      const problem = { code: 'link-failed', text: LINK.failed, remedy: LINK.failedRemedy };
      store.setState({ told: refusalTold(problem) });
    }
  };
  return (
    <LinkPart
      option={option.name}
      made={made?.option.id === option.id ? made : null}
      isOld={made?.project !== project || made.option !== option}
      onMake={() => void make()}
    />
  );
}
