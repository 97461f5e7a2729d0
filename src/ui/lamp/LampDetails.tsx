import { useId, useMemo, useState } from 'react';
import type { LampGroup } from '../../model/fixture';
import { lampColorNear, ledLight, ledOfLight } from '../../model/lamp-kinds';
import { areLampsOff, settingsOfSameLamps } from '../../model/lamp-settings';
import type { Setting } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { settingShortName } from '../words/picture';
import { FIRST_CLASS, type LampControlProps, MIDDLE_K } from './LampControl';
import { LampPanel } from './LampPanel';
import { LampSlider } from './LampSlider';
import { lampsOfSetting } from './lamp-facts';
import './lamp.css';

interface LampDetailsProps extends LampControlProps {
  /** All settings of the project: a lamp chosen here may hang there too. */
  readonly settings: readonly Setting[];
  readonly onOpenLamp: (file: File) => void;
}

/** What the lamps of the setting are, of one group or of all, and what they do to colors. */
export function LampDetails({ setting, settings, groups, lamps, onLamp, onOpenLamp }: LampDetailsProps) {
  const heading = useId();
  const [only, setOnly] = useState<LampGroup | null>(null);
  const group = only && groups.includes(only) ? only : null;
  const kinds = useMemo(() => lampsOfSetting({ lamps }, setting, groups), [lamps, setting, groups]);
  const first = kinds.find((kind) => group && kind.groups.includes(group)) ?? kinds[0]!;
  const change = (light: string, continues: boolean) => onLamp(light, continues, group ?? undefined);
  const led = ledOfLight(first.light);
  const color = lampColorNear(led?.nominal_k ?? first.record?.cct_k ?? MIDDLE_K);
  return (
    <section className="lamp-panel room-part" aria-labelledby={heading}>
      <h3 id={heading}>{LAMPS.panel}</h3>
      <LampPanel
        kinds={kinds}
        lamps={lamps}
        led={led}
        light={first.light}
        groups={groups}
        group={group}
        onGroup={setOnly}
        slider={
          <LampSlider
            label={LAMPS.colorThere}
            color={color}
            otherLamp={led ? null : lampName(first.light, lamps)}
            onColor={({ nominal_k }, continues) =>
              change(ledLight({ nominal_k, ra: led?.ra ?? FIRST_CLASS }), continues)
            }
          />
        }
        name={kinds.length > 1 && !group ? LAMPS.mixed : lampName(first.light, lamps)}
        notes={notesOf(setting, settings, groups)}
        onLed={(ra) => change(ledLight({ nominal_k: color.nominal_k, ra }), false)}
        onLamp={(light) => change(light, false)}
        onOpenLamp={onOpenLamp}
      />
    </section>
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
