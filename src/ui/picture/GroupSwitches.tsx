import { useRef } from 'react';
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
}

/** Daylight and each group of lamps: on or off, how bright, and whether it turns warmer when dimmed. */
export function GroupSwitches(props: GroupSwitchesProps) {
  const { setting, groups, onLevel, onDims, onDaylight, onBlind } = props;
  const lastOn = useRef(new Map<string, number>());
  const toggle = (group: LampGroup) => {
    const key = `${setting.id}/${group}`;
    const { level } = setting.lamps[group];
    if (level > 0) lastOn.current.set(key, level);
    onLevel(group, level > 0 ? 0 : (lastOn.current.get(key) ?? 1), false);
  };
  const { daylight } = setting;
  return (
    <fieldset className="groups" aria-label={PICTURE.dimTitle}>
      <div className="group">
        <Switch name={PICTURE.daylight} on={daylight !== null} onSwitch={() => onDaylight(daylight === null)} />
        <DimSlider
          label={PICTURE.blind}
          level={daylight?.blind ?? 0}
          isOff={daylight === null}
          onLevel={(blind, continues) => daylight && onBlind({ ...daylight, blind }, continues)}
        />
      </div>
      {groups.map((group) => (
        <div key={group} className="group">
          <Switch name={PICTURE.groups[group]} on={setting.lamps[group].level > 0} onSwitch={() => toggle(group)} />
          <DimSlider
            label={PICTURE.groups[group]}
            level={setting.lamps[group].level}
            onLevel={(level, continues) => onLevel(group, level, continues)}
          />
          <label className="check" title={PICTURE.warm}>
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
  );
}

interface SwitchProps {
  readonly name: string;
  readonly on: boolean;
  readonly onSwitch: () => void;
}

function Switch({ name, on, onSwitch }: SwitchProps) {
  return (
    <label className="check group-switch">
      <input type="checkbox" checked={on} onChange={onSwitch} />
      <span>{name}</span>
    </label>
  );
}

interface DimSliderProps {
  readonly label: string;
  readonly level: number;
  readonly isOff?: boolean;
  readonly onLevel: (level: number, continues: boolean) => void;
}

function DimSlider({ label, level, isOff = false, onLevel }: DimSliderProps) {
  const { continues, ends } = useDrag();
  return (
    <>
      <input
        type="range"
        className="range"
        min={0}
        max={100}
        step={5}
        disabled={isOff}
        value={Math.round(level * 100)}
        aria-label={label}
        title={label}
        aria-valuetext={PICTURE.level(level)}
        {...ends}
        onChange={(event) => onLevel(Number(event.target.value) / 100, continues())}
      />
      <output>{percent(level)}</output>
    </>
  );
}
