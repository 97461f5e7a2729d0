import { useEffect, useState } from 'react';
import type { Warning } from '../../engine/judge/assessment';
import type { PairTable } from '../../engine/judge/pair-table';
import { PairsPanel } from '../../ui/pairs/PairsPanel';
import { settingShortName } from '../../ui/words/picture';
import { retold } from '../../ui/words/spoken';
import { useApp, useAppState } from '../context';
import { darknessOf } from '../dark-room';
import { projectOf, shownOption, shownSetting } from '../state';

const NO_WARNINGS: readonly Warning[] = [];

/** The table of all pairs of the option on screen, anew with every assessment. */
export function PairsPane() {
  const { store, readPairs } = useApp();
  const option = useAppState((state) => shownOption(state).id);
  const assessment = useAppState((state) => state.assessments[option] ?? null);
  const setting = useAppState(shownSetting);
  const isDark = useAppState((state) => darknessOf(projectOf(state).kitchen, shownSetting(state)) !== null);
  const [table, setTable] = useState<PairTable | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new assessment means another table
  useEffect(() => {
    let isWanted = true;
    void readPairs(option).then((found) => {
      if (isWanted) setTable(found);
    });
    return () => {
      isWanted = false;
    };
  }, [readPairs, option, assessment]);
  return (
    <PairsPanel
      table={assessment && table?.option === option ? inWords(table) : null}
      warnings={assessment?.warnings ?? NO_WARNINGS}
      settingName={settingShortName(setting.name)}
      isDark={isDark}
      onPoint={(pointed) => store.setState({ pointed })}
      onClose={() => store.setState({ panel: null })}
    />
  );
}

/** The names of the rows, as the page speaks. */
const inWords = (table: PairTable): PairTable => ({
  ...table,
  rows: table.rows.map((row) => ({ ...row, name: retold(row.name) })),
});
