import type { Problem } from '../../engine/result';
import type { Lamp } from '../../model/project';
import { LightPanel } from '../../ui/picture/LightPanel';
import { FINDINGS } from '../../ui/words/findings';
import { settingShortName } from '../../ui/words/picture';
import { retold } from '../../ui/words/spoken';
import { useApp, useAppState } from '../context';
import { darknessOf } from '../dark-room';
import { openLamp } from '../lamp-files';
import { projectOf, shownOption, shownSetting } from '../state';
import { useLampGroups } from '../use-lamp-groups';

/** One list for all projects without lamps, so that nothing seems to change. */
const NO_LAMPS: readonly Lamp[] = [];

/** The panel of the light on screen. */
export function LightPane() {
  const { store, actions } = useApp();
  const settings = useAppState((state) => projectOf(state).settings);
  const setting = useAppState(shownSetting);
  const lamps = useAppState((state) => projectOf(state).lamps) ?? NO_LAMPS;
  const groups = useLampGroups();
  const isDark = useAppState((state) => darknessOf(projectOf(state).kitchen, shownSetting(state)) !== null);
  const cct_k = useAppState((state) => state.assessments[shownOption(state).id]?.setting.cct_k);
  const name = settingShortName(setting.name);
  return (
    <LightPanel
      settings={settings}
      setting={setting}
      groups={groups}
      lamps={lamps}
      switches={{
        onLevel: actions.setLevel,
        onDims: actions.setDims,
        onDaylight: actions.switchDaylight,
        onBlind: actions.setDaylight,
      }}
      onLamp={actions.setLamp}
      onOpenLamp={(file) => void openLamp(store, actions, file)}
      form={{
        onCopy: (name) => refusal(actions.copySetting(name)),
        onRename: (name) => refusal(actions.attempt({ kind: 'rename', what: 'setting', id: setting.id, name })),
        onRemove: () => actions.run({ kind: 'remove-setting', setting: setting.id }),
      }}
      readIn={isDark ? FINDINGS.dark(name) : cct_k === undefined ? null : FINDINGS.setting(name, cct_k)}
      onClose={() => store.setState({ panel: null })}
    />
  );
}

const refusal = ([problem]: readonly Problem[]): string | null => (problem ? retold(problem.text) : null);
