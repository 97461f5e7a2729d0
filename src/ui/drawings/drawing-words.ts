import type { Drawing } from '../../kitchen/drawings/types';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import { type LengthUnit, lengthText, lengthWords } from '../../model/length-text';
import { elementInLine } from '../schedule/row-words';
import { DRAWINGS } from '../words/schedule-drawings';
import { writtenHeights, writtenLengths } from './chain-labels';
import { LETTERS } from './letters';
import type { TaggedDrawing } from './tagged';

/** "A  Back wall", "Plan". */
export const titleOf = ({ id }: Drawing): string =>
  id === 'plan' ? DRAWINGS.names.plan : DRAWINGS.titled(LETTERS[id], DRAWINGS.names[id]);

/** "A Back wall · B Right wall": which letter of the plan is which of these elevations. */
export const lettersOf = (drawings: readonly TaggedDrawing[]): string =>
  drawings
    .filter(({ layout }) => layout.drawing.id !== 'plan')
    .map(({ layout }) => titleOf(layout.drawing))
    .join(' \u00b7 ');

/** "Elevation A, back wall", "Plan". */
export const nameOf = ({ id }: Drawing): string =>
  id === 'plan' ? DRAWINGS.names.plan : DRAWINGS.elevation(LETTERS[id], DRAWINGS.names[id].toLowerCase());

/** What a drawing says, in sentences: its tags and what they stand for, its lengths, its heights. */
export function sentencesOf(
  { layout, tags, starts }: TaggedDrawing,
  rows: readonly ScheduleRow[],
  unit: LengthUnit,
): readonly string[] {
  const { drawing } = layout;
  const named = [...new Set(tags.flatMap((one) => one.tags))].map((tag) => {
    const row = rows.find(({ id }) => id === tag);
    return row ? `${tag} ${elementInLine(row)}` : tag;
  });
  const chains = drawing.chains.map(({ what, side, marks }) => {
    const lengths = what === 'heights' ? writtenHeights(marks, unit) : writtenLengths(marks, unit);
    const whole = lengths.reduce((sum, one) => sum + one, 0);
    const words = DRAWINGS.chains[what](
      lengths.map((one) => lengthText(one, unit)).join(', '),
      lengthWords(whole, unit),
    );
    return drawing.id === 'plan' ? DRAWINGS.sides[side](words) : words;
  });
  const levels = layout.levels.map(({ level, text }) => DRAWINGS.level[level.what](`${text} ${unit}`));
  return [
    ...(named.length > 0 ? [DRAWINGS.tagsAre(named.join(', '))] : []),
    ...startsOf(
      starts.map(({ tag }) => tag),
      rows,
    ),
    ...new Set(chains),
    ...(levels.length > 0 ? [DRAWINGS.levels(levels.join(', '))] : []),
  ];
}

/** From where each of these tags is laid. */
const startsOf = (tags: readonly string[], rows: readonly ScheduleRow[]): readonly string[] =>
  [...new Set(tags)].flatMap((tag) => {
    const start = rows.find(({ id }) => id === tag)?.start;
    return start ? [DRAWINGS.start(tag, DRAWINGS.starts[start])] : [];
  });
