import type { Lamp, LampGroup, Setting } from '../../model/project';
import { LampControl } from '../lamp/LampControl';
import { Choices } from '../parts/Choices';
import { PICTURE, settingShortName } from '../words/picture';
import { GroupSwitches } from './GroupSwitches';

export interface PictureFootProps {
  readonly viewpoints: readonly { readonly id: string; readonly name: string }[];
  readonly viewpoint: string;
  readonly onViewpoint: (id: string) => void;
  readonly settings: readonly Setting[];
  readonly setting: Setting;
  readonly onSetting: (id: string) => void;
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLevel: (group: LampGroup, level: number, continues: boolean) => void;
  readonly onLamp: (light: string, continues: boolean) => void;
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  readonly onOpenLamp: (file: File) => void;
}

/** The two rows at the picture's foot: where one looks from, and in which light. */
export function PictureFoot(props: PictureFootProps) {
  const settings = props.settings.map(({ id, name }) => ({ id, name: settingShortName(name) }));
  return (
    <>
      {props.viewpoints.length > 0 && (
        <div className="foot-row">
          <span className="foot-label">{PICTURE.view}</span>
          <Choices
            className="viewpoints"
            label={PICTURE.viewpoint}
            choices={props.viewpoints}
            chosen={props.viewpoint}
            onChoose={props.onViewpoint}
            onChooseAgain={props.onViewpoint}
          />
        </div>
      )}
      <div className="foot-row">
        <span className="foot-label">{PICTURE.light}</span>
        <Choices label={PICTURE.setting} choices={settings} chosen={props.setting.id} onChoose={props.onSetting} />
        <LampControl
          setting={props.setting}
          settings={props.settings}
          lamps={props.lamps}
          onLamp={props.onLamp}
          onOpenLamp={props.onOpenLamp}
        />
        <GroupSwitches setting={props.setting} onLevel={props.onLevel} />
      </div>
    </>
  );
}
