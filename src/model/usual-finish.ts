import type { FinishClass } from '../engine/finish/types';
import type { Variation } from '../engine/pattern/types';

interface UsualFinish {
  /** Gloss units at 60 degrees. */
  readonly gloss_gu: number;
  readonly variation: Variation;
}

/**
 * Gloss and variation that are usual for a class, for a finish of which nobody gave them: paint matte, stone honed, wood with a
 * matte lacquer, glazed tile glossy, metal brushed. Common practice, no source.
 */
export const USUAL_FINISH: { readonly [C in FinishClass]: UsualFinish } = {
  paint: { gloss_gu: 8, variation: 'V0' },
  stone: { gloss_gu: 10, variation: 'V2' },
  engineered: { gloss_gu: 30, variation: 'V1' },
  'solid surface': { gloss_gu: 15, variation: 'V0' },
  laminate: { gloss_gu: 8, variation: 'V0' },
  wood: { gloss_gu: 15, variation: 'V2' },
  vinyl: { gloss_gu: 8, variation: 'V1' },
  glazed: { gloss_gu: 78, variation: 'V1' },
  porcelain: { gloss_gu: 8, variation: 'V1' },
  glass: { gloss_gu: 90, variation: 'V0' },
  metal: { gloss_gu: 52, variation: 'V0' },
  grout: { gloss_gu: 2, variation: 'V0' },
};
