import type { ItemRecord } from '../../model/order/records';

/** Says something else of an item; `undefined` takes back what was said. `continues`: the same text is being typed on. */
export type ChangeItem = (
  changes: { readonly [K in keyof ItemRecord]?: ItemRecord[K] | undefined },
  continues?: boolean,
) => void;
