import { useState } from 'react';
import type { Kitchen } from '../model/kitchen';
import { type Loss, withLosses } from '../model/new-kitchen/losses';

const NONE: readonly Loss[] = [];

/**
 * What kitchens set one after the other lost on the way, since it was read last. It is known by kitchen: undo and redo lead to the
 * kitchens there were, and with them to what had been lost until then.
 */
export function useLosses(kitchen: Kitchen): {
  readonly losses: readonly Loss[];
  readonly note: (before: Kitchen, after: Kitchen, losses: readonly Loss[]) => void;
  readonly read: () => void;
} {
  const [known, setKnown] = useState(() => new WeakMap<Kitchen, readonly Loss[]>());
  return {
    losses: known.get(kitchen) ?? NONE,
    note: (before, after, losses) => {
      if (after !== before) known.set(after, withLosses(known.get(before) ?? NONE, losses, after));
    },
    read: () => setKnown(new WeakMap()),
  };
}
