import { Fragment } from 'react';
import type { LampGroup } from '../../model/fixture';
import type { Lamp, Setting } from '../../model/project';
import { LampControl } from '../lamp/LampControl';
import { FittingChoices } from '../parts/FittingChoices';
import { useHold } from '../parts/use-hold';
import { SceneSwitch, type SceneSwitchProps } from '../stand/SceneSwitch';
import { StandControls, type StandControlsProps } from '../stand/StandControls';
import { lightCaption } from '../words/daylight';
import { PICTURE, settingNames } from '../words/picture';
import { reread } from '../words/spoken';
import './picture-foot.css';

/** What is set in a panel of its own, in the column of findings. */
export type RoomPanelId = 'view' | 'light' | 'kitchen' | 'daylight' | 'lamps';

export interface PictureFootProps extends SceneSwitchProps {
  /** How the sample stand is set up; null while the room is shown. */
  readonly stand: StandControlsProps | null;
  readonly viewpoints: readonly { readonly id: string; readonly name: string }[];
  readonly viewpoint: string;
  readonly onViewpoint: (id: string) => void;
  readonly settings: readonly Setting[];
  readonly setting: Setting;
  readonly onSetting: (id: string) => void;
  /** Shows a setting for as long as it is pressed. */
  readonly onHoldSetting: (id: string) => void;
  readonly onReleaseSetting: () => void;
  /** The groups that have lamps in this room. */
  readonly groups: readonly LampGroup[];
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean) => void;
  /** What is open, also where another part of the page opened it. */
  readonly panel: string | null;
  readonly onPanel: (panel: RoomPanelId | null) => void;
}

/** More settings than these need the room. */
const MOST_WITH_CAPTION = 4;

const PANELS = reread(
  () =>
    [
      ['kitchen', PICTURE.roomKitchen],
      ['daylight', PICTURE.roomDaylight],
      ['lamps', PICTURE.roomLamps],
    ] as const,
);

/** The two rows at the picture's foot: where one looks from, and in which light. What they open opens beside them. */
export function PictureFoot(props: PictureFootProps) {
  const { setting, panel, onPanel } = props;
  const names = settingNames(props.settings);
  const settings = props.settings.map(({ id, name }, i) => ({ id, name: names[i]!, fullName: name }));
  const hold = useHold((pressed) => {
    const radio = pressed.closest('.choice')?.querySelector('input');
    if (radio) props.onHoldSetting(radio.value);
  }, props.onReleaseSetting);
  const opener = (id: RoomPanelId, name: string) => (
    <button
      key={id}
      type="button"
      className="button button-outlined"
      data-opens={id}
      aria-expanded={panel === id}
      onClick={() => onPanel(panel === id ? null : id)}
    >
      {name}
    </button>
  );
  return (
    <>
      {props.viewpoints.length > 0 && (
        <div className="foot-row">
          {opener('view', PICTURE.view)}
          <SceneSwitch scene={props.scene} onScene={props.onScene} />
          <FittingChoices
            label={PICTURE.viewpoint}
            choices={props.viewpoints}
            chosen={props.viewpoint}
            onChoose={props.onViewpoint}
            onChooseAgain={props.onViewpoint}
          />
          {props.stand && <StandControls {...props.stand} />}
        </div>
      )}
      <div className="foot-row foot-light">
        {opener('light', PICTURE.light)}
        <div className="foot-settings" title={PICTURE.settingHint} {...hold}>
          <FittingChoices label={PICTURE.setting} choices={settings} chosen={setting.id} onChoose={props.onSetting} />
        </div>
        {settings.length <= MOST_WITH_CAPTION && (
          <p className="foot-caption">
            {lightCaption(setting.daylight).map((part) => (
              <Fragment key={part}>
                <span>{part}</span>{' '}
              </Fragment>
            ))}
          </p>
        )}
        {props.groups.length > 0 && (
          <LampControl setting={setting} groups={props.groups} lamps={props.lamps} onLamp={props.onLamp} />
        )}
        <div className="foot-panels">{PANELS.map(([id, name]) => opener(id, name))}</div>
      </div>
    </>
  );
}
