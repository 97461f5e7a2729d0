import { useEffect, useRef, useState } from 'react';
import type { Assessment } from '../engine/judge/assessment';
import type { SettingBalance } from '../engine/judge/balance-settings';
import type { Project } from '../model/project';
import { useApp } from './context';

type Balances = ReadonlyMap<string, SettingBalance>;

const NONE: Balances = new Map();

/**
 * What each setting makes of the balance of an option, worked out one after the other while `isWanted`, the one on screen first.
 * What a document and an option have been told once is kept; a new assessment asks for what is missing.
 */
export function useBalances(
  project: Project,
  assessment: Assessment | null,
  setting: string,
  isWanted: boolean,
): Balances {
  const { readBalance } = useApp();
  const option = assessment?.option ?? '';
  const [known, setKnown] = useState({ project, option, balances: NONE });
  const isKnown = known.project === project && known.option === option;
  const latest = useRef(NONE);
  latest.current = isKnown ? known.balances : NONE;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new assessment means that light has come
  useEffect(() => {
    if (!isWanted || !option) return;
    let isCurrent = true;
    const ask = async () => {
      const ids = project.settings.map(({ id }) => id);
      for (const id of [setting, ...ids.filter((one) => one !== setting)]) {
        if (!isCurrent || latest.current.has(id)) continue;
        const balance = await readBalance(option, id);
        if (!isCurrent || !balance) return;
        const balances = new Map(latest.current).set(id, balance);
        latest.current = balances;
        setKnown({ project, option, balances });
      }
    };
    void ask();
    return () => {
      isCurrent = false;
    };
  }, [readBalance, project, option, isWanted, assessment]);
  return isKnown ? known.balances : NONE;
}
