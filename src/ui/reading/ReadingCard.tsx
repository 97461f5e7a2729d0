import { type ReactNode, useEffect, useRef } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { AssessedSurface, ComponentRecord } from '../../engine/judge/assessment';
import type { Facing, SurfaceId } from '../../engine/surface';
import type { FinishInLights } from '../../kitchen/study/finish-in-lights';
import type { StandReading } from '../../kitchen/study/stand-reading';
import { CopyButton } from '../parts/CopyButton';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { shownName } from '../words/built-in';
import { surfaceName } from '../words/engine-words';
import { PROVENANCE_WORDS, ROLE_WORDS } from '../words/finishes';
import { capital, decimal, labText, percent } from '../words/numbers';
import { offBy } from '../words/off-by';
import { FACE_WORDS, READING, SPECTRUM_WORDS, uncertaintyWord } from '../words/reading';
import { retold } from '../words/spoken';
import { BesidePart } from './BesidePart';
import { HoldPart, type HoldPartProps } from './HoldPart';
import { InstalledPlace } from './InstalledPlace';
import { LightsPart } from './LightsPart';
import { PointPart } from './PointPart';
import type { PointView } from './point-view';
import { StandPart } from './StandPart';
import { seenPlaces } from './seen-places';
import { undertoneText } from './undertone-text';
import './reading.css';

export interface ReadingCardProps {
  readonly surfaces: readonly SurfaceId[];
  readonly surface: AssessedSurface;
  /** All that the room has: what it may be held beside. */
  readonly assessed: readonly AssessedSurface[];
  /** Class of a finish of the library, by its id. */
  readonly classOf: (finish: string) => FinishClass;
  readonly samplePaint: SwatchPaint | null;
  /** The face seen most, as it reads here; null before the light is known. */
  readonly here: { readonly paint: SwatchPaint; readonly facing: Facing } | null;
  readonly point: PointView | null;
  /** Changes with each place that is picked in the picture. */
  readonly picked: unknown;
  /** The sample flat and upright; undefined until it is worked out, null where it cannot be told. */
  readonly stand: StandReading | null | undefined;
  /** What can be held at the place that is read, and is. */
  readonly hold: HoldPartProps;
  /** The sample as it is on the sample stand, while that is on screen. */
  readonly onStand: ReactNode;
  /** False while one moves the reading mark by keys: the focus stays in the picture. */
  readonly takesFocus: boolean;
  readonly settingName: string;
  readonly inLights: FinishInLights | null;
  /** Id of the setting on screen. */
  readonly setting: string;
  /** Nothing shines in it. */
  readonly isDark: boolean;
  readonly beside: SurfaceId | null;
  readonly onBeside: (surface: SurfaceId | null) => void;
  readonly copyText: () => string;
  readonly onSurface: (surface: SurfaceId) => void;
  readonly onClose: () => void;
}

/** The numbers of one surface: as a sample, and as installed here, with where they come from and how sure they are. */
export function ReadingCard(props: ReadingCardProps) {
  const { surface, takesFocus } = props;
  const card = useRef<HTMLElement>(null);
  const takes = useRef(takesFocus);
  useEffect(() => {
    if (takes.current) card.current?.focus({ preventScroll: true });
  }, []);
  return (
    <section
      ref={card}
      className="reading"
      aria-label={`${READING.title}: ${surfaceName(surface.surface)}`}
      tabIndex={-1}
    >
      <div className="reading-head">
        <label className="field">
          <span className="label">{READING.surface}</span>
          <select
            className="select"
            value={surface.surface}
            onChange={(event) => props.onSurface(event.target.value as SurfaceId)}
          >
            {props.surfaces.map((one) => (
              <option key={one} value={one}>
                {surfaceName(one)}
              </option>
            ))}
          </select>
        </label>
        <button type="button" className="button button-outlined" onClick={props.onClose}>
          {READING.back}
        </button>
      </div>
      <p>{shownName(surface.label)}</p>
      {props.point && (
        <PointPart point={props.point} picked={props.picked} hasParts={surface.components.length > 1}>
          <HoldPart {...props.hold} />
        </PointPart>
      )}
      {props.onStand}
      {props.samplePaint && (
        <div className="reading-swatches">
          <figure>
            <Swatch paint={props.samplePaint} width={144} height={72} />
            <figcaption className="small quiet">{READING.sample}</figcaption>
          </figure>
          {props.here && !props.isDark && (
            <figure>
              <Swatch paint={props.here.paint} width={144} height={72} />
              <figcaption className="small quiet">{READING.hereFace(FACE_WORDS[props.here.facing])}</figcaption>
            </figure>
          )}
        </div>
      )}
      <section className="reading-part">
        <h3>{READING.sample}</h3>
        <p className="small quiet">{READING.sampleNote}</p>
        <SampleNumbers part={surface.average} />
        {surface.components.length > 1 && (
          <details className="fold">
            <summary>{READING.parts}</summary>
            {surface.components.map((part) => (
              <div key={`${part.role}-${part.share}`} className="reading-component">
                <h4>
                  {capital(ROLE_WORDS[part.role])}, {percent(part.share)}
                </h4>
                <SampleNumbers part={part} />
              </div>
            ))}
          </details>
        )}
      </section>
      <section className="reading-part">
        <h3>{READING.here}</h3>
        {props.isDark ? (
          <p>{READING.dark}</p>
        ) : (
          <>
            <p className="small quiet">{READING.hereNote(props.settingName)}</p>
            {surface.installed.length === 0 && <p>{READING.pending}</p>}
            {seenPlaces(surface).map((place) => (
              <InstalledPlace key={place.facing} place={place} knownDe00={surface.average.uncertainty_de00} />
            ))}
          </>
        )}
      </section>
      <BesidePart surface={surface} others={props.assessed} classOf={props.classOf} />
      <StandPart stand={props.stand} />
      <LightsPart
        inLights={props.inLights}
        setting={props.setting}
        others={props.surfaces.filter((one) => one !== surface.surface)}
        beside={props.beside}
        onBeside={props.onBeside}
      />
      <CopyButton label={READING.copy} copied={READING.copied} text={props.copyText} />
    </section>
  );
}

function SampleNumbers({ part }: { readonly part: ComponentRecord }) {
  return (
    <dl className="numbers">
      <dt>{READING.lab}</dt>
      <dd>{labText(part.lab_d65)}</dd>
      <dt>{READING.lrv}</dt>
      <dd>{decimal(part.lrv)}</dd>
      <dt>{READING.munsell}</dt>
      <dd>{part.munsell}</dd>
      <dt>{READING.name}</dt>
      <dd>{capital(retold(part.name))}</dd>
      <dt>{READING.undertone}</dt>
      <dd>{undertoneText(part.undertone, part.uncertainty_de00)}</dd>
      <dt>{READING.known}</dt>
      <dd>{knownText(part)}</dd>
      <dt>{READING.spectrum}</dt>
      <dd>{capital(SPECTRUM_WORDS[part.spectrum_source])}</dd>
    </dl>
  );
}

const knownText = ({ provenance, uncertainty_de00 }: ComponentRecord): string =>
  READING.known_as(capital(PROVENANCE_WORDS[provenance]), offBy(uncertainty_de00), uncertaintyWord(uncertainty_de00));
