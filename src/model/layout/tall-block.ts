import type { Kitchen, Run } from '../kitchen';
import { tallModule } from './fixed-modules';
import { PANEL, WALL_FILLER } from './measures';
import type { EndPlan } from './run-ends';
import type { Span, TallBlock, TallUnit } from './types';

/**
 * Tall units at one end of a run, from the end inward: filler or panel, units, side panel towards the counter.
 * What modules leave packs out the inner panel (`panel`: its whole width) or the filler at the wall (`filler`: how much more), mm.
 */
export function tallBlock(
  { region }: Kitchen,
  run: Run,
  { at, inward, outer }: EndPlan,
  { panel = PANEL, filler = 0 }: { readonly panel?: number; readonly filler?: number },
): TallBlock {
  const isLow = inward === 1;
  const end = isLow ? 'from' : 'to';
  const kinds = isLow ? run.tall_from : run.tall_to;
  const module = tallModule(region);
  const span = (a: number, b: number): Span => (a < b ? { from: a, to: b } : { from: b, to: a });
  const isFree = outer === 'free';
  const start = at + inward * (isFree ? PANEL : WALL_FILLER + filler);
  const units = kinds.map(
    (kind, i): TallUnit => ({ ...span(start + inward * i * module, start + inward * (i + 1) * module), kind }),
  );
  const edge = start + inward * kinds.length * module;
  const inner = edge + inward * panel;
  const side = span(edge, inner);
  const first = span(at, start);
  const inOrder = <T>(list: readonly T[]): readonly T[] => (isLow ? list : [...list].reverse());
  return {
    ...span(at, inner),
    end,
    panels: isFree ? inOrder([first, side]) : [side],
    units: inOrder(units),
    fillers: isFree ? [] : [first],
  };
}
