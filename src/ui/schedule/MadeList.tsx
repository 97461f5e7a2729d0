import { madeGroups } from '../../kitchen/schedule/made-groups';
import type { MeasuredPart } from '../../kitchen/takeoff/types';
import { madeCount, madeSizes } from './part-size';

/** What is made or bought by size, kind by kind, alike ones counted, the largest first. */
export function MadeList({ parts }: { readonly parts: readonly MeasuredPart[] }) {
  return (
    <ul className="small made-list">
      {madeGroups(parts).map((group) => (
        <li key={group.kind}>{[madeCount(group), madeSizes(group)].filter(Boolean).join(': ')}</li>
      ))}
    </ul>
  );
}
