import { useMemo } from 'react';
import type { LampGroup } from '../../model/fixture';
import { lampColorNear, ledLight, ledOfLight, type RenderingClass } from '../../model/lamp-kinds';
import { areLampsOff } from '../../model/lamp-settings';
import type { Lamp, Setting } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { LampSlider } from './LampSlider';
import { lampsOfSetting } from './lamp-facts';
import './lamp.css';

export interface LampControlProps {
  readonly setting: Setting;
  /** The groups that have lamps in this room; at least one. */
  readonly groups: readonly LampGroup[];
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  /** For one group or for all. `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean, group?: LampGroup) => void;
}

/** Where the slider stands for lamps without a color temperature. */
export const MIDDLE_K = 4000;

/** Filaments and tubes have no class to go on with. */
export const FIRST_CLASS: RenderingClass = 80;

/** The color of all lamps of the setting on a slider, and which lamps they are. */
export function LampControl({ setting, groups, lamps, onLamp }: LampControlProps) {
  const kinds = useMemo(() => lampsOfSetting({ lamps }, setting, groups), [lamps, setting, groups]);
  const first = kinds[0]!;
  const led = ledOfLight(first.light);
  const color = lampColorNear(led?.nominal_k ?? first.record?.cct_k ?? MIDDLE_K);
  const name = kinds.length > 1 ? LAMPS.mixed : lampName(first.light, lamps);
  return (
    <div className="lamp">
      <LampSlider
        label={LAMPS.color}
        color={color}
        otherLamp={led ? null : lampName(first.light, lamps)}
        onColor={({ nominal_k }, continues) => onLamp(ledLight({ nominal_k, ra: led?.ra ?? FIRST_CLASS }), continues)}
      />
      <span className="lamp-name" title={name}>
        {areLampsOff(setting) ? LAMPS.titleOff : name}
      </span>
    </div>
  );
}
