import { Fragment, useState } from 'react';
import type { LampGroup } from '../../model/fixture';
import type { Lamp, Setting } from '../../model/project';
import { LampControl } from '../lamp/LampControl';
import { Choices } from '../parts/Choices';
import { useMedia } from '../parts/use-media';
import { lightCaption } from '../words/daylight';
import { PICTURE, settingNames } from '../words/picture';
import { GroupSwitches, type GroupSwitchesProps } from './GroupSwitches';
import { SettingMenu, type SettingMenuProps } from './SettingMenu';

/** What is set in a panel of its own. */
export type RoomPanelId = 'kitchen' | 'daylight' | 'lamps';

/** What opens in the rows themselves: one at a time, for there is room for one. */
type FoldId = 'settings' | 'lamp' | 'dim';

export interface PictureFootProps {
  readonly viewpoints: readonly { readonly id: string; readonly name: string }[];
  readonly viewpoint: string;
  readonly onViewpoint: (id: string) => void;
  readonly settings: readonly Setting[];
  readonly setting: Setting;
  readonly onSetting: (id: string) => void;
  readonly menu: Pick<SettingMenuProps, 'onCopy' | 'onRename' | 'onRemove'>;
  readonly switches: Omit<GroupSwitchesProps, 'setting' | 'groups' | 'open' | 'onOpen'>;
  /** The groups that have lamps in this room. */
  readonly groups: readonly LampGroup[];
  /** `continues`: the change belongs to the one before (a drag is one step). */
  readonly onLamp: (light: string, continues: boolean, group?: LampGroup) => void;
  /** The project's own lamps. */
  readonly lamps: readonly Lamp[];
  readonly onOpenLamp: (file: File) => void;
  readonly panel: RoomPanelId | null;
  readonly onPanel: (panel: RoomPanelId | null) => void;
}

const PANELS = [
  ['kitchen', PICTURE.roomKitchen],
  ['daylight', PICTURE.roomDaylight],
  ['lamps', PICTURE.roomLamps],
] as const;

/** The rows at the picture's foot: where one looks from, in which light, and by which lamps. */
export function PictureFoot(props: PictureFootProps) {
  const { setting, panel } = props;
  const [opened, setOpened] = useState<FoldId | null>(null);
  const fold = (id: FoldId) => ({
    open: opened === id,
    onOpen: (open: boolean) => setOpened((before) => (open ? id : before === id ? null : before)),
  });
  const isNarrow = useMedia('(max-width: 63.99em)');
  const names = isNarrow ? settingNames(props.settings) : props.settings.map(({ name }) => name);
  const settings = props.settings.map(({ id }, i) => ({ id, name: names[i]! }));
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
      <div className="foot-row foot-light">
        <span className="foot-label">{PICTURE.light}</span>
        <Choices label={PICTURE.setting} choices={settings} chosen={setting.id} onChoose={props.onSetting} />
        <SettingMenu setting={setting} settings={props.settings} {...props.menu} {...fold('settings')} />
        <p className="foot-caption">
          {lightCaption(setting.daylight).map((part) => (
            <Fragment key={part}>
              <span>{part}</span>{' '}
            </Fragment>
          ))}
        </p>
        <div className="foot-panels">
          {PANELS.map(([id, name]) => (
            <button
              key={id}
              type="button"
              className="button button-outlined"
              data-opens={id}
              aria-expanded={panel === id}
              onClick={() => {
                setOpened(null);
                props.onPanel(panel === id ? null : id);
              }}
            >
              {name}
            </button>
          ))}
        </div>
      </div>
      <div className="foot-row">
        {props.groups.length > 0 && (
          <LampControl
            setting={setting}
            settings={props.settings}
            groups={props.groups}
            lamps={props.lamps}
            onLamp={props.onLamp}
            onOpenLamp={props.onOpenLamp}
            {...fold('lamp')}
          />
        )}
        <GroupSwitches setting={setting} groups={props.groups} {...props.switches} {...fold('dim')} />
      </div>
    </>
  );
}
