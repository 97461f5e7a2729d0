import { useState } from 'react';
import type { SunPosition } from '../../engine/daylight/types';
import type { Problem } from '../../engine/result';
import type { PlanDrawing } from '../../kitchen/plan/plan-drawing';
import type { Kitchen, KitchenSite, Opening } from '../../model/kitchen';
import type { Daylight } from '../../model/project';
import { DAYLIGHT, sunWords } from '../words/daylight';
import { BearingRing } from './BearingRing';
import type { PlanXy } from './compass';
import { PanelFrame } from './PanelFrame';
import { type PlanEye, PlanView } from './PlanView';
import { SiteForm } from './SiteForm';
import { SkyForm } from './SkyForm';
import { SunOnPlan } from './SunOnPlan';
import { sunBeams } from './sun-beams';
import { WindowList } from './WindowList';

/** What comes of the daylight of a setting outdoors. */
interface OutdoorFigures {
  readonly sun: SunPosition;
  /** On open level ground, lx. */
  readonly sky_lx: number;
  readonly sun_lx: number;
}

export interface DaylightPanelProps {
  readonly kitchen: Kitchen;
  readonly drawing: PlanDrawing;
  readonly eye: PlanEye | null;
  /** Null by night. */
  readonly daylight: Daylight | null;
  readonly figures: OutdoorFigures | null;
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onSite: (site: KitchenSite, continues: boolean) => readonly Problem[];
  readonly onDaylight: (daylight: Daylight, continues: boolean) => readonly Problem[];
  readonly onTurnOn: () => void;
  readonly onOpenings: (openings: readonly Opening[]) => readonly Problem[];
  readonly onClose: () => void;
}

/** What one takes hold of, against the radius of the ring. */
const HOLD = 0.125;
const RING = 1.12;

/** Where the house stands and how it is turned, the sky at a moment, the windows: all that decides the daylight of a room. */
export function DaylightPanel(props: DaylightPanelProps) {
  const { kitchen, drawing, daylight, figures } = props;
  const { site, room } = kitchen;
  const [chosen, setChosen] = useState<string | null>(kitchen.openings[0]?.id ?? null);
  const center: PlanXy = [room.width / 2, room.depth / 2];
  const radius = RING * Math.hypot(...center);
  const hold = HOLD * radius;
  const margin = radius + hold - Math.min(...center);
  const beams =
    figures && daylight?.sky === 'clear' ? sunBeams(kitchen.openings, room, site.bearing_deg, figures.sun) : [];
  return (
    <PanelFrame title={DAYLIGHT.title} opener="daylight" onClose={props.onClose}>
      <PlanView
        label={DAYLIGHT.plan}
        drawing={drawing}
        openings={kitchen.openings}
        eye={props.eye}
        margin={margin}
        chosenWindow={chosen}
        onWindow={setChosen}
      >
        {figures && daylight && (
          <SunOnPlan
            room={room}
            bearing_deg={site.bearing_deg}
            sun={figures.sun}
            beams={beams}
            isBeam={daylight.sky === 'clear'}
            center={center}
            radius={radius}
            size={hold}
          />
        )}
        <BearingRing
          center={center}
          radius={radius}
          hold={hold}
          bearing_deg={site.bearing_deg}
          onBearing={(bearing_deg, continues) => props.onSite({ ...site, bearing_deg }, continues)}
        />
      </PlanView>
      <div>
        <p className="room-strong">{DAYLIGHT.faces(site.bearing_deg)}</p>
        {figures && daylight && (
          <p className="room-strong" aria-live="polite">
            {sunWords(figures.sun, daylight.sky)}
          </p>
        )}
        {beams.length > 0 && <p className="small quiet">{DAYLIGHT.sunOnFloorNote}</p>}
        <p className="small quiet">{DAYLIGHT.turnHint}</p>
      </div>
      {daylight ? (
        <SkyForm daylight={daylight} onDaylight={props.onDaylight} />
      ) : (
        <div className="room-form">
          <p>{DAYLIGHT.off}</p>
          <div className="room-row">
            <button type="button" className="button button-strong" onClick={props.onTurnOn}>
              {DAYLIGHT.turnOn}
            </button>
          </div>
        </div>
      )}
      {figures && (
        <dl className="numbers">
          <dt>{DAYLIGHT.azimuth}</dt>
          <dd>{DAYLIGHT.azimuthValue(figures.sun.azimuth_deg)}</dd>
          <dt>{DAYLIGHT.elevation}</dt>
          <dd>{DAYLIGHT.elevationValue(figures.sun.elevation_deg)}</dd>
          <dt>{DAYLIGHT.skyLux}</dt>
          <dd>{DAYLIGHT.lx(figures.sky_lx)}</dd>
          <dt>{DAYLIGHT.sunLux}</dt>
          <dd>{DAYLIGHT.lx(figures.sun_lx)}</dd>
        </dl>
      )}
      <WindowList kitchen={kitchen} chosen={chosen} onChoose={setChosen} onOpenings={props.onOpenings} />
      <SiteForm
        site={site}
        isFacingUsed={kitchen.openings.some(({ facing_deg }) => facing_deg > 0)}
        onSite={(next) => props.onSite(next, false)}
      />
    </PanelFrame>
  );
}
