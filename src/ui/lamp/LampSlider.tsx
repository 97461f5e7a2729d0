import { useId } from 'react';
import { LAMP_COLORS, type LampColor } from '../../model/lamp-kinds';
import { useDrag } from '../picture/use-drag';
import { LAMPS } from '../words/lamps';
import { retold } from '../words/spoken';

interface LampSliderProps {
  readonly label: string;
  /** The color of the lamps, or the one nearest to it. */
  readonly color: LampColor;
  /** The lamps by name when they are no LED lamps, whose color the slider would set. */
  readonly otherLamp: string | null;
  readonly onColor: (color: LampColor, continues: boolean) => void;
}

/** The color of the lamps: as many stops as there are colors to buy. */
export function LampSlider({ label, color, otherLamp, onColor }: LampSliderProps) {
  const stops = useId();
  const { continues, ends } = useDrag();
  return (
    <>
      <input
        type="range"
        className={`range lamp-range ${otherLamp ? 'is-idle' : ''}`}
        list={stops}
        min={0}
        max={LAMP_COLORS.length - 1}
        step={1}
        value={LAMP_COLORS.indexOf(color)}
        aria-label={label}
        aria-valuetext={otherLamp ? LAMPS.notLed(otherLamp) : LAMPS.kelvinLong(color.nominal_k, retold(color.words))}
        title={otherLamp ? LAMPS.notLed(otherLamp) : retold(color.words)}
        {...ends}
        onChange={(event) => {
          const next = LAMP_COLORS[Number(event.target.value)];
          if (next) onColor(next, continues());
        }}
      />
      <datalist id={stops}>
        {LAMP_COLORS.map(({ nominal_k }, index) => (
          <option key={nominal_k} value={index} label={String(nominal_k)} />
        ))}
      </datalist>
    </>
  );
}
