import { ChevronDown, ChevronUp } from 'lucide-react';
import { useId, useMemo, useRef, useState } from 'react';
import { lampColorNear, ledLight, ledOfLight, type RenderingClass } from '../../model/lamp-kinds';
import type { Lamp, Setting } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { LampPanel } from './LampPanel';
import { LampSlider } from './LampSlider';
import { lampsOfSetting } from './lamp-facts';
import './lamp.css';

export interface LampControlProps {
  readonly setting: Setting;
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean) => void;
  readonly onOpenLamp: (file: File) => void;
}

/** Filaments and tubes have no class to go on with. */
const FIRST_CLASS: RenderingClass = 80;

/** The lamps of the setting: their color on a slider, and one step away what they are and do to colors. */
export function LampControl({ setting, lamps, onLamp, onOpenLamp }: LampControlProps) {
  const panel = useId();
  const button = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  const kinds = useMemo(() => lampsOfSetting({ lamps }, setting), [lamps, setting]);
  const first = kinds[0]!;
  const led = ledOfLight(first.light);
  const color = lampColorNear(led?.nominal_k ?? first.record?.cct_k ?? 0);
  const name = kinds.length > 1 ? LAMPS.mixed : lampName(first.light, lamps);
  const Chevron = open ? ChevronUp : ChevronDown;
  return (
    <>
      <div className="lamp">
        <span className="small lamp-title">{LAMPS.title}</span>
        <LampSlider
          color={color}
          otherLamp={led ? null : lampName(first.light, lamps)}
          onColor={({ nominal_k }, continues) => onLamp(ledLight({ nominal_k, ra: led?.ra ?? FIRST_CLASS }), continues)}
        />
        <button
          ref={button}
          type="button"
          className="button button-outlined lamp-button"
          aria-expanded={open}
          aria-controls={panel}
          aria-label={`${name}, ${LAMPS.details}`}
          onClick={() => setOpen(!open)}
        >
          <span className="lamp-name">{name}</span>
          <Chevron className="icon" aria-hidden="true" />
        </button>
      </div>
      <section
        id={panel}
        className="lamp-panel"
        aria-label={LAMPS.panel}
        hidden={!open}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          // Esc closes what is open, one thing at a time: the page must not hear of this press.
          event.stopPropagation();
          setOpen(false);
          button.current?.focus();
        }}
      >
        {open && (
          <LampPanel
            kinds={kinds}
            lamps={lamps}
            led={led}
            onLed={(ra) => onLamp(ledLight({ nominal_k: color.nominal_k, ra }), false)}
            onLamp={(light) => onLamp(light, false)}
            onOpenLamp={onOpenLamp}
          />
        )}
      </section>
    </>
  );
}
