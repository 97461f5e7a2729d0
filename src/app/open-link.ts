import type { StoreApi } from 'zustand/vanilla';
import { failure, type Result } from '../engine/result';
import type { Project } from '../model/project';
import { refusalTold } from '../ui/parts/told';
import { LINK } from '../ui/words/link';
import { usableColors } from './files';
import { fetched, NOT_FETCHED, readingBroke } from './read-file';
import type { AppState } from './state';

/** The address of the page, and when what stands behind its # changes. */
export interface Address {
  readonly fragment: () => string;
  readonly dropFragment: () => void;
  readonly onChange: (look: () => void) => void;
}

/**
 * A link to an option, now and whenever one is put into the address: what it brings is offered, and opened by whoever accepts it. The
 * fragment goes from the address when it was read, so that reloading or passing the address on does not bring it again; where the code
 * that reads it could not be fetched it stays, and reloading tries anew.
 */
export function followLinks(store: StoreApi<AppState>, address: Address = windowAddress()): void {
  const look = async () => {
    const fragment = address.fragment();
    if (!/^#o\d+\./.test(fragment)) return;
    const read = await readLink(fragment).catch((error) => failure(readingBroke(error)));
    // Another link may stand there by now.
    if (address.fragment() !== fragment) return;
    if (read.ok || read.problem.code !== NOT_FETCHED) address.dropFragment();
    if (read.ok) return store.setState({ brought: { project: read.value, notices: read.notices ?? [] } });
    store.setState({ told: refusalTold(read.problem, read.more) });
  };
  void look();
  address.onChange(() => void look());
}

async function readLink(fragment: string): Promise<Result<Project>> {
  const code = await fetched(() => import('../io/link/option-link'));
  if (!code.ok) return code;
  const read = code.value.readFragment(fragment);
  if (!read.ok) return read;
  const { project, text } = read.value;
  const checked = await usableColors(project, text, LINK.source);
  return checked.ok ? { ...checked, notices: [...(checked.notices ?? []), ...(read.notices ?? [])] } : checked;
}

const windowAddress = (): Address => ({
  fragment: () => window.location.hash,
  dropFragment: () => {
    const { pathname, search } = window.location;
    window.history.replaceState(window.history.state, '', pathname + search);
  },
  onChange: (look) => window.addEventListener('hashchange', look),
});
