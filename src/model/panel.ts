import { isBoard } from './layouts';
import type { Finish } from './project';

/** Narrower is a board, no panel one could make a counter of, mm (our judgment). */
const LEAST_MM = 300;
const MOST_MM = 6000;

const MM: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4 };

const SIZE =
  /(\d+(?:[.,]\d+)?) ?(mm|cm|m|in|")? ?[x\u00d7] ?(\d+(?:[.,]\d+)?)(?: ?[x\u00d7] ?\d+(?:[.,]\d+)?)? ?(mm|cm|m|in|")?(?![a-z])/;

/**
 * Length and width of the panels that a wooden counter is cut from, mm, the grain along them: the size its finish says, or the words it is sold
 * by ("panel of 2400 x 620 mm"). Null where neither says one, and for all that is not wood: boards of a floor are no panels.
 */
export function panelSizeOf(finish: Finish): readonly [length: number, width: number] | null {
  if (finish.class !== 'wood') return null;
  const said = [finish.slab_mm, isBoard(finish) ? undefined : finish.piece_mm, sizeInWords(finish.supply?.unit)];
  const size = said.find((one) => one?.every((mm) => mm >= LEAST_MM && mm <= MOST_MM));
  return size ? [Math.max(...size), Math.min(...size)] : null;
}

function sizeInWords(words = ''): readonly [number, number] | undefined {
  const found = SIZE.exec(words.toLowerCase().slice(0, 100));
  if (!found) return undefined;
  const unit = MM[found[4] ?? found[2] ?? 'mm']!;
  const mm = (digits: string): number => Number(digits.replace(',', '.')) * unit;
  return [mm(found[1]!), mm(found[3]!)];
}
