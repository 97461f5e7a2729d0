import { finishComponent } from '../../engine/finish/component';
import { givenWords } from '../../engine/finish/given-words';
import type { FinishComponent } from '../../engine/finish/types';
import { averageRecord, componentRecord } from '../../engine/judge/component-record';
import { givenComponents } from '../../model/given-components';
import type { Finish } from '../../model/project';
import type { RowColor } from './types';

interface FinishColors {
  readonly colors: readonly RowColor[];
  /** Of the area mean; null where a color cannot be read. */
  readonly lrv: number | null;
}

const known = new WeakMap<Finish, FinishColors>();

/** The colors of a finish as a schedule gives them, largest first. Remembered per finish. */
export function rowColors(finish: Finish): FinishColors {
  const before = known.get(finish);
  if (before) return before;
  const components: FinishComponent[] = [];
  const colors = givenComponents(finish).flatMap((given): readonly RowColor[] => {
    const made = finishComponent(given);
    if (!made.ok) return [];
    components.push(made.value);
    const { role, share, lab_d65, lrv, provenance, uncertainty_de00 } = componentRecord(made.value);
    return [{ role, share, lab_d65, lrv, given: givenWords(given.color), provenance, uncertainty_de00 }];
  });
  const isWhole = components.length === finish.components.length && components.length > 0;
  const found: FinishColors = {
    colors: [...colors].sort((a, b) => b.share - a.share),
    lrv: isWhole ? averageRecord(components).lrv : null,
  };
  known.set(finish, found);
  return found;
}
