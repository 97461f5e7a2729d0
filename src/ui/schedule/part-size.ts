import type { MeasuredPart } from '../../kitchen/takeoff/types';
import { lengthText } from '../../model/length-text';
import { unitNow } from '../words/spoken';

/** "897 × 285 mm", of a handle "160 mm"; empty for what has no size. */
export function partSize({ length_mm, width_mm }: Pick<MeasuredPart, 'length_mm' | 'width_mm'>): string {
  const sizes = [length_mm, width_mm].filter((mm) => mm > 0).map((mm) => lengthText(mm, unitNow()));
  return sizes.length > 0 ? `${sizes.join(' × ')} ${unitNow()}` : '';
}
