import { ChevronDown, ChevronUp } from 'lucide-react';
import { useId, useMemo, useRef, useState } from 'react';
import type { LampGroup } from '../../model/fixture';
import { lampColorNear, ledLight, ledOfLight, type RenderingClass } from '../../model/lamp-kinds';
import { areLampsOff, settingsOfSameLamps } from '../../model/lamp-settings';
import type { Lamp, Setting } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { settingShortName } from '../words/picture';
import { LampPanel } from './LampPanel';
import { LampSlider } from './LampSlider';
import { lampsOfSetting } from './lamp-facts';
import './lamp.css';

export interface LampControlProps {
  readonly setting: Setting;
  /** All settings of the project: a lamp chosen here may hang there too. */
  readonly settings: readonly Setting[];
  /** The groups that have lamps in this room; at least one. */
  readonly groups: readonly LampGroup[];
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  /** For one group or for all. `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean, group?: LampGroup) => void;
  readonly onOpenLamp: (file: File) => void;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** Where the slider stands for lamps without a color temperature. */
const MIDDLE_K = 4000;

/** Filaments and tubes have no class to go on with. */
const FIRST_CLASS: RenderingClass = 80;

/** The lamps of the setting: their color on a slider, and one step away what they are and do to colors. */
export function LampControl(props: LampControlProps) {
  const { setting, settings, groups, lamps, onLamp, onOpenLamp, open, onOpen } = props;
  const panel = useId();
  const button = useRef<HTMLButtonElement>(null);
  const [only, setOnly] = useState<LampGroup | null>(null);
  const group = only && groups.includes(only) ? only : null;
  const kinds = useMemo(() => lampsOfSetting({ lamps }, setting, groups), [lamps, setting, groups]);
  const first = kinds.find((kind) => group && kind.groups.includes(group)) ?? kinds[0]!;
  const change = (light: string, continues: boolean) => onLamp(light, continues, group ?? undefined);
  const led = ledOfLight(first.light);
  const color = lampColorNear(led?.nominal_k ?? first.record?.cct_k ?? MIDDLE_K);
  const name = kinds.length > 1 && !group ? LAMPS.mixed : lampName(first.light, lamps);
  const Chevron = open ? ChevronUp : ChevronDown;
  return (
    <>
      <div className="lamp">
        <span className="small lamp-title">{areLampsOff(setting) ? LAMPS.titleOff : LAMPS.title}</span>
        <LampSlider
          color={color}
          otherLamp={led ? null : lampName(first.light, lamps)}
          onColor={({ nominal_k }, continues) => change(ledLight({ nominal_k, ra: led?.ra ?? FIRST_CLASS }), continues)}
        />
        <button
          ref={button}
          type="button"
          className="button button-outlined lamp-button"
          aria-expanded={open}
          aria-controls={panel}
          aria-label={`${name}, ${LAMPS.details}`}
          title={name}
          onClick={() => onOpen(!open)}
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
          onOpen(false);
          button.current?.focus();
        }}
      >
        {open && (
          <LampPanel
            kinds={kinds}
            lamps={lamps}
            led={led}
            light={first.light}
            groups={groups}
            group={group}
            onGroup={setOnly}
            notes={notesOf(setting, settings, groups)}
            onLed={(ra) => change(ledLight({ nominal_k: color.nominal_k, ra }), false)}
            onLamp={(light) => change(light, false)}
            onOpenLamp={onOpenLamp}
          />
        )}
      </section>
    </>
  );
}

/** Whether the lamps can be seen here, and which settings keep lamps of their own. */
function notesOf(setting: Setting, settings: readonly Setting[], groups: readonly LampGroup[]): readonly string[] {
  const names = (list: readonly Setting[]) => list.map(({ name }) => settingShortName(name));
  const along = settingsOfSameLamps({ settings }, setting);
  const others = settings.filter((one) => !along.includes(one));
  const lit = along.filter((one) => !areLampsOff(one));
  return [
    ...(areLampsOff(setting) ? [LAMPS.off(groups[0]!, names(lit.slice(0, 1)))] : []),
    ...(others.length > 0 ? [LAMPS.othersKeep(names(others))] : []),
  ];
}
