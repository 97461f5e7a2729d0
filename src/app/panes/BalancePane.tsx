import { useMemo, useState } from 'react';
import { BalanceSettings } from '../../ui/findings/BalanceSettings';
import { settingNames } from '../../ui/words/picture';
import { useAppState } from '../context';
import { projectOf, shownOption, shownSetting } from '../state';
import { useBalances } from '../use-balances';

/** How the balance moves with the settings of the project. */
export function BalancePane() {
  const project = useAppState(projectOf);
  const setting = useAppState((state) => shownSetting(state).id);
  const assessment = useAppState((state) => state.assessments[shownOption(state).id] ?? null);
  const [isOpen, setOpen] = useState(false);
  const balances = useBalances(project, assessment, setting, isOpen);
  const settings = useMemo(() => {
    const names = settingNames(project.settings);
    return project.settings.map(({ id }, i) => ({ id, name: names[i]! }));
  }, [project.settings]);
  return <BalanceSettings settings={settings} current={setting} balances={balances} onOpen={setOpen} />;
}
