import { tintWord } from '../../engine/judge/tint-words';
import { ROLE_WORDS } from '../words/finishes';
import { capital, integer, labText } from '../words/numbers';
import { READING } from '../words/reading';
import { onScreenText } from './on-screen-text';
import type { PointView } from './point-view';

/** The reading at the very point that was chosen in the picture. */
export function PointPart({ point }: { readonly point: PointView }) {
  const word = tintWord(point.place_white_lab_d65[1], point.place_white_lab_d65[2]);
  return (
    <section className="reading-part">
      <h3>{READING.point}</h3>
      <p>{word === null ? READING.noTint : READING.whiteThere(word)}</p>
      <dl className="numbers">
        <dt>{READING.component}</dt>
        <dd>{capital(ROLE_WORDS[point.component])}</dd>
        <dt>{READING.lab}</dt>
        <dd>{labText(point.lab_d65)}</dd>
        <dt>{READING.light}</dt>
        <dd>{READING.lx(integer(point.lux))}</dd>
        <dt>{READING.onScreen}</dt>
        <dd>{onScreenText(point)}</dd>
      </dl>
    </section>
  );
}
