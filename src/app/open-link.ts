import type { StoreApi } from 'zustand/vanilla';
import type { Result } from '../engine/result';
import { refusalTold } from '../ui/parts/told';
import { LINK } from '../ui/words/link';
import { checkColors } from './files';
import type { AppState } from './state';

/**
 * A link to an option, now and whenever one is put into the address: what it brings is offered, and opened by whoever accepts it. The
 * fragment goes from the address at once, so that reloading or passing the address on does not bring it again.
 */
export function followLinks(store: StoreApi<AppState>): void {
  const look = () => {
    const { hash, pathname, search } = window.location;
    if (!/^#o\d+\./.test(hash)) return;
    window.history.replaceState(window.history.state, '', pathname + search);
    void offer(store, hash);
  };
  look();
  window.addEventListener('hashchange', look);
}

async function offer(store: StoreApi<AppState>, fragment: string): Promise<void> {
  const { readFragment } = await import('../io/link/option-link');
  const read = readFragment(fragment);
  if (!read.ok) return refuse(store, read);
  const { project, text } = read.value;
  const checked = await checkColors(project, text, LINK.source);
  if (!checked.ok) return refuse(store, checked);
  const notices = [...(read.notices ?? []), ...(checked.notices ?? [])];
  store.setState({ brought: { project, notices } });
}

const refuse = (store: StoreApi<AppState>, { problem, more }: Extract<Result<unknown>, { ok: false }>): void =>
  store.setState({ told: refusalTold({ ...problem, remedy: `${problem.remedy} ${LINK.kept}` }, more) });
