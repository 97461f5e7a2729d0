import { type ReactNode, useEffect, useRef } from 'react';
import { tintWord } from '../words/engine-words';
import { ROLE_WORDS } from '../words/finishes';
import { capital, decimal, integer, labText, listed, rgbText } from '../words/numbers';
import { READING, shiftWord } from '../words/reading';
import { LightBars } from './LightBars';
import { mirroredName, tintPartsSentence } from './light-words';
import { onScreenText } from './on-screen-text';
import type { PointView } from './point-view';

interface PointPartProps {
  readonly point: PointView;
  /** Changes with each place that is picked. */
  readonly picked: unknown;
  /** The finish has several parts, of which the point shows one. */
  readonly hasParts: boolean;
  /** What can be done with the place, after its numbers. */
  readonly children?: ReactNode;
}

/** The reading at the very point that was chosen in the picture. */
export function PointPart({ point, picked, hasParts, children }: PointPartProps) {
  const part = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new place is to be seen, wherever the card was scrolled to
  useEffect(() => scrollIntoCard(part.current), [picked]);
  const word = tintWord(point.place_white_lab_d65[1], point.place_white_lab_d65[2]);
  const tint = word === null ? null : tintPartsSentence(point.parts);
  const mirror = mirrorSentence(point.mirrored);
  return (
    <section ref={part} className="reading-part">
      <h3>{READING.point}</h3>
      <p>
        {word === null ? READING.noTint : READING.whiteThere(word)} {tint}
      </p>
      {mirror && <p>{mirror}</p>}
      <dl className="numbers">
        {hasParts && (
          <>
            <dt>{READING.component}</dt>
            <dd>{capital(ROLE_WORDS[point.component])}</dd>
          </>
        )}
        <dt>{READING.lab}</dt>
        <dd>{labText(point.lab_d65)}</dd>
        <dt>{READING.shift}</dt>
        <dd>{READING.shiftValue(decimal(point.shift_de00), shiftWord(point.shift_de00))}</dd>
        <dt>{READING.light}</dt>
        <dd>{READING.lxDirect(integer(point.lux), integer(point.lux_direct))}</dd>
        <dt>{READING.onScreen}</dt>
        <dd>{onScreenText(point)}</dd>
        <dt>{READING.whiteCard}</dt>
        <dd className="reading-white">
          <svg width="32" height="20" aria-hidden="true">
            <rect x="0.5" y="0.5" width="31" height="19" fill={rgbText(point.white_srgb8)} stroke="currentColor" />
          </svg>
          {rgbText(point.white_srgb8)}
        </dd>
      </dl>
      {children}
      <h4>{READING.lightFrom}</h4>
      <LightBars parts={point.parts} />
    </section>
  );
}

/** The column alone is scrolled: the picture one picks in stays where it is. */
function scrollIntoCard(part: HTMLElement | null): void {
  const column = part?.closest('.findings-body');
  const heading = part?.querySelector('h3');
  if (!part || !column || !heading) return;
  const [box, here] = [column.getBoundingClientRect(), heading.getBoundingClientRect()];
  if (here.top < box.top || here.bottom > box.bottom) {
    column.scrollTop += part.getBoundingClientRect().top - box.top;
  }
}

const MOST_MIRRORED = 2;
const LEAST_MIRRORED = 0.1;

/** What the point mirrors from here, where that is seen. */
function mirrorSentence(mirrored: PointView['mirrored']): string | null {
  if (!mirrored || mirrored.level === 'not-seen') return null;
  const names = mirrored.parts
    .filter(({ share }, i) => i === 0 || share >= LEAST_MIRRORED)
    .slice(0, MOST_MIRRORED)
    .map(({ from }) => mirroredName(from));
  if (names.length === 0) return null;
  const what = listed(names);
  return mirrored.level === 'hides-color'
    ? READING.mirrorsHiding(what)
    : READING.mirrors(what, decimal(mirrored.shift_de00));
}
