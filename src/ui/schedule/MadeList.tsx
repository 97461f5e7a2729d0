import type { MeasuredPart } from '../../kitchen/takeoff/types';
import { lengthText } from '../../model/length-text';
import { MADE } from '../words/made';
import { unitNow } from '../words/spoken';

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
function partText({ kind, count, length_mm, width_mm }: MeasuredPart): string {
  const sizes = [length_mm, width_mm].filter((mm) => mm > 0).map((mm) => lengthText(mm, unitNow()));
  const size = sizes.length > 0 ? ` ${sizes.join(' × ')} ${unitNow()}` : '';
  return `${count} × ${MADE[kind]}${size}`;
}
