import { useId } from 'react';
import type { SkyKind } from '../../engine/daylight/types';
import type { Problem } from '../../engine/result';
import type { Daylight } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { useDrag } from '../picture/use-drag';
import { clockWords, DAYLIGHT } from '../words/daylight';
import { percent } from '../words/numbers';
import { PICTURE } from '../words/picture';
import { reread } from '../words/spoken';
import { LUX } from './measures';
import { NumberField } from './NumberField';

interface SkyFormProps {
  readonly daylight: Daylight;
  readonly onDaylight: (daylight: Daylight, continues: boolean) => readonly Problem[];
}

const SKIES = reread(() => (['overcast', 'clear'] as const).map((id) => ({ id, name: DAYLIGHT.skies[id] })));
/** February has its leap day: the year is not asked for. */
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const MONTHS = reread(() => DAYLIGHT.months.map((name, i) => [String(i + 1), name] as const));
const STEP_H = 0.25;

/** The sky at a moment: hour, date, overcast or clear, and its level where somebody measured it. */
export function SkyForm({ daylight, onDaylight }: SkyFormProps) {
  const hour = useId();
  const blind = useId();
  const { continues, ends } = useDrag();
  const blindDrag = useDrag();
  const { month, day, sky } = daylight;
  const days = Array.from({ length: DAYS[month - 1]! }, (_, i) => [String(i + 1), String(i + 1)] as const);
  return (
    <div className="room-form">
      <div className="room-hour">
        <label htmlFor={hour}>{DAYLIGHT.hour}</label>
        <output htmlFor={hour}>{clockWords(daylight.hour)}</output>
        <input
          id={hour}
          type="range"
          className="range"
          min={0}
          max={24}
          step={STEP_H}
          value={daylight.hour}
          aria-valuetext={clockWords(daylight.hour)}
          {...ends}
          onChange={(event) => onDaylight({ ...daylight, hour: Number(event.target.value) }, continues())}
        />
      </div>
      <div className="room-fields">
        <Menu
          label={DAYLIGHT.month}
          value={String(month)}
          choices={MONTHS}
          onChoose={(id) => {
            const next = Number(id);
            onDaylight({ ...daylight, month: next, day: Math.min(day, DAYS[next - 1]!) }, false);
          }}
        />
        <Menu
          label={DAYLIGHT.day}
          value={String(day)}
          choices={days}
          onChoose={(id) => onDaylight({ ...daylight, day: Number(id) }, false)}
        />
      </div>
      <div className="field">
        <span className="label">{DAYLIGHT.sky}</span>
        <Choices
          label={DAYLIGHT.sky}
          choices={SKIES}
          chosen={sky}
          onChoose={(next) => onDaylight(underSky(daylight, next), false)}
        />
      </div>
      <div className="room-hour">
        <label htmlFor={blind}>{DAYLIGHT.blind}</label>
        <output htmlFor={blind}>{percent(daylight.blind)}</output>
        <input
          id={blind}
          type="range"
          className="range"
          min={0}
          max={100}
          step={5}
          value={Math.round(100 * daylight.blind)}
          aria-valuetext={PICTURE.level(daylight.blind)}
          {...blindDrag.ends}
          onChange={(event) =>
            onDaylight({ ...daylight, blind: Number(event.target.value) / 100 }, blindDrag.continues())
          }
        />
      </div>
      {sky === 'overcast' && (
        <div className="room-sky-level">
          <NumberField
            label={DAYLIGHT.skyLevel}
            measure={LUX}
            value={daylight.sky_lx ?? null}
            onValue={(sky_lx) => onDaylight({ ...daylight, sky_lx }, false)}
            onEmpty={() => onDaylight(withoutLevel(daylight), false)}
          />
          <p className="small quiet">{daylight.sky_lx === undefined ? DAYLIGHT.skyLevelNote : DAYLIGHT.levelGiven}</p>
        </div>
      )}
    </div>
  );
}

function withoutLevel({ sky_lx: _, ...daylight }: Daylight): Daylight {
  return daylight;
}

/** A level somebody gave was that of an overcast sky. */
const underSky = (daylight: Daylight, sky: SkyKind): Daylight =>
  sky === 'clear' ? { ...withoutLevel(daylight), sky } : { ...daylight, sky };
