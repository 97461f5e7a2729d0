import type { Conditions } from '../../engine/finish/given-color';
import { FINISH_CLASSES, type FinishClass } from '../../engine/finish/types';
import { USUAL_FINISH } from '../../model/usual-finish';
import type { ImportQuestion, RefusedRow, Sheet } from './types';

/** How many rows wait for what. */
interface Asked {
  readonly class: number;
  readonly conditions: number;
  readonly gloss: number;
  /** Rows without gloss by class, as far as that is known. */
  readonly classes: ReadonlyMap<FinishClass, number>;
}

/** Paint and other building products (common practice); graphic arts (ISO 13655). */
const ARCHITECTURE: Conditions = { illuminant: 'D65', observer_deg: 10 };
const GRAPHIC_ARTS: Conditions = { illuminant: 'D50', observer_deg: 2 };

/** The questions that a sheet leaves open, with what is usual to begin with. */
export function askedOf(
  sheet: Sheet,
  asked: Asked,
  refused: readonly RefusedRow[],
  isScaleOpen: boolean,
): readonly ImportQuestion[] {
  const questions: ImportQuestion[] = [];
  const withoutColor = refused.filter(({ problem }) => problem.code === 'no-color').length;
  if (withoutColor > 0 && withoutColor === sheet.rows.length) questions.push({ about: 'columns', rows: withoutColor });
  if (isScaleOpen) questions.push({ about: 'scale', rows: sheet.rows.length, usual: { scale: 'percent' } });
  if (asked.class > 0) questions.push({ about: 'class', rows: asked.class });
  if (asked.conditions > 0) {
    const conditions = sheet.format === 'csv' ? ARCHITECTURE : GRAPHIC_ARTS;
    questions.push({ about: 'conditions', rows: asked.conditions, usual: { conditions } });
  }
  if (asked.gloss > 0) {
    const most = [...asked.classes].sort(([, a], [, b]) => b - a)[0]?.[0] ?? FINISH_CLASSES[0];
    questions.push({ about: 'gloss', rows: asked.gloss, usual: { gloss_gu: USUAL_FINISH[most].gloss_gu } });
  }
  return questions;
}
