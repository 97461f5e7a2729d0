import type { MeasuredPart, PartKind } from '../takeoff/types';

/** All parts of one kind: how many there are, and how many of each size, the largest first. */
export interface MadeGroup {
  readonly kind: PartKind;
  readonly count: number;
  readonly sizes: readonly Pick<MeasuredPart, 'length_mm' | 'width_mm' | 'count'>[];
}

/** As a workshop lists them: what is opened first, then what closes a run, then what is bought by the piece. */
const ORDER: readonly PartKind[] = [
  'door',
  'drawer',
  'panel',
  'filler',
  'face-frame',
  'rail',
  'shelf',
  'leg',
  'island',
  'waterfall',
  'edge-strip',
  'strip',
  'field',
  'handle',
  'grip-rail',
  'lever',
  'bracket',
  'cooktop',
  'oven',
  'hood',
  'fridge',
  'dishwasher',
  'window',
  'glazed-door',
  'room-door',
];

/** Parts kind by kind, alike sizes together wherever they stand, the largest first. Nothing is turned: 300 x 500 is not 500 x 300. */
export function madeGroups(parts: readonly MeasuredPart[]): readonly MadeGroup[] {
  return ORDER.flatMap((kind) => {
    const sizes = new Map<string, MeasuredPart>();
    for (const part of parts.filter((one) => one.kind === kind)) {
      const key = `${part.length_mm} ${part.width_mm}`;
      sizes.set(key, { ...part, count: part.count + (sizes.get(key)?.count ?? 0) });
    }
    const sorted = [...sizes.values()].sort(byArea);
    const count = sorted.reduce((sum, one) => sum + one.count, 0);
    return count === 0 ? [] : [{ kind, count, sizes: sorted }];
  });
}

const byArea = (a: MeasuredPart, b: MeasuredPart): number =>
  b.length_mm * b.width_mm - a.length_mm * a.width_mm || b.length_mm - a.length_mm;
