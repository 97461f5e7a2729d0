import { useState } from 'react';
import type { SurfaceId } from '../../engine/surface';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { shownName } from '../words/built-in';
import { LEDGE } from '../words/ledge';
import { LedgeSampleButton } from './LedgeSampleButton';
import type { LedgeRows, LedgeSample } from './ledge-samples';
import './ledge.css';

export interface LedgeProps {
  readonly rows: LedgeRows;
  /** Name of the sample to decide next, or null when nothing is open. */
  readonly next: string | null;
  readonly paintOf: (sample: LedgeSample) => SwatchPaint;
  readonly groutPaintOf: (sample: LedgeSample) => SwatchPaint | null;
  /** Installed color of the sample's first surface, linear sRGB; null while unknown. */
  readonly hereOf: (sample: LedgeSample) => SwatchPaint | null;
  readonly open: SurfaceId | null;
  readonly outlined: readonly SurfaceId[];
  readonly onOpen: (sample: LedgeSample) => void;
  /** Opens the panel of decisions. */
  readonly onDecisions: () => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** The edge where flat meets upright: upright samples stand on the line, flat ones lie below it. */
export function Ledge(props: LedgeProps) {
  const [pointed, setPointed] = useState<LedgeSample | null>(null);
  const shown = pointed && [...props.rows.upright, ...props.rows.flat].find((sample) => sample.id === pointed.id);
  const point = (sample: LedgeSample | null) => {
    setPointed(sample);
    props.onPoint(sample?.surfaces ?? []);
  };
  const row = (samples: readonly LedgeSample[], kind: 'upright' | 'flat') => (
    <ul className={`ledge-row ledge-${kind}`} aria-label={LEDGE[kind]}>
      {samples.map((sample) => (
        <li key={sample.id}>
          <LedgeSampleButton
            sample={sample}
            kind={kind}
            paint={props.paintOf(sample)}
            groutPaint={props.groutPaintOf(sample)}
            here={props.hereOf(sample)}
            isOpen={props.open !== null && sample.surfaces.includes(props.open)}
            isOutlined={!shown && sample.surfaces.some((surface) => props.outlined.includes(surface))}
            onOpen={() => props.onOpen(sample)}
            onPoint={(on) => point(on ? sample : null)}
          />
        </li>
      ))}
    </ul>
  );
  return (
    <section className="ledge" aria-label={LEDGE.region}>
      <p className="ledge-caption">
        {shown ? (
          LEDGE.caption(shown.name, shownName(shown.finish.label), shown.state)
        ) : (
          <>
            <button type="button" className="button ledge-next" data-opens="decisions" onClick={props.onDecisions}>
              {props.next === null ? LEDGE.allDecided : LEDGE.next(props.next)}
            </button>{' '}
            <span className="quiet">{LEDGE.scale}</span>
          </>
        )}
      </p>
      <div className="ledge-scroll">
        <div className="ledge-rows">
          <span className="ledge-side ledge-side-upright" aria-hidden="true">
            {LEDGE.upright}
          </span>
          {row(props.rows.upright, 'upright')}
          <span className="ledge-side ledge-side-flat" aria-hidden="true">
            {LEDGE.flat}
          </span>
          {row(props.rows.flat, 'flat')}
        </div>
      </div>
    </section>
  );
}
