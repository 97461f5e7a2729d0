import type { Problem } from '../../engine/result';
import { ASSUMED } from '../words/schedule';

/** Taken where it is within bounds; else it is said why not. */
export function within(
  value: number,
  [least, most, unit]: readonly [number, number, string],
  take: () => void,
): readonly Problem[] {
  if (value >= least && value <= most) {
    take();
    return [];
  }
  return [
    { code: 'out-of-range', text: ASSUMED.between(String(least), `${most}${unit ? ` ${unit}` : ''}`), remedy: '' },
  ];
}
