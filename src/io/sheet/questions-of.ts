import type { Conditions } from '../../engine/finish/given-color';
import type { FinishClass } from '../../engine/finish/types';
import { USUAL_FINISH } from '../../model/usual-finish';
import type { ImportQuestion, RefusedRow, Sheet, SheetConditions } from './types';

/** How many rows wait for what. */
interface Asked {
  readonly class: number;
  readonly conditions: number;
  readonly gloss: number;
  /** Classes of rows without gloss, as far as they are known. */
  readonly classes: ReadonlySet<FinishClass>;
}

/** Paint and other building products (common practice); graphic arts (ISO 13655). */
const ARCHITECTURE: Conditions = { illuminant: 'D65', observer_deg: 10 };
const GRAPHIC_ARTS: Conditions = { illuminant: 'D50', observer_deg: 2 };

/** What is said holds; only the rest is as usual. */
function usualConditions({ format }: Sheet, { illuminant, observer_deg }: SheetConditions): Conditions {
  const usual = format === 'csv' ? ARCHITECTURE : GRAPHIC_ARTS;
  if (!illuminant) return { ...usual, ...(observer_deg && { observer_deg }) };
  return {
    illuminant,
    observer_deg: observer_deg ?? (illuminant === GRAPHIC_ARTS.illuminant ? 2 : usual.observer_deg),
  };
}

/** The questions that a sheet leaves open, with what is usual to begin with. */
export function askedOf(
  sheet: Sheet,
  asked: Asked,
  refused: readonly RefusedRow[],
  isScaleOpen: boolean,
  said: SheetConditions,
): readonly ImportQuestion[] {
  const questions: ImportQuestion[] = [];
  const withoutColor = refused.filter(({ problem }) => problem.code === 'no-color').length;
  if (withoutColor > 0 && withoutColor === sheet.rows.length) questions.push({ about: 'columns', rows: withoutColor });
  if (isScaleOpen) questions.push({ about: 'scale', rows: sheet.rows.length, usual: { scale: 'percent' } });
  if (asked.class > 0) questions.push({ about: 'class', rows: asked.class });
  if (asked.conditions > 0) {
    const conditions = usualConditions(sheet, said);
    questions.push({ about: 'conditions', rows: asked.conditions, usual: { conditions } });
  }
  if (asked.gloss > 0) {
    // One gloss for a tile and an oak would be wrong for one of them.
    const glosses = new Set([...asked.classes].map((one) => USUAL_FINISH[one].gloss_gu));
    const [only = 'usual'] = glosses.size === 1 ? glosses : [];
    questions.push({ about: 'gloss', rows: asked.gloss, usual: { gloss_gu: only } });
  }
  return questions;
}
