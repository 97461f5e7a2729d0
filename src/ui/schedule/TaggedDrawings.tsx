import { useId } from 'react';
import { DrawingSheet } from '../drawings/DrawingSheet';
import { lettersOf, nameOf, sentencesOf, titleOf } from '../drawings/drawing-words';
import type { TaggedDrawing } from '../drawings/tagged';
import { taggedDrawings } from '../drawings/tagged-drawings';
import { DRAWINGS } from '../words/schedule-drawings';
import { unitNow } from '../words/spoken';
import { notDrawnText } from './not-drawn-text';
import type { ScheduleDoors } from './schedule-props';

/** Plan, walls and island with the tags of the schedule and their dimensions. */
export function TaggedDrawings({ kitchen, schedule: { rows } }: ScheduleDoors) {
  const { drawings } = taggedDrawings(kitchen, rows, unitNow());
  return (
    <div className="drawn">
      <p className="small drawn-intro">
        {DRAWINGS.intro} {DRAWINGS.units[unitNow()]} {DRAWINGS.signs} {DRAWINGS.letters(lettersOf(drawings))}{' '}
        {notDrawnText(drawings, rows)}
      </p>
      {drawings.map((drawing) => (
        <OneDrawing
          key={drawing.layout.drawing.id}
          drawing={drawing}
          sentences={sentencesOf(drawing, rows, unitNow())}
        />
      ))}
    </div>
  );
}

function OneDrawing({
  drawing,
  sentences,
}: {
  readonly drawing: TaggedDrawing;
  readonly sentences: readonly string[];
}) {
  const id = useId();
  const name = nameOf(drawing.layout.drawing);
  return (
    <figure className="drawn-one">
      <figcaption>{titleOf(drawing.layout.drawing)}</figcaption>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reached by keys */}
      <section className="drawn-scroll" aria-label={DRAWINGS.scrolls(name)} tabIndex={0}>
        <DrawingSheet drawing={drawing} unit={unitNow()} label={name} describedBy={id} />
      </section>
      <details className="drawn-words small">
        <summary>{DRAWINGS.inWords}</summary>
        <ul id={id}>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
    </figure>
  );
}
