import { useId } from 'react';
import { LAMP_KINDS, lampKindOfLight } from '../../model/lamp-kinds';
import type { Setting } from '../../model/project';
import { PICTURE } from '../words/picture';
import { useDrag } from './use-drag';

interface LampSliderProps {
  readonly setting: Setting;
  readonly onLamp: (light: string, continues: boolean) => void;
}

const warmest = LAMP_KINDS[0]!;
const coolest = LAMP_KINDS[LAMP_KINDS.length - 1]!;

/** The color of the lamps: as many stops as there are kinds of lamp to buy. */
export function LampSlider({ setting, onLamp }: LampSliderProps) {
  const stops = useId();
  const { continues, ends } = useDrag();
  const kind = lampKindOfLight(setting.groups.ceiling.light) ?? lampKindOfLight(setting.groups['under-cabinet'].light);
  const at = kind ? LAMP_KINDS.indexOf(kind) : 0;
  const shown = kind ?? warmest;
  return (
    <div className="lamp">
      <span className="small">{PICTURE.lamps}</span>
      <span className="small quiet lamp-end" aria-hidden="true">
        {warmest.nominal_k}
      </span>
      <input
        type="range"
        className="range lamp-range"
        list={stops}
        min={0}
        max={LAMP_KINDS.length - 1}
        step={1}
        value={at}
        aria-label={PICTURE.lampColor}
        aria-valuetext={PICTURE.kelvin(shown.nominal_k, shown.words)}
        title={shown.words}
        {...ends}
        onChange={(event) => {
          const next = LAMP_KINDS[Number(event.target.value)];
          if (next) onLamp(next.light, continues());
        }}
      />
      <datalist id={stops}>
        {LAMP_KINDS.map((one, index) => (
          <option key={one.light} value={index} label={String(one.nominal_k)} />
        ))}
      </datalist>
      <span className="small quiet lamp-end" aria-hidden="true">
        {PICTURE.kelvinShort(coolest.nominal_k)}
      </span>
      <output className="small lamp-value">{PICTURE.kelvinShort(shown.nominal_k)}</output>
    </div>
  );
}
