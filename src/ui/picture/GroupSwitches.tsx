import { useId, useRef } from 'react';
import type { LampGroup } from '../../model/fixture';
import type { Daylight, Setting } from '../../model/project';
import { percent } from '../words/numbers';
import { PICTURE } from '../words/picture';
import { useDrag } from './use-drag';

export interface GroupSwitchesProps {
  readonly setting: Setting;
  /** The groups that have lamps in this room. */
  readonly groups: readonly LampGroup[];
  readonly onLevel: (group: LampGroup, level: number, continues: boolean) => void;
  readonly onDims: (group: LampGroup, dims: 'same' | 'warm') => void;
  readonly onDaylight: (on: boolean) => void;
  readonly onBlind: (daylight: Daylight, continues: boolean) => void;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** Daylight and each group of lamps on or off, and one step away, how bright. */
export function GroupSwitches(props: GroupSwitchesProps) {
  const { setting, groups, onLevel, onDims, onDaylight, onBlind, open, onOpen } = props;
  const panel = useId();
  const lastOn = useRef(new Map<string, number>());
  const toggle = (group: LampGroup) => {
    const key = `${setting.id}/${group}`;
    const { level } = setting.lamps[group];
    if (level > 0) lastOn.current.set(key, level);
    onLevel(group, level > 0 ? 0 : (lastOn.current.get(key) ?? 1), false);
  };
  const { daylight } = setting;
  return (
    <div className="groups">
      <label className="group-switch">
        <input type="checkbox" checked={daylight !== null} onChange={() => onDaylight(daylight === null)} />
        <span>{PICTURE.daylight}</span>
      </label>
      {groups.map((group) => (
        <label key={group} className="group-switch">
          <input type="checkbox" checked={setting.lamps[group].level > 0} onChange={() => toggle(group)} />
          <span>{PICTURE.groups[group]}</span>
        </label>
      ))}
      <button
        type="button"
        className="button button-outlined dim-button"
        aria-expanded={open}
        aria-controls={panel}
        onClick={() => onOpen(!open)}
      >
        {PICTURE.dim}
      </button>
      <fieldset id={panel} className="dim" aria-label={PICTURE.dimTitle} hidden={!open}>
        <DimSlider
          label={PICTURE.blind}
          level={daylight?.blind ?? 0}
          isOff={daylight === null}
          onLevel={(blind, continues) => daylight && onBlind({ ...daylight, blind }, continues)}
        />
        {groups.map((group) => (
          <div key={group} className="dim-group">
            <DimSlider
              label={PICTURE.groups[group]}
              level={setting.lamps[group].level}
              onLevel={(level, continues) => onLevel(group, level, continues)}
            />
            <label className="check dim-warm" title={PICTURE.warm}>
              <input
                type="checkbox"
                checked={setting.lamps[group].dims === 'warm'}
                aria-label={`${PICTURE.groups[group]}: ${PICTURE.warm}`}
                onChange={(event) => onDims(group, event.target.checked ? 'warm' : 'same')}
              />
              {PICTURE.warmShort}
            </label>
          </div>
        ))}
      </fieldset>
    </div>
  );
}

interface DimSliderProps {
  readonly label: string;
  readonly level: number;
  readonly isOff?: boolean;
  readonly onLevel: (level: number, continues: boolean) => void;
}

function DimSlider({ label, level, isOff = false, onLevel }: DimSliderProps) {
  const id = useId();
  const { continues, ends } = useDrag();
  return (
    <div className="dim-row">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="range"
        className="range"
        min={0}
        max={100}
        step={5}
        disabled={isOff}
        value={Math.round(level * 100)}
        aria-valuetext={PICTURE.level(level)}
        {...ends}
        onChange={(event) => onLevel(Number(event.target.value) / 100, continues())}
      />
      <output>{percent(level)}</output>
    </div>
  );
}
