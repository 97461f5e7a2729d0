import { isEmpty } from '../../model/empty-surface';
import { pointing } from '../parts/pointing';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { shownName } from '../words/built-in';
import { CLASS_SHORT, labelWithoutCode, STATE_WORDS } from '../words/finishes';
import { LEDGE } from '../words/ledge';
import type { LedgeSample } from './ledge-samples';

interface LedgeSampleButtonProps {
  readonly sample: LedgeSample;
  readonly kind: 'upright' | 'flat';
  readonly paint: SwatchPaint;
  readonly groutPaint: SwatchPaint | null;
  readonly here: SwatchPaint | null;
  readonly isOpen: boolean;
  readonly isOutlined: boolean;
  readonly onOpen: () => void;
  readonly onPoint: (on: boolean) => void;
}

const SAMPLE_WIDTH = 64;
const GROUT_WIDTH = 12;
const HERE_WIDTH = 16;
const HEIGHT = { upright: 60, flat: 40 } as const;

/** One sample: the finish as bought, a slip of its grout, beside it how it reads here, and what and how settled it is. */
export function LedgeSampleButton(props: LedgeSampleButtonProps) {
  const { sample, kind, groutPaint, here } = props;
  const height = HEIGHT[kind];
  const label = labelWithoutCode(sample.finish.label, sample.finish.id);
  return (
    <button
      type="button"
      className={`sample sample-${kind} sample-${sample.state}`}
      aria-label={LEDGE.button(sample.name, label, sample.state, sample.surfaces)}
      aria-haspopup="dialog"
      aria-expanded={props.isOpen}
      data-sample={sample.id}
      data-surfaces={sample.surfaces.join(' ')}
      data-outlined={props.isOutlined || undefined}
      onClick={props.onOpen}
      {...pointing(sample.surfaces, (surfaces) => props.onPoint(surfaces.length > 0))}
    >
      <span className="sample-swatches">
        <Swatch paint={props.paint} width={SAMPLE_WIDTH} height={height} />
        {groutPaint && <Swatch className="sample-grout" paint={groutPaint} width={GROUT_WIDTH} height={height} />}
        {here && <Swatch className="sample-here" paint={here} width={HERE_WIDTH} height={height} />}
      </span>
      <span className="sample-words">
        <span className="sample-name">{sample.name}</span>
        {isEmpty({ finish: sample.finish.id }) ? (
          <span className="sample-state">{shownName(sample.finish.label)}</span>
        ) : (
          <>
            <span className="sample-finish">{CLASS_SHORT[sample.finish.class]}</span>
            <span className="sample-state">{STATE_WORDS[sample.state]}</span>
          </>
        )}
      </span>
    </button>
  );
}
