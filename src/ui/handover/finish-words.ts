import { sentenceCase } from '../../engine/judge/surface-words';
import type { Finish } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import { labelWithoutCode, SHEEN_WORDS } from '../words/finishes';
import { BOARD } from '../words/handover';
import { integer } from '../words/numbers';

/** A finish by its name, without the code that stands beside it. */
export const finishName = (finish: Finish): string => sentenceCase(labelWithoutCode(finish.label, finish.id));

/** "Satin, 25 GU". */
export const sheenText = ({ gloss_gu }: Finish): string =>
  BOARD.sheen(SHEEN_WORDS[sheenOf(gloss_gu)], Number(integer(gloss_gu)));
