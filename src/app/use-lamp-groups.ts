import { useMemo } from 'react';
import type { LampGroup } from '../model/fixture';
import { LAMP_GROUPS } from '../model/project';
import { useAppState } from './context';
import { projectOf } from './state';

/** The groups that have lamps in the room. */
export function useLampGroups(): readonly LampGroup[] {
  const fixtures = useAppState((state) => projectOf(state).kitchen.fixtures);
  return useMemo(() => LAMP_GROUPS.filter((group) => fixtures.some((fixture) => fixture.group === group)), [fixtures]);
}
