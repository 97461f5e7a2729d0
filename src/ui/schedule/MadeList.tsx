import type { MeasuredPart } from '../../kitchen/takeoff/types';
import { MADE } from '../words/made';
import { partSize } from './part-size';

/** What is made or bought by size, alike ones counted. */
export function MadeList({ parts }: { readonly parts: readonly MeasuredPart[] }) {
  return (
    <ul className="small made-list">
      {parts.map((part, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: parts have no names, and keep their order
        <li key={i}>{partText(part)}</li>
      ))}
    </ul>
  );
}

/** "2 × drawer front 897 × 285 mm"; what has no size is only counted. */
const partText = (part: MeasuredPart): string =>
  [`${part.count} × ${MADE[part.kind]}`, partSize(part)].filter(Boolean).join(' ');
