import { useId, useRef, useState } from 'react';
import { LAMP_GROUPS, type LampGroup, type Setting } from '../../model/project';
import { percent } from '../words/numbers';
import { PICTURE } from '../words/picture';
import { useDrag } from './use-drag';

interface GroupSwitchesProps {
  readonly setting: Setting;
  readonly onLevel: (group: LampGroup, level: number, continues: boolean) => void;
}

/** Each group of lights on or off, and one step away, how bright. */
export function GroupSwitches({ setting, onLevel }: GroupSwitchesProps) {
  const panel = useId();
  const [open, setOpen] = useState(false);
  const lastOn = useRef(new Map<string, number>());
  const toggle = (group: LampGroup) => {
    const key = `${setting.id}/${group}`;
    const { level } = setting.lamps[group];
    if (level > 0) lastOn.current.set(key, level);
    onLevel(group, level > 0 ? 0 : (lastOn.current.get(key) ?? 1), false);
  };
  return (
    <div className="groups">
      {LAMP_GROUPS.map((group) => (
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
        onClick={() => setOpen(!open)}
      >
        {PICTURE.dim}
      </button>
      <fieldset id={panel} className="dim" aria-label={PICTURE.dimTitle} hidden={!open}>
        {LAMP_GROUPS.map((group) => (
          <DimSlider key={group} group={group} level={setting.lamps[group].level} onLevel={onLevel} />
        ))}
      </fieldset>
    </div>
  );
}

interface DimSliderProps {
  readonly group: LampGroup;
  readonly level: number;
  readonly onLevel: GroupSwitchesProps['onLevel'];
}

function DimSlider({ group, level, onLevel }: DimSliderProps) {
  const id = useId();
  const { continues, ends } = useDrag();
  return (
    <div className="dim-row">
      <label htmlFor={id}>{PICTURE.groups[group]}</label>
      <input
        id={id}
        type="range"
        className="range"
        min={0}
        max={100}
        step={5}
        value={Math.round(level * 100)}
        aria-valuetext={PICTURE.level(level)}
        {...ends}
        onChange={(event) => onLevel(group, Number(event.target.value) / 100, continues())}
      />
      <output>{percent(level)}</output>
    </div>
  );
}
