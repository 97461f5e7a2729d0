import type { StoreApi } from 'zustand/vanilla';
import type { AppState } from '../state';
import { whyUnkept } from './store-error';
import type { Keeping } from './types';

/**
 * Tells that the browser refused to keep or read something, once for each reason however many ask; with `again` also where it was told, for
 * somebody has just asked for it.
 */
export const tellUnkept = (store: StoreApi<AppState>, error: unknown, again = false): void =>
  store.setState(({ keeping }) => ({ keeping: unkept(keeping, error, again) }));

/** What is known of keeping once the browser has refused. */
export function unkept(keeping: Keeping, error: unknown, again = false): Keeping {
  const why = whyUnkept(error);
  if (keeping.told === why && !again) return keeping;
  // What another tab has is the graver matter: what is done here is not kept anyway.
  const notice = keeping.notice?.kind === 'elsewhere' ? keeping.notice : ({ kind: 'unkept', why } as const);
  const state = keeping.state === 'nothing' && why !== 'full' ? why : keeping.state;
  return { ...keeping, state, told: why, notice };
}

/** The same once the present document is kept. */
export function keptAgain(keeping: Keeping, document: Keeping['document']): Keeping {
  const notice = keeping.notice?.kind === 'unkept' ? null : keeping.notice;
  return { ...keeping, state: 'kept', document, told: null, notice };
}
