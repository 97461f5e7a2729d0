/** What is kept in the browser and may change in any of its tabs. */
type Kept = 'projects' | 'libraries';

/** Tells everybody who listens, in this tab and in others, that what is kept has changed. */
export interface News {
  readonly tell: (of: Kept) => void;
  /** Returns how to stop. */
  readonly listen: (of: Kept, listener: () => void) => () => void;
}

export function openNews(): News {
  const listeners = new Map<Kept, Set<() => void>>();
  const call = (of: Kept) => {
    for (const listener of listeners.get(of) ?? []) listener();
  };
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('upstand-kept');
  channel?.addEventListener('message', ({ data }: MessageEvent<Kept>) => call(data));
  return {
    tell: (of) => {
      call(of);
      channel?.postMessage(of);
    },
    listen: (of, listener) => {
      const all = listeners.get(of) ?? new Set();
      listeners.set(of, all.add(listener));
      return () => all.delete(listener);
    },
  };
}
