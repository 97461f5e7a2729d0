import type { StandPlace, StandReading } from '../../kitchen/study/stand-reading';
import { decimal, integer, labText, rgbText } from '../words/numbers';
import { READING, STAND, shiftWord } from '../words/reading';
import { standSentence } from './stand-words';

interface StandPartProps {
  /** Undefined until it is worked out; null where it cannot be. */
  readonly stand: StandReading | null | undefined;
}

/** The finish as a sample that stands on a line and the same lying below it: the same light, the same exposure. */
export function StandPart({ stand }: StandPartProps) {
  return (
    <section className="reading-part" aria-busy={stand === undefined}>
      <h3>{STAND.title}</h3>
      {stand ? <Stand stand={stand} /> : <p>{stand === null ? STAND.none : STAND.pending}</p>}
    </section>
  );
}

function Stand({ stand }: { readonly stand: StandReading }) {
  const { upright, flat } = stand;
  return (
    <>
      <p className="small quiet">{STAND.note}</p>
      <svg className="stand" viewBox="0 0 288 132" role="img" aria-label={labelOf(stand)}>
        <Sample place={upright} x={84} y={4} width={120} height={78} />
        <path className="stand-line" d="M0 83.5H288" />
        <Sample place={flat} x={84} y={85} width={120} height={44} />
      </svg>
      <p>{standSentence(stand)}</p>
      <dl className="numbers">
        <dt>{STAND.upright}</dt>
        <dd>{numbersOf(upright)}</dd>
        <dt>{STAND.flat}</dt>
        <dd>{numbersOf(flat)}</dd>
      </dl>
    </>
  );
}

const labelOf = ({ upright, flat }: StandReading): string =>
  STAND.label(READING.lx(integer(upright.lux)), READING.lx(integer(flat.lux)));

function numbersOf({ lux, average_lab_d65, components }: StandPlace): string {
  const shift = components.reduce((sum, { share, shift_de00 }) => sum + share * shift_de00, 0);
  return [
    READING.lx(integer(lux)),
    READING.labOf(labText(average_lab_d65)),
    STAND.shift(decimal(shift), shiftWord(shift)),
  ].join('; ');
}

interface SampleProps {
  readonly place: StandPlace;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The colors of a finish side by side, each as wide as its share. */
function Sample({ place: { components }, x, y, width, height }: SampleProps) {
  let from = x;
  return (
    <g>
      {components.map(({ role, share, srgb8 }) => {
        const at = from;
        from += share * width;
        return (
          <rect key={`${role}-${share}`} x={at} y={y} width={share * width} height={height} fill={rgbText(srgb8)} />
        );
      })}
      <rect className="stand-edge" x={x} y={y} width={width} height={height} />
    </g>
  );
}
