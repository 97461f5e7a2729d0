import { useMemo } from 'react';
import { LAMP_GROUPS, type LampGroup } from '../model/project';
import { useAppState } from './context';
import { projectOf } from './state';

/** The groups that have lamps in the room. */
export function useLampGroups(): readonly LampGroup[] {
  const fixtures = useAppState((state) => projectOf(state).kitchen.fixtures);
  return useMemo(() => LAMP_GROUPS.filter((group) => fixtures.some((fixture) => fixture.group === group)), [fixtures]);
}
