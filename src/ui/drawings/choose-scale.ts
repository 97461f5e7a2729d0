import type { Drawing } from '../../kitchen/drawings/types';
import type { LengthUnit } from '../../model/length-text';
import { SCALES, type Scale } from './scales';
import { layOut, sizeOf } from './sheet-layout';

/** What a page gives a drawing on A4 and on Letter alike, mm; the plan stands under the introduction. */
export const PAGE_WIDTH = 174;
const PAGE_HEIGHT = 212;
const PLAN_HEIGHT = 192;

/** The largest scale at which every one of the drawings goes on a page; the smallest there is where none does. */
export function chooseScale(drawings: readonly Drawing[], unit: LengthUnit): Scale {
  const scales = SCALES[unit];
  const goes = ({ ratio }: Scale): boolean =>
    drawings.every((drawing) => {
      const [width, height] = sizeOf(layOut(drawing, ratio, unit));
      return width <= PAGE_WIDTH && height <= (drawing.id === 'plan' ? PLAN_HEIGHT : PAGE_HEIGHT);
    });
  return scales.find(goes) ?? scales.at(-1)!;
}
