import type { Schedule } from '../../kitchen/schedule/types';
import type { Kitchen } from '../../model/kitchen';
import { DrawingSheet } from '../drawings/DrawingSheet';
import { lettersOf, nameOf, sentencesOf, titleOf } from '../drawings/drawing-words';
import { taggedDrawings } from '../drawings/tagged-drawings';
import { notDrawnText } from '../schedule/not-drawn-text';
import { ORDERING } from '../words/ordering-pages';
import { DRAWINGS } from '../words/schedule-drawings';
import { unitNow } from '../words/spoken';
import type { FlowPart } from './blocks';

/** Plan, walls and island at one scale with dimensions and the schedule's tags. */
export function drawingsPart(kitchen: Kitchen, { rows }: Schedule): FlowPart {
  const unit = unitNow();
  const { scale, drawings } = taggedDrawings(kitchen, rows, unit);
  const words = DRAWINGS.ratio[unit](String(scale.ratio), scale.inch ?? '');
  return {
    id: 'drawings',
    title: ORDERING.drawings,
    blocks: [
      {
        kind: 'flow',
        key: 'intro',
        keeps: true,
        node: (
          <p className="sheet-small printed-drawn-intro">
            {DRAWINGS.intro} {DRAWINGS.units[unit]} {DRAWINGS.scale(words)} {DRAWINGS.signs}{' '}
            {DRAWINGS.letters(lettersOf(drawings))} {notDrawnText(drawings, rows)}
          </p>
        ),
      },
      ...drawings.map((drawing) => {
        const { drawing: of } = drawing.layout;
        return {
          kind: 'flow' as const,
          key: of.id,
          node: (
            <figure className="printed-drawn">
              <figcaption>{titleOf(of)}</figcaption>
              <DrawingSheet
                drawing={drawing}
                unit={unit}
                label={[`${nameOf(of)}.`, ...sentencesOf(drawing, rows, unit)].join(' ')}
                isOnPaper
              />
            </figure>
          ),
        };
      }),
    ],
  };
}
