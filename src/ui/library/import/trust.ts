import { failure, type Result, success } from '../../../engine/result';
import type { Finish } from '../../../model/project';
import { OFF_BY } from '../../words/off-by';

const MOST_DE00 = 30;

/** An uncertainty as typed; null where nothing was. */
export function uncertaintyIn(text: string): Result<number | null> {
  const typed = text.trim().replace(',', '.');
  if (typed === '') return success(null);
  const number = Number(typed);
  if (number >= 0 && number <= MOST_DE00) return success(number);
  return failure({ code: 'out-of-range', text: OFF_BY.wrong, remedy: '' });
}

/** The finishes as uncertain as that, but for those whose row says another. */
export const withUncertainty = (finishes: readonly Finish[], de00: number | null): readonly Finish[] =>
  de00 === null
    ? finishes
    : finishes.map((finish) =>
        finish.uncertainty_de00 === undefined ? { ...finish, uncertainty_de00: de00 } : finish,
      );
