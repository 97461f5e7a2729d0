import { sentenceCase } from '../../engine/judge/surface-words';
import type { Finish } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import { labelWithoutCode, SHEEN_WORDS } from '../words/finishes';
import { BOARD } from '../words/handover';
import { integer } from '../words/numbers';

/** A finish by its name, without the code that stands beside it. */
export const finishName = (finish: Finish): string => sentenceCase(labelWithoutCode(finish.label, finish.id));

export const sheenWord = ({ gloss_gu }: Finish): string => SHEEN_WORDS[sheenOf(gloss_gu)];

/** "satin, 25 GU". */
export const sheenText = (finish: Finish): string => BOARD.sheen(sheenWord(finish), integer(finish.gloss_gu));
