import { useId } from 'react';
import type { LampGroup } from '../../model/fixture';
import type { Lamp, Setting } from '../../model/project';
import { LampDetails } from '../lamp/LampDetails';
import { PanelFrame } from '../room/PanelFrame';
import { lightCaption } from '../words/daylight';
import { PICTURE } from '../words/picture';
import { GroupSwitches, type GroupSwitchesProps } from './GroupSwitches';
import { SettingForm, type SettingFormProps } from './SettingForm';
import './light-panel.css';

export interface LightPanelProps {
  readonly settings: readonly Setting[];
  readonly setting: Setting;
  /** The groups that have lamps in this room. */
  readonly groups: readonly LampGroup[];
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  readonly switches: Omit<GroupSwitchesProps, 'setting' | 'groups'>;
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean, group?: LampGroup) => void;
  readonly onOpenLamp: (file: File) => void;
  readonly form: Pick<SettingFormProps, 'onCopy' | 'onRename' | 'onRemove'>;
  /** In which light one reads now, in a sentence; null until it is known. */
  readonly readIn: string | null;
  readonly onClose: () => void;
}

/** The light on screen: what of it is on and how bright, which lamps it has, and under which name it is kept. */
export function LightPanel(props: LightPanelProps) {
  const { settings, setting, groups, lamps } = props;
  const heading = useId();
  return (
    <PanelFrame title={PICTURE.lightOf(setting.name)} opener="light" onClose={props.onClose}>
      <div className="light-on">
        <p className="small quiet">
          {lightCaption(setting.daylight).join(' ')}. {props.readIn}
        </p>
        <GroupSwitches setting={setting} groups={groups} {...props.switches} />
      </div>
      {groups.length > 0 && (
        <LampDetails
          setting={setting}
          settings={settings}
          groups={groups}
          lamps={lamps}
          onLamp={props.onLamp}
          onOpenLamp={props.onOpenLamp}
        />
      )}
      <section className="room-part" aria-labelledby={heading}>
        <h3 id={heading}>{PICTURE.editSettings}</h3>
        <SettingForm setting={setting} settings={settings} {...props.form} />
      </section>
    </PanelFrame>
  );
}
