import type { MadeGroup } from '../../kitchen/schedule/made-groups';
import { lengthText } from '../../model/length-text';
import { MADE } from '../words/made';
import { ITEM } from '../words/schedule-item';
import { unitNow } from '../words/spoken';

type Size = MadeGroup['sizes'][number];

/** "16 doors". */
export const madeCount = ({ kind, count }: MadeGroup): string => `${count} ${MADE[kind][count === 1 ? 0 : 1]}`;

/** "4 of 597 × 715, 2 of 397 × 715 mm", the number left out where all are alike; empty for what has no size. */
export function madeSizes({ sizes }: MadeGroup): string {
  const sized = sizes.filter(({ length_mm }) => length_mm > 0);
  if (sized.length === 0) return '';
  const texts = sized.map((size) => (sizes.length === 1 ? sizeText(size) : ITEM.ofSize(size.count, sizeText(size))));
  return `${texts.join(', ')} ${unitNow()}`;
}

/** "897 × 285", of a handle "160". */
const sizeText = ({ length_mm, width_mm }: Size): string =>
  [length_mm, width_mm]
    .filter((mm) => mm > 0)
    .map((mm) => lengthText(mm, unitNow()))
    .join('\u00a0×\u00a0');
